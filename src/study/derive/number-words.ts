import { doseReportWords } from "../../words/dose-report.ts";
import { writeFixed, writeSignificant } from "../../units/digits.ts";
import type { DecimalMark } from "../../units/number-entry.ts";
import type { StudyState } from "../schema/records.ts";

/** Writes numbers within sentences as the study writes them: its decimal mark, a few significant digits. */
export function numberWords(state: StudyState): (value: number, digits?: number) => string {
  const mark = state.study["study"]?.decimalMark ?? ".";
  return (value, digits = 3) => writeSignificant(value, mark, digits);
}

/** A chance by which a test judges, to two digits; below one in a thousand its digits say nothing. */
export function chanceWords(p: number, mark: DecimalMark): string {
  return p < 0.001 ? doseReportWords.under(writeFixed(0.001, 3, mark)) : writeSignificant(p, mark, 2);
}
