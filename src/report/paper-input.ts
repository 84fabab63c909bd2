import type { StudyState } from "../study/schema/records.ts";
import { onPaperWords } from "../words/on-paper.ts";

/** Where the study's history stood when a paper was made: what ties the paper to the file. */
export interface PaperHistory {
  /** entries so far */
  changes: number;
  /** the hash of the last entry, 64 hex digits */
  head: string;
  /** whether the chain of hashes was found whole */
  whole: boolean;
}

/** What every paper needs beside the study: the moment, the clock's offset, the program and the history. */
export interface PaperInput {
  state: StudyState;
  /** the moment of printing, ISO */
  now: string;
  /** the local clock's offset from UTC in minutes */
  utcOffsetMin: number;
  version: string;
  history: PaperHistory;
}

/** The history's state in one line. */
export function historyWords({ changes, head, whole }: PaperHistory, digits: number): string {
  const hash = head.slice(0, digits).replace(/(.{8})(?=.)/g, "$1 ");
  const words =
    digits < head.length ? onPaperWords.historyBegins(changes, hash) : onPaperWords.history(changes, hash);
  return whole ? words : onPaperWords.brokenHistory(words);
}
