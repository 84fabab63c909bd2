import type { StateTone } from "./tone.ts";

export type Room = "sample" | "bench" | "curves" | "dose" | "plant" | "record";

/** One segment of the chain strip: a room's name, its headline number with its spread, and its state in a word. */
export interface StripSegment {
  room: Room;
  headline: string;
  spread: string;
  word: string;
  tone: StateTone;
}
