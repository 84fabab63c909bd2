import type { StudyState } from "../../schema/records.ts";
import { qualityFlagWords } from "../../../words/quality-flags.ts";
import type { SeriesChain } from "../jars.ts";
import type { Flag, FlagWords } from "./flag.ts";
import { doseFlags, orderFlags, readingFlags } from "./jar-checks.ts";
import { sampleFlags, solutionFlags } from "./sample-checks.ts";

const weight: Record<Flag["tone"], number> = { bad: 0, warn: 1, missing: 2, open: 3, good: 4 };

/** What is checked while a series is made, for the sentence that nothing is wrong. */
export const checkedThings = (): string => qualityFlagWords.checkedThings;

/** All flags of a series, the gravest first. */
export function qualityFlags(state: StudyState, chain: SeriesChain, words: FlagWords): Flag[] {
  return [
    ...sampleFlags(state, chain, words),
    ...solutionFlags(chain, words),
    ...doseFlags(state, chain, words),
    ...readingFlags(chain, words),
    ...orderFlags(chain),
  ].sort((a, b) => weight[a.tone] - weight[b.tone]);
}
