import { curvesRoomWords } from "../../../src/words/curves-room.ts";
import type { useFormat } from "../../stores/format.ts";

/** Doses in words, repeats counted: "4.6 (2 times) and 5.8". */
export function doseList(doses: number[], format: ReturnType<typeof useFormat>): string {
  const counts = new Map<string, number>();
  for (const dose of doses) {
    const text = format.shown(dose, "doseKgPerT");
    counts.set(text, (counts.get(text) ?? 0) + 1);
  }
  const { times, and } = curvesRoomWords.next;
  return and([...counts].map(([dose, count]) => (count > 1 ? times(dose, count) : dose)));
}
