import { numberEntryWords } from "../words/number-entry.ts";
import { kgPerLb, kPaPerPsi, lPerUsGal } from "./constants.ts";

export type UnitSystem = "metric" | "us";

// A unit with a word in it is read when it is shown, in the language of that moment.
type UnitText = string | (() => string);

interface Display {
  unit: UnitText;
  /** shown = canonical * factor + offset */
  factor: number;
  offset?: number;
}

const unitWords = () => numberEntryWords.units;

const same = (unit: UnitText): { metric: Display; us: Display } => ({
  metric: { unit, factor: 1 },
  us: { unit, factor: 1 },
});
const both = (metric: UnitText, us: UnitText, factor: number, offset = 0) => ({
  metric: { unit: metric, factor: 1 },
  us: { unit: us, factor, offset },
});

/**
 * Every kind of quantity that screens show, with its canonical (stored) unit first and the US customary unit beside it.
 * kg/t to lb per short ton is exactly 2: both are mass ratios. A bare "ton" is never used.
 */
const table = {
  doseKgPerT: both("kg/t", "lb/short ton", 2),
  asSuppliedKgPerT: both(
    () => unitWords().asSuppliedKgPerT,
    () => unitWords().asSuppliedLbPerShortTon,
    2,
  ),
  percent: same("%"),
  mgPerL: same("mg/L"),
  turbidity: same("NTU"),
  seconds: same("s"),
  minutes: same("min"),
  hours: same("h"),
  ml: same("mL"),
  gram: same("g"),
  temperatureC: both("°C", "°F", 9 / 5, 32),
  densityKgPerL: both("kg/L", "lb/gal", lPerUsGal / kgPerLb),
  massKg: both("kg", "lb", 1 / kgPerLb),
  kgPerH: both("kg/h", "lb/h", 1 / kgPerLb),
  kgPerYear: both(
    () => unitWords().kgPerYear,
    () => unitWords().lbPerYear,
    1 / kgPerLb,
  ),
  flowM3PerH: both("m³/h", "gal/min", 1000 / lPerUsGal / 60),
  flowLPerH: both("L/h", "gal/h", 1 / lPerUsGal),
  flowMlPerMin: same("mL/min"),
  flowGPerMin: same("g/min"),
  volumeL: both("L", "gal", 1 / lPerUsGal),
  volumeM3: both("m³", "gal", 1000 / lPerUsGal),
  lengthM: both("m", "ft", 1 / 0.3048),
  pipeMm: both("mm", "in", 1 / 25.4),
  days: same("d"),
  litrePerYear: both(
    () => unitWords().litrePerYear,
    () => unitWords().galPerYear,
    1 / lPerUsGal,
  ),
  loadingKgPerHPerM: both("kg/h·m", "lb/h·ft", 0.3048 / kgPerLb),
  costPerTDs: same(() => unitWords().perTDrySolids),
  costPerYear: same(() => unitWords().perYear),
  perSecond: same("1/s"),
  secondsLPerG: same("s·L/g"),
  srfTmPerKg: same("Tm/kg"),
  mediumPerM: same("1/m"),
  pressureKPa: both("kPa", "psi", 1 / kPaPerPsi),
  millivolt: same("mV"),
  ratio: same(""),
} satisfies Record<string, { metric: Display; us: Display }>;

export type QuantityKind = keyof typeof table;

function display(kind: QuantityKind, system: UnitSystem): Display {
  return table[kind][system];
}

/** The unit's text in this unit system. */
export function unitText(kind: QuantityKind, system: UnitSystem): string {
  const { unit } = display(kind, system);
  return typeof unit === "string" ? unit : unit();
}

/** Canonical value to the value shown. */
export function toShown(value: number, kind: QuantityKind, system: UnitSystem): number {
  const { factor, offset = 0 } = display(kind, system);
  return value * factor + offset;
}

/** Value shown (and typed) to the canonical value that is stored. */
export function toCanonical(shown: number, kind: QuantityKind, system: UnitSystem): number {
  const { factor, offset = 0 } = display(kind, system);
  return (shown - offset) / factor;
}

/**
 * The kind of quantity that a metric unit belongs to, where it reads otherwise in US customary units. Bare millimetres
 * belong to none: flocs, paddles and funnels of the bench are told in them in either system, pipes alone in inches.
 */
export function kindOfUnit(unit: string): QuantityKind | null {
  const kinds = Object.keys(table) as QuantityKind[];
  return (
    kinds.find(
      (kind) => kind !== "pipeMm" && table[kind].metric.unit === unit && table[kind].us.unit !== unit,
    ) ?? null
  );
}

/** A difference (a spread, a step) from canonical to shown: scaled without the offset. */
export function spreadToShown(spread: number, kind: QuantityKind, system: UnitSystem): number {
  return spread * display(kind, system).factor;
}
