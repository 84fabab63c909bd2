/** Where a formula is checked: the test file, and what it asserts there. */
export interface Check {
  file: string;
  asserts: string;
}

/** One formula that the product uses, by what does not depend on the language. */
export interface MethodEntry<I extends string = string> {
  id: I;
  /** the files of `src/` that work it out */
  code: readonly string[];
  checks: readonly Check[];
}

/** What a formula is for, the formula in plain signs, and where it comes from. */
export interface MethodTexts {
  what: string;
  formula: string;
  source: string;
}

/** One formula that the product uses; its texts are in the language of the moment. */
export type Method = MethodEntry & Readonly<MethodTexts>;
