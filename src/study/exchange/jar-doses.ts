import { doseFromSyringe, syringeForDose, type JarBasis } from "../../bench/dose.ts";
import type { ChosenColumns, DoseBasis, DoseUnit, Polymer } from "../../exchange/columns.ts";
import { bad, good, type Outcome } from "../../outcome.ts";
import { activeDose } from "../../product/make-down.ts";
import { totalSolidsGPerL } from "../../sample/density.ts";
import { toCanonical } from "../../units/display.ts";
import type { RowReader } from "./row-reader.ts";
import type { SeriesTarget } from "./series-targets.ts";
import { importWords } from "../../words/imports.ts";

/** A jar's dose of one polymer as the study keeps it: what was planned and what was injected. */
export interface JarDose {
  plannedKgPerT: number | null;
  syringeMl: number | null;
  /** active dose in kg/t that this makes, null where nothing was given */
  doseKgPerT: number | null;
}

const unitWords: Record<DoseUnit, () => string> = {
  "kg-per-t": () => "kg/t",
  "lb-per-short-ton": () => "lb/short ton",
  "mg-per-l-feed": () => importWords.mgPerLFeed,
  "ml-solution": () => importWords.mlSolution,
};

const stockOf = (target: SeriesTarget, polymer: Polymer) => (polymer === "a" ? target.stockA : target.stockB);

/** What a volume of solution is worth in this jar, or which part of that is not known yet. */
function jarBasis(target: SeriesTarget, polymer: Polymer, sampleVolumeMl: number | null): Outcome<JarBasis> {
  const letter = polymer.toUpperCase();
  const stock = stockOf(target, polymer);
  const { sample, series } = target;
  if (!stock) return bad(importWords.pickStock(letter, series.label));
  if (stock.active.value === null)
    return bad(importWords.strengthOf(stock.stock.label, stock.active.missing ?? ""));
  if (stock.stock.solutionDensityKgPerL === null) return bad(importWords.enterDensity(stock.stock.label));
  if (sampleVolumeMl === null) return bad(importWords.enterVolume(series.label));
  if (sample.totalSolids.value === null) return bad(importWords.solidsOf(sample.totalSolids.missing ?? ""));
  if (sample.density.value === null) return bad(importWords.densityOf(sample.density.missing ?? ""));
  return good({
    sampleVolumeMl,
    sampleDensityKgPerL: sample.density.value,
    totalSolidsPct: sample.totalSolids.value,
    solutionActivePct: stock.active.value,
    solutionDensityKgPerL: stock.stock.solutionDensityKgPerL,
  });
}

/** A typed dose as kg of active polymer per tonne of dry solids, or which figure is missing for that. */
function activeKgPerT(
  value: number,
  unit: Exclude<DoseUnit, "ml-solution">,
  basis: DoseBasis,
  target: SeriesTarget,
  polymer: Polymer,
): Outcome<number> {
  let dose = value;
  if (unit === "lb-per-short-ton") dose = toCanonical(value, "doseKgPerT", "us");
  if (unit === "mg-per-l-feed") {
    const { totalSolids, density } = target.sample;
    if (totalSolids.value === null) return bad(importWords.solidsOf(totalSolids.missing ?? ""));
    if (density.value === null) return bad(importWords.densityOf(density.missing ?? ""));
    dose = value / totalSolidsGPerL(totalSolids.value, density.value);
  }
  if (basis === "active") return good(dose);
  const stock = stockOf(target, polymer);
  if (!stock) return bad(importWords.pickStock(polymer.toUpperCase(), target.series.label));
  if (stock.product.activePct === null) return bad(importWords.enterActive(stock.product.label));
  return good(activeDose(dose, stock.product.activePct));
}

/** Something of the study that no row can do without: the whole import waits for it. */
export interface MissingBasis {
  row: number;
  column: number;
  message: string;
}

const agreement = 0.01;

/**
 * The dose of one polymer in one row. A volume of solution is kept as it is; any other unit is turned into the volume
 * that makes it (trade formulas, section 1). Where both are there, the volume counts and the dose must agree within 1 %.
 */
export function readDose(
  row: RowReader,
  polymer: Polymer,
  columns: ChosenColumns,
  target: SeriesTarget,
  sampleVolumeMl: number | null,
  missing: (fault: MissingBasis) => void,
): JarDose {
  const own = columns.doses.filter((dose) => dose.polymer === polymer);
  const volume = own.find(({ unit }) => unit === "ml-solution");
  const stated = own.find(({ unit }) => unit !== "ml-solution");
  const plannedField = polymer === "a" ? "planned_dose_a_kg_per_t" : "planned_dose_b_kg_per_t";
  const planned = row.has(plannedField) ? row.number(plannedField) : null;
  const lack = (column: number, unit: DoseUnit, message: string): JarDose => {
    missing({
      row: row.line,
      column,
      message: importWords.doseWaits(unitWords[unit](), message),
    });
    return { plannedKgPerT: planned, syringeMl: null, doseKgPerT: null };
  };
  const notNegative = (column: number): number | null => {
    const value = row.number(column);
    if (value === null || value >= 0) return value;
    row.fault(column, importWords.negativeDose(row.words(value)));
    return null;
  };

  const syringeMl = volume ? notNegative(volume.column) : null;
  const typed = stated ? notNegative(stated.column) : null;
  if (syringeMl !== null && volume) {
    if (syringeMl === 0 && (typed ?? 0) === 0) return { plannedKgPerT: planned, syringeMl, doseKgPerT: 0 };
    const basis = jarBasis(target, polymer, sampleVolumeMl);
    if (!basis.ok) return lack(volume.column, "ml-solution", basis.message);
    const made = doseFromSyringe(syringeMl, basis.value);
    if (!made.ok) return lack(volume.column, "ml-solution", made.message);
    if (typed !== null && stated) {
      const claimed = activeKgPerT(
        typed,
        stated.unit as Exclude<DoseUnit, "ml-solution">,
        stated.basis,
        target,
        polymer,
      );
      if (!claimed.ok) return lack(stated.column, stated.unit, claimed.message);
      if (Math.abs(claimed.value - made.value) > agreement * Math.max(claimed.value, made.value))
        row.fault(
          stated.column,
          importWords.doseDisagrees(row.words(claimed.value), row.words(syringeMl), row.words(made.value)),
        );
    }
    return { plannedKgPerT: planned, syringeMl, doseKgPerT: made.value };
  }
  if (typed === null || !stated) return { plannedKgPerT: planned, syringeMl: null, doseKgPerT: null };
  const dose =
    typed === 0
      ? good(0)
      : activeKgPerT(typed, stated.unit as Exclude<DoseUnit, "ml-solution">, stated.basis, target, polymer);
  if (!dose.ok) return lack(stated.column, stated.unit, dose.message);
  const plannedKgPerT = row.has(plannedField) || volume ? planned : dose.value;
  // Beside a column of volumes a dose of 0 is only computed: nothing was entered for this jar.
  if (dose.value === 0 && volume) return { plannedKgPerT, syringeMl: null, doseKgPerT: 0 };
  if (dose.value === 0) return { plannedKgPerT, syringeMl: 0, doseKgPerT: 0 };
  const basis = jarBasis(target, polymer, sampleVolumeMl);
  if (!basis.ok) return lack(stated.column, stated.unit, basis.message);
  const injected = syringeForDose(dose.value, basis.value);
  if (!injected.ok) return lack(stated.column, stated.unit, injected.message);
  return { plannedKgPerT, syringeMl: injected.value, doseKgPerT: dose.value };
}
