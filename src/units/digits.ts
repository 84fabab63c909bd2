import { withoutExponent, writeNumber, type DecimalMark } from "./number-entry.ts";

/*
 * The one rule for digits, on screen and on paper:
 *
 * - A derived number with a known spread (a plus-minus, an interval) is rounded by it: the spread to two significant
 *   digits where it begins with 1 or 2, else to one, and the number to the same place (common practice, no source; the
 *   GUM asks for two at most, JCGM 100:2008, 7.2.6, from memory). A number surer than its spread keeps two significant
 *   digits at least, and none shows more than five. Number, spread and both ends of an interval end at one place.
 * - A derived number without a spread gets three significant digits (common practice, no source). A density and a
 *   percentage from 90 on get four, for what counts is their distance from water's and from the whole.
 * - A range that is no uncertainty (a window, the doses tested) ends at one place: three significant digits of its
 *   larger end.
 * - Money gets four significant digits, but no more than its cents.
 * - Counts and entered numbers are shown as they are, a dose that was typed too, wherever it is told; one taken from a
 *   slider or a rule carries digits that nobody chose, and is derived.
 * - In a column of one quantity the numbers line up at their decimal mark (`line-up.ts`), each with its own digits.
 *
 * What is stored, exported or printed by a verb as a number keeps every digit.
 */

/** significant digits of a derived number without a spread */
export const digitsByHabit = 3;
/** significant digits of a formula's input, so that its result can be worked out again */
export const inputDigits = 4;
/** decimals of an AICc, told by its differences: models within 2 tie */
export const aiccDecimals = 2;
const most = 5;
const least = 2;

const magnitudeOf = (value: number) => Number(value.toExponential().split("e")[1]);

/** Decimals that a spread is worth: for two significant digits of it where it begins with 1 or 2, else for one. */
function decimalsOf(spread: number): number {
  const rounded = spread.toExponential(1);
  return ("12".includes(rounded[0]!) ? 1 : 0) - magnitudeOf(Number(rounded));
}

/** Decimals of a number beside its spread; below zero for tens and hundreds, null where the spread says nothing. */
function decimalsBeside(value: number, spread: number | null): number | null {
  if (spread === null || !(spread > 0) || !Number.isFinite(spread) || !Number.isFinite(value)) return null;
  const decimals = decimalsOf(spread);
  if (value === 0) return decimals;
  const magnitude = magnitudeOf(value);
  const floor = Math.abs(value) > spread ? Math.max(decimals, least - 1 - magnitude) : decimals;
  return Math.min(floor, most - 1 - magnitude);
}

/** A number with a fixed count of decimals under a decimal mark; decimals below zero round to tens and hundreds. */
export function writeFixed(value: number, decimals: number, mark: DecimalMark): string {
  if (!Number.isFinite(value)) return "";
  const step = decimals < 0 ? 10 ** -decimals : 1;
  const rounded = decimals < 0 ? Math.round(value / step) * step : value;
  const fixed = withoutExponent(rounded.toFixed(Math.max(0, Math.min(20, decimals))));
  const clean = /^-0(\.0*)?$/.test(fixed) ? fixed.slice(1) : fixed;
  return mark === "," ? clean.replace(".", ",") : clean;
}

/** A derived number without a spread, to a count of significant digits (three unless said), without empty zeros. */
export function writeSignificant(value: number, mark: DecimalMark, digits = digitsByHabit): string {
  if (!Number.isFinite(value)) return "";
  if (value === 0) return "0";
  const rounded = Number(value.toPrecision(digits));
  const magnitude = magnitudeOf(rounded);
  if (magnitude > 14 || magnitude < -9) return writeNumber(rounded, mark);
  return writeFixed(rounded, Math.max(0, digits - 1 - magnitude), mark)
    .replace(/([.,]\d*?)0+$/, "$1")
    .replace(/[.,]$/, "");
}

/**
 * A writer for everything that ends at the place of one number and its spread: the number, the spread, the ends of its
 * interval. Without a spread it writes by habit.
 */
export function writerBeside(
  value: number,
  spread: number | null,
  mark: DecimalMark,
  habit = digitsByHabit,
): (number: number) => string {
  const decimals = decimalsBeside(value, spread);
  return decimals === null
    ? (number) => writeSignificant(number, mark, habit)
    : (number) => writeFixed(number, decimals, mark);
}

/** Half the width of an interval around a number; of one that is open, how far its end is away; null without ends. */
export function halfWidth(value: number, low: number | null, high: number | null): number | null {
  if (low !== null && high !== null) return Math.abs(high - low) / 2;
  if (low === null && high === null) return null;
  return Math.abs(value - (low ?? high!));
}

/** A writer for both ends of a range that is no uncertainty: a window, the doses tested. */
export function writerOfRange(low: number, high: number, mark: DecimalMark): (number: number) => string {
  const largest = Math.max(Math.abs(low), Math.abs(high));
  if (!(largest > 0) || !Number.isFinite(largest)) return (number) => writeSignificant(number, mark);
  const rounded = Number(largest.toPrecision(digitsByHabit));
  const places = Math.min(20, Math.max(0, digitsByHabit - 1 - magnitudeOf(rounded)));
  const texts = [low, high].map((end) => end.toFixed(places));
  // Zeros that both ends would carry say nothing.
  const empty = Math.min(
    ...texts.map((text) => (places === 0 ? 0 : (/0*$/.exec(text.split(".")[1] ?? "")?.[0].length ?? 0))),
  );
  return (number) =>
    places - empty > 0
      ? writeFixed(number, places - empty, mark)
      : writeFixed(Number(number.toPrecision(digitsByHabit)), 0, mark);
}

/** An amount of money without its currency: four significant digits, but no more than two decimals. */
export function writeMoney(value: number, mark: DecimalMark): string {
  if (!Number.isFinite(value)) return "";
  const rounded = Number(value.toPrecision(4));
  return writeFixed(rounded, value === 0 ? 0 : Math.min(2, Math.max(0, 3 - magnitudeOf(rounded))), mark);
}
