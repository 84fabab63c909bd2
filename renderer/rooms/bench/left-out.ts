import { onPaperWords } from "../../../src/words/on-paper.ts";

const reasons = [
  "spilled",
  "wrong-dose",
  "mixing-failed",
  "timer-missed",
  "reading-failed",
  "sample-changed",
  "other",
] as const;

/** Why a jar is left out, numbered as the technician presses them. */
export const leftOutReasons = reasons.map((value, i) => ({
  value,
  label: `${i + 1} ${onPaperWords.leftOut[value]}`,
}));
