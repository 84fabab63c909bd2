import type { Verdict } from "../../../src/curve/analyse-types.ts";
import { curvesRoomWords } from "../../../src/words/curves-room.ts";
import { stripWords } from "../../../src/words/strip.ts";

/** What a verdict found in a word: the kind of its dose, or why it names none. */
export function verdictWord({ kind, reason }: Verdict): string {
  if (kind !== "none") return curvesRoomWords.kinds[kind];
  return reason === null ? "" : stripWords.reasons[reason];
}
