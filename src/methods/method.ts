/** Where a formula is checked: the test file, and what it asserts there. */
export interface Check {
  file: string;
  asserts: string;
}

/** One formula that the product uses: what it is for, the formula in plain signs, and where it comes from. */
export interface Method {
  id: string;
  what: string;
  formula: string;
  source: string;
  /** the files of `src/` that work it out */
  code: readonly string[];
  checks: readonly Check[];
}
