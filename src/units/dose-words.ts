import { unitText, type UnitSystem } from "./display.ts";
import type { DecimalMark } from "./number-entry.ts";
import { asGiven, byHabit, inInterval, type Told } from "./quantity-text.ts";

/** How doses are written within sentences: the number in the unit shown, and that unit. */
export interface DoseWords {
  /** by habit, or to the place of the interval that it is told beside */
  number(doseKgPerT: number, around?: DoseAround): string;
  /** a dose that somebody picked: as it was typed, else by habit */
  given(doseKgPerT: number): string;
  unit: string;
}

/** A dose and its interval: whatever is told beside it ends at the same place. An open end is null. */
export interface DoseAround {
  dose: number;
  low: number | null;
  high: number | null;
}

/** Doses in one system of units under the decimal mark in force. */
export function doseWords(mark: DecimalMark, system: UnitSystem): DoseWords {
  const told: Told = { kind: "doseKgPerT", system, mark };
  return {
    number: (doseKgPerT, around) =>
      (around ? inInterval(told, around.dose, around.low, around.high) : byHabit(told))(doseKgPerT),
    given: asGiven(told),
    unit: unitText("doseKgPerT", system),
  };
}
