import { writeSignificant } from "../../units/number-entry.ts";
import type { StudyState } from "../schema/records.ts";

/** Writes numbers within sentences as the study writes them: its decimal mark, a few significant digits. */
export function numberWords(state: StudyState): (value: number, digits?: number) => string {
  const mark = state.study["study"]?.decimalMark ?? ".";
  return (value, digits = 3) => writeSignificant(value, mark, digits);
}
