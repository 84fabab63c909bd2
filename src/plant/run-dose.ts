import { bad, good, type Outcome } from "../outcome.ts";
import { plantFormulaWords } from "../words/plant-formulas.ts";

/** Three ways to know what really went in: what was caught, what the container lost, what the pump line says. */
export type DoseWay = "draw-down" | "container" | "pump-line";

export interface WayDose {
  way: DoseWay;
  doseKgPerT: number;
}

export interface Reconciled {
  /** the dose that counts: caught before weighed before read off the line */
  doseKgPerT: number;
  from: DoseWay;
  /** every way against the one that counts, percent; the one that counts is 0 */
  differences: { way: DoseWay; doseKgPerT: number; differencePct: number }[];
  /** largest difference between any two ways over their mean, percent; null for one way alone */
  spreadPct: number | null;
  /** within 5 % of each other; null for one way alone */
  agrees: boolean | null;
}

/** Ways further apart than this point at a wrong measurement (trade formulas, section 8: common practice, no source). */
const agreementPct = 5;

/** Dose in kg/t of an active rate in kg/h on a load of dry solids in kg/h: D = 1000 active / load. */
export function doseOfRate(activeKgPerH: number, dsKgPerH: number): Outcome<number> {
  if (!(dsKgPerH > 0)) return bad(plantFormulaWords.runs.load);
  return good((1000 * activeKgPerH) / dsKgPerH);
}

/** Active polymer in kg/h in a stream of mL/min (density in kg/L) or g/min (density 1), of `activePct` by mass. */
export function activeOfStream(flowPerMin: number, densityKgPerL: number, activePct: number): number {
  return (flowPerMin * 60 * densityKgPerL * activePct) / 100 / 1000;
}

const trust: DoseWay[] = ["draw-down", "container", "pump-line"];

/** Sets the ways side by side. Needs at least one. */
export function reconcile(ways: WayDose[]): Outcome<Reconciled> {
  const ordered = [...ways].sort((a, b) => trust.indexOf(a.way) - trust.indexOf(b.way));
  const [first] = ordered;
  if (!first) return bad(plantFormulaWords.runs.noWay);
  const doses = ordered.map(({ doseKgPerT }) => doseKgPerT);
  const mean = doses.reduce((sum, dose) => sum + dose, 0) / doses.length;
  const spreadPct = doses.length < 2 ? null : (100 * (Math.max(...doses) - Math.min(...doses))) / mean;
  return good({
    doseKgPerT: first.doseKgPerT,
    from: first.way,
    differences: ordered.map(({ way, doseKgPerT }) => ({
      way,
      doseKgPerT,
      differencePct: 100 * (doseKgPerT / first.doseKgPerT - 1),
    })),
    spreadPct,
    agrees: spreadPct === null ? null : spreadPct <= agreementPct,
  });
}
