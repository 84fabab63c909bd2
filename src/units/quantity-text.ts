import {
  digitsByHabit,
  halfWidth,
  writeMoney,
  writerBeside,
  writerOfRange,
  writeSignificant,
} from "./digits.ts";
import { spreadToShown, toShown, type QuantityKind, type UnitSystem } from "./display.ts";
import { entryShown, mayBeTyped, writeNumber, type DecimalMark } from "./number-entry.ts";

/** Writes canonical values of one quantity in the unit shown, without the unit. */
export type QuantityWriter = (canonical: number) => string;

/** How a quantity is told: its kind, the system of units and the decimal mark in force. */
export interface Told {
  kind: QuantityKind;
  system: UnitSystem;
  mark: DecimalMark;
}

const money: readonly QuantityKind[] = ["costPerTDs", "costPerYear"];

const shownBy =
  ({ kind, system }: Told, write: (shown: number) => string): QuantityWriter =>
  (canonical) =>
    write(toShown(canonical, kind, system));

/** A derived quantity without a spread; `digits` where three are not the habit of this place. */
export function byHabit(told: Told, digits?: number): QuantityWriter {
  if (money.includes(told.kind)) return shownBy(told, (shown) => writeMoney(shown, told.mark));
  const nearWhole = (shown: number) =>
    told.kind === "densityKgPerL" || (told.kind === "percent" && shown >= 90 && shown <= 100);
  return shownBy(told, (shown) =>
    writeSignificant(shown, told.mark, digits ?? digitsByHabit + (nearWhole(shown) ? 1 : 0)),
  );
}

/** An entered quantity, as it was entered. */
export function asEntered({ kind, system, mark }: Told): QuantityWriter {
  return (canonical) => writeNumber(entryShown(canonical, toShown(canonical, kind, system)), mark);
}

/**
 * A quantity that somebody gave: typed, it is told as it was typed; taken from a slider, a rule or a formula, as
 * `otherwise` writes it.
 */
export function asGiven(told: Told, otherwise = byHabit(told)): QuantityWriter {
  return (canonical) => (mayBeTyped(canonical) ? asEntered(told) : otherwise)(canonical);
}

/** A quantity, its spread apart (see `spreadText`) and the ends of its interval, all to one place. */
export function beside(told: Told, canonical: number, spread: number | null): QuantityWriter {
  if (spread === null || !(spread > 0)) return byHabit(told);
  const { kind, system, mark } = told;
  return shownBy(
    told,
    writerBeside(toShown(canonical, kind, system), spreadToShown(spread, kind, system), mark),
  );
}

/** A spread to the place that its number is written to. */
export function spreadText(told: Told, canonical: number, spread: number): string {
  const { kind, system, mark } = told;
  const shown = spreadToShown(spread, kind, system);
  return writerBeside(toShown(canonical, kind, system), shown, mark)(shown);
}

/** A quantity and both ends of its interval, all to one place. */
export function inInterval(
  told: Told,
  canonical: number,
  low: number | null,
  high: number | null,
): QuantityWriter {
  return beside(told, canonical, halfWidth(canonical, low, high));
}

/** Both ends of a range that is no uncertainty, to one place. */
export function overRange(told: Told, low: number, high: number): QuantityWriter {
  const { kind, system, mark } = told;
  return shownBy(told, writerOfRange(toShown(low, kind, system), toShown(high, kind, system), mark));
}
