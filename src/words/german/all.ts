import type { LanguageTable } from "../language.ts";
import { choiceChain } from "./choice-chain.ts";
import { decisionChain } from "./decision-chain.ts";
import { jarChain } from "./jar-chain.ts";
import { qualityFlags } from "./quality-flags.ts";
import { sampleChain } from "./sample-chain.ts";
import { stockChain } from "./stock-chain.ts";
import { strip } from "./strip.ts";
import { warnings } from "./warnings.ts";

/** German: every area of texts. A missing area or text fails the types or the test of the words. */
export const german: LanguageTable = {
  choiceChain,
  decisionChain,
  jarChain,
  qualityFlags,
  sampleChain,
  stockChain,
  strip,
  warnings,
};
