import type { Figure } from "../study/derive/figure.ts";
import { spreadToShown, toShown, unitText, type QuantityKind, type UnitSystem } from "../units/display.ts";
import { decimalsFor, writeFixed, writeSignificant, type DecimalMark } from "../units/number-entry.ts";
import { onPaperWords } from "../words/on-paper.ts";

/** How numbers and moments are written on paper. */
export interface PaperWords {
  mark: DecimalMark;
  /** a number to a few significant digits; null says that it was not measured */
  number(value: number | null, digits?: number): string;
  /** with a fixed count of decimals, for columns */
  fixed(value: number, decimals: number): string;
  /** exactly as it was entered */
  entered(value: number | null): string;
  /** one unit system, with the unit */
  one(value: number, kind: QuantityKind, system: UnitSystem, digits?: number): string;
  /** metric first, US customary beside it where that differs */
  both(value: number, kind: QuantityKind, digits?: number): string;
  /** two ends of a range, metric first */
  range(low: number, high: number, kind: QuantityKind, digits?: number): string;
  /** a derived number with its spread, metric first; where it is missing, which input is missing */
  figure(figure: Figure, digits?: number): string;
  /** an ISO moment as local date and time, with the offset it is given in */
  moment(at: string | null): string;
}

/** `utcOffsetMin` is the local clock's offset from UTC in minutes, for every moment printed. */
export function paperWords(mark: DecimalMark, utcOffsetMin: number): PaperWords {
  const number = (value: number | null, digits = 4) =>
    value === null || !Number.isFinite(value)
      ? onPaperWords.notMeasured
      : writeSignificant(value, mark, digits);
  const one = (value: number, kind: QuantityKind, system: UnitSystem, digits = 4) =>
    `${number(toShown(value, kind, system), digits)} ${unitText(kind, system)}`.trim();
  const both = (value: number, kind: QuantityKind, digits = 4) => {
    const metric = one(value, kind, "metric", digits);
    return unitText(kind, "us") === unitText(kind, "metric")
      ? metric
      : `${metric} (${one(value, kind, "us", digits)})`;
  };
  const spread = (
    value: number,
    half: number | null,
    kind: QuantityKind,
    system: UnitSystem,
    digits: number,
  ) => {
    if (half === null || !(half > 0)) return one(value, kind, system, digits);
    const shown = spreadToShown(half, kind, system);
    const decimals = decimalsFor(shown);
    const text = `${writeFixed(toShown(value, kind, system), decimals, mark)} ± ${writeFixed(shown, decimals, mark)}`;
    return `${text} ${unitText(kind, system)}`.trim();
  };
  return {
    mark,
    number,
    fixed: (value, decimals) => writeFixed(value, decimals, mark),
    entered: (value) => (value === null ? onPaperWords.notMeasured : number(value, 12)),
    one,
    both,
    range: (low, high, kind, digits = 3) => {
      const ends = (system: UnitSystem) =>
        onPaperWords.range(number(toShown(low, kind, system), digits), one(high, kind, system, digits));
      return unitText(kind, "us") === unitText(kind, "metric")
        ? ends("metric")
        : `${ends("metric")} (${ends("us")})`;
    },
    figure: ({ value, spread: half, quantity, missing }, digits = 4) => {
      if (value === null) return onPaperWords.missing(missing || onPaperWords.anInput);
      const metric = spread(value, half, quantity, "metric", digits);
      return unitText(quantity, "us") === unitText(quantity, "metric")
        ? metric
        : `${metric} (${spread(value, half, quantity, "us", digits)})`;
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
