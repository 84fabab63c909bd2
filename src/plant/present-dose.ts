import { bad, good, type Outcome } from "../outcome.ts";
import { plantFormulaWords } from "../words/plant-formulas.ts";

/** What the plant runs at now, as somebody can read it off: a product or solution flow with its basis, and the feed. */
export interface PresentRun {
  feedM3PerH: number;
  totalSolidsPct: number;
  densityKgPerL: number;
  /** measured flow of the neat product or of the solution, mL/min */
  flowMlPerMin: number;
  /** density of what flows, kg/L */
  flowDensityKgPerL: number;
  /** active share of what flows, percent by mass: the neat product's, or the solution's strength */
  activePct: number;
}

/** The dose the plant really gives: active kg/h over dry solids per hour, kg/t. Source: trade formulas, section 7. */
export function presentDoseKgPerT(run: PresentRun): Outcome<number> {
  for (const [name, value] of Object.entries(run))
    if (!(value > 0)) return bad(plantFormulaWords.present.aboveZero(name));
  const activeKgPerH = (run.flowMlPerMin * 60 * run.flowDensityKgPerL * run.activePct) / 100 / 1000;
  const drySolidsTPerH = (run.feedM3PerH * run.densityKgPerL * run.totalSolidsPct) / 100;
  return good(activeKgPerH / drySolidsTPerH);
}
