import type { Room } from "../strip-types.ts";

/** Where a step is done: the room and the very entry there, by the name of its cell or of its button. */
export interface GuideAim {
  room: Room;
  target: string;
  /** a cell of the table of jars, which draws only the rows in view */
  jarId?: string;
  column?: string;
}

export type StepKey =
  | "sample"
  | "solids"
  | "product"
  | "stock"
  | "series"
  | "readings"
  | "curve"
  | "dose"
  | "feed"
  | "pump"
  | "settings";

/** One step before its place among the others is known. */
export interface StepState {
  key: StepKey;
  title: string;
  done: boolean;
  /** what to do next for it, and why */
  why: string;
  aim: GuideAim;
}

export interface GuideStep extends StepState {
  /** "passed": not done, and no longer needed by what came after it */
  standing: "done" | "passed" | "next" | "later";
}

/** What the curves have come to, as far as the guide asks. */
export interface CurvesSoFar {
  word: "none" | "running" | "refused" | "found";
  /** the verdict's sentence where it was refused */
  sentence: string;
}

/** A reason that stands inside a longer text, as a sentence of its own. */
export function asSentence(words: string): string {
  const text = words.trim().replace(/\.$/, "");
  return `${text.charAt(0).toUpperCase()}${text.slice(1)}.`;
}
