import { qualityFlagWords } from "../../../words/quality-flags.ts";
import type { DoseWords } from "../../../units/dose-words.ts";
import type { StateTone } from "../tone.ts";

/** Where the number behind a flag stands: the room, and in the bench's grid the jar and its column. */
export interface FlagAim {
  room: "sample" | "bench";
  jarId?: string;
  column?: string;
}

/** Something worth knowing before the numbers are trusted: what, why, and what to do. */
export interface Flag {
  id: string;
  tone: StateTone;
  /** the state in a word or two */
  word: string;
  sentence: string;
  todo: string;
  aim: FlagAim;
}

/** What every check is given: numbers are written by `number`, so that the study's decimal mark holds. */
export interface FlagWords {
  now: string;
  number(value: number): string;
  /** doses within sentences, in the unit shown */
  doses: DoseWords;
}

/** "jar 3", "jars 3, 7 and 9" */
export function jarList(labels: string[]): string {
  if (labels.length === 1) return qualityFlagWords.jar(labels[0]!);
  const shown = labels.slice(0, 6);
  const rest = labels.length - shown.length;
  const last = rest > 0 ? qualityFlagWords.moreJars(rest) : shown.pop()!;
  return qualityFlagWords.jars(shown.join(", "), last);
}

export function hoursBetween(from: string, to: string): number {
  return (Date.parse(to) - Date.parse(from)) / 3_600_000;
}
