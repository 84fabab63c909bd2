import { bad, good, type Outcome } from "../outcome.ts";
import { benchFormulaWords } from "../words/bench-formulas.ts";

/** Active strength in percent by mass from what was weighed in: 100 a m / M, with the active share a in percent. */
export function strengthFromMasses(neatG: number, totalG: number, activePct: number): Outcome<number> {
  if (!(neatG > 0)) return bad(benchFormulaWords.makeDown.neatMass);
  if (!(totalG > neatG)) return bad(benchFormulaWords.makeDown.totalMass);
  return good((activePct * neatG) / totalG);
}

export interface Recipe {
  neatG: number;
  waterG: number;
  /** null for a dry product: weigh it */
  neatMl: number | null;
  asSuppliedPct: number;
}

/** What to weigh for a strength (percent active) in a total mass: m = w M / a. */
export function recipeFor(
  strengthActivePct: number,
  totalG: number,
  product: { activePct: number; densityKgPerL: number | null; dry: boolean },
): Outcome<Recipe> {
  if (!(strengthActivePct > 0)) return bad(benchFormulaWords.makeDown.wantedStrength);
  if (!(totalG > 0)) return bad(benchFormulaWords.makeDown.wantedMass);
  if (strengthActivePct >= product.activePct)
    return bad(benchFormulaWords.makeDown.tooStrong(product.activePct));
  const neatG = (strengthActivePct * totalG) / product.activePct;
  return good({
    neatG,
    waterG: totalG - neatG,
    neatMl: product.dry || product.densityKgPerL === null ? null : neatG / product.densityKgPerL,
    asSuppliedPct: (100 * strengthActivePct) / product.activePct,
  });
}

/**
 * What a strength off its target looks like: close to the target times the active share (neat weighed as if it were
 * active), close to the target over the active share (divided twice), just off, or null where it is within 5 %.
 */
export function strengthSlip(
  madePct: number,
  targetPct: number,
  activePct: number,
): "neat-as-active" | "divided-twice" | "off" | null {
  const ratio = madePct / targetPct;
  const share = activePct / 100;
  const near = (value: number) => Math.abs(ratio / value - 1) <= 0.1;
  if (Math.abs(ratio - 1) <= 0.05) return null;
  // A nearly pure product has no slip to tell apart from a plain error of weighing.
  if (share < 0.85 && near(share)) return "neat-as-active";
  if (share < 0.85 && near(1 / share)) return "divided-twice";
  return "off";
}

/** Dose as supplied from an active dose, and back: D / a and a D, with the active share in percent. */
export function asSuppliedDose(activeDose: number, activePct: number): number {
  return activeDose / (activePct / 100);
}

export function activeDose(suppliedDose: number, activePct: number): number {
  return suppliedDose * (activePct / 100);
}
