import type { Figure } from "../study/derive/figure.ts";
import { writeFixed, writeMoney, writeSignificant } from "../units/digits.ts";
import { unitText, type QuantityKind, type UnitSystem } from "../units/display.ts";
import type { DecimalMark } from "../units/number-entry.ts";
import {
  asEntered,
  asGiven,
  beside,
  byHabit,
  inInterval,
  overRange,
  spreadText,
  type QuantityWriter,
} from "../units/quantity-text.ts";
import { onPaperWords } from "../words/on-paper.ts";

/** How numbers and moments are written on paper: the digits of `src/units/digits.ts`, both systems of units. */
export interface PaperWords {
  mark: DecimalMark;
  /** a derived number without unit or spread; null says that it was not measured */
  number(value: number | null, digits?: number): string;
  /** with a fixed count of decimals, for columns */
  fixed(value: number, decimals: number): string;
  /** exactly as it was entered */
  entered(value: number | null): string;
  /** an entered quantity, as it was entered, US customary beside it where that differs */
  enteredBoth(value: number, kind: QuantityKind): string;
  /** an amount of money, without its currency */
  money(value: number): string;
  /** metric first, US customary beside it where that differs */
  both(value: number, kind: QuantityKind, digits?: number): string;
  /** as `both` without the units, for a table whose head has them */
  bare(value: number, kind: QuantityKind, digits?: number): string;
  /** a writer for a number and both ends of its interval, all to one place; an open end is null */
  interval(value: number, low: number | null, high: number | null, kind?: QuantityKind): QuantityWriter;
  /** the same in US customary units */
  usInterval(value: number, low: number | null, high: number | null, kind: QuantityKind): QuantityWriter;
  /** as `bare`, to the place of a spread that is told elsewhere */
  bareBeside(value: number, spread: number | null, kind: QuantityKind): string;
  /** as `interval`, in both systems without the units */
  bareInterval(value: number, low: number | null, high: number | null, kind: QuantityKind): QuantityWriter;
  /** a quantity that somebody gave, as it was typed, or by habit where it was moved to or reckoned; metric first */
  givenBoth(value: number, kind: QuantityKind): string;
  /** the same without the units */
  givenBare(value: number, kind: QuantityKind): string;
  /** an entered quantity without the units */
  enteredBare(value: number, kind: QuantityKind): string;
  /** two ends of a range that is no uncertainty, metric first */
  range(low: number, high: number, kind: QuantityKind): string;
  /** two ends of an interval around a value, metric first */
  fromTo(value: number, low: number, high: number, kind: QuantityKind): string;
  /** a derived number with its spread, metric first; where it is missing, which input is missing */
  figure(figure: Figure): string;
  /** an ISO moment as local date and time, with the offset it is given in */
  moment(at: string | null): string;
}

