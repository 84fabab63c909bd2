import type { AnalyseRow } from "../../src/curve/analyse-types.ts";
import type { FitQuestion } from "./messages.ts";

/** What is asked of the fits, before it is numbered. */
export type Question = Omit<FitQuestion, "id" | "language">;

// Readings that were not touched are the very same objects, so that only what an edit made anew is looked at closely.
const sameRow = (a: AnalyseRow, b: AnalyseRow) =>
  a.row === b.row &&
  a.jar === b.jar &&
  a.doseA === b.doseA &&
  a.doseB === b.doseB &&
  a.block === b.block &&
  a.order === b.order &&
  (a.readings === b.readings || JSON.stringify(a.readings) === JSON.stringify(b.readings));

/** Whether two questions have one answer. */
export function sameQuestion(a: Question, b: Question): boolean {
  return (
    a.mark === b.mark &&
    a.system === b.system &&
    a.name === b.name &&
    a.rows.length === b.rows.length &&
    a.rows.every((row, i) => sameRow(row, b.rows[i]!)) &&
    a.labels.every(([, label], i) => label === b.labels[i]![1])
  );
}