/** `utcOffsetMin` is the local clock's offset from UTC in minutes, for every moment printed. */
export function paperWords(mark: DecimalMark, utcOffsetMin: number): PaperWords {
  const told = (kind: QuantityKind, system: UnitSystem) => ({ kind, system, mark });
  const number = (value: number | null, digits?: number) =>
    value === null || !Number.isFinite(value)
      ? onPaperWords.notMeasured
      : writeSignificant(value, mark, digits);
  const differs = (kind: QuantityKind) => unitText(kind, "us") !== unitText(kind, "metric");
  /** one text for each system of units, US customary only where it reads otherwise */
  const twice = (kind: QuantityKind, text: (system: UnitSystem) => string) => {
    const [metric, us] = [text("metric"), text("us")];
    return differs(kind) && metric !== us ? `${metric} (${us})` : metric;
  };
  const united = (kind: QuantityKind, text: (system: UnitSystem) => string) =>
    twice(kind, (system) => `${text(system)} ${unitText(kind, system)}`.trim());
  const quantity = (value: number, kind: QuantityKind, system: UnitSystem, digits?: number) =>
    Number.isFinite(value) ? byHabit(told(kind, system), digits)(value) : onPaperWords.notMeasured;
  const entryIn = (value: number, kind: QuantityKind) => (system: UnitSystem) =>
    asEntered(told(kind, system))(value);
  const givenIn = (value: number, kind: QuantityKind) => (system: UnitSystem) =>
    asGiven(told(kind, system))(value);
  const ends = (write: QuantityWriter, low: number, high: number) =>
    onPaperWords.range(write(low), write(high));
  return {
    mark,
    number,
    fixed: (value, decimals) => writeFixed(value, decimals, mark),
    entered: (value) =>
      value === null ? onPaperWords.notMeasured : asEntered(told("ratio", "metric"))(value),
    enteredBoth: (value, kind) => united(kind, entryIn(value, kind)),
    enteredBare: (value, kind) => twice(kind, entryIn(value, kind)),
    givenBoth: (value, kind) => united(kind, givenIn(value, kind)),
    givenBare: (value, kind) => twice(kind, givenIn(value, kind)),
    money: (value) => writeMoney(value, mark),
    both: (value, kind, digits) => united(kind, (system) => quantity(value, kind, system, digits)),
    bare: (value, kind, digits) => twice(kind, (system) => quantity(value, kind, system, digits)),
    bareBeside: (value, spread, kind) =>
      twice(kind, (system) => beside(told(kind, system), value, spread)(value)),
    bareInterval: (value, low, high, kind) => (one) =>
      twice(kind, (system) => inInterval(told(kind, system), value, low, high)(one)),
    interval: (value, low, high, kind = "ratio") => inInterval(told(kind, "metric"), value, low, high),
    usInterval: (value, low, high, kind) => inInterval(told(kind, "us"), value, low, high),
    range: (low, high, kind) =>
      united(kind, (system) => ends(overRange(told(kind, system), low, high), low, high)),
    fromTo: (value, low, high, kind) =>
      united(kind, (system) => ends(inInterval(told(kind, system), value, low, high), low, high)),
    figure: ({ value, spread, quantity: kind, missing, given }) => {
      if (value === null) return onPaperWords.missing(missing || onPaperWords.anInput);
      return united(kind, (system) => {
        const write = beside(told(kind, system), value, spread);
        const text = (given ? asGiven(told(kind, system), write) : write)(value);
        return spread === null || !(spread > 0)
          ? text
          : `${text} ± ${spreadText(told(kind, system), value, spread)}`;
      });
    },
    moment: (at) => {
      const time = at === null ? NaN : Date.parse(at);
      if (!Number.isFinite(time)) return onPaperWords.notNoted;
      const local = new Date(time + utcOffsetMin * 60_000).toISOString();
      const [year, month, day] = local.slice(0, 10).split("-") as [string, string, string];
      return `${onPaperWords.date(year, month, day)} ${local.slice(11, 16)} ${offsetWords(utcOffsetMin)}`;
    },
  };
}

function offsetWords(minutes: number): string {
  if (minutes === 0) return "UTC";
  const whole = Math.abs(minutes);
  const rest = whole % 60;
  return `UTC${minutes < 0 ? "-" : "+"}${Math.floor(whole / 60)}${rest === 0 ? "" : `:${String(rest).padStart(2, "0")}`}`;
}

/** How long before `now` something was, in words. */
export function agoWords(at: string, now: string): string {
  const minutes = Math.round((Date.parse(now) - Date.parse(at)) / 60_000);
  if (!Number.isFinite(minutes)) return "";
  if (minutes < 0) return onPaperWords.ago.after;
  if (minutes < 60) return onPaperWords.ago.minutes(minutes);
  const hours = Math.floor(minutes / 60);
  return hours < 48 ? onPaperWords.ago.hours(hours) : onPaperWords.ago.days(Math.floor(hours / 24));
}
