import { bad, good, type Outcome } from "../outcome.ts";
import { benchFormulaWords } from "../words/bench-formulas.ts";

/** What a jar's dose is made from. Strength is active polymer, percent by mass of the solution. */
export interface JarBasis {
  sampleVolumeMl: number;
  sampleDensityKgPerL: number;
  totalSolidsPct: number;
  solutionActivePct: number;
  solutionDensityKgPerL: number;
}

/** Dry solids in a jar's sample, g. */
export function drySolidsG({ sampleVolumeMl, sampleDensityKgPerL, totalSolidsPct }: JarBasis): number {
  return (sampleVolumeMl * sampleDensityKgPerL * totalSolidsPct) / 100;
}

function check(basis: JarBasis): string | null {
  if (!(basis.sampleVolumeMl > 0)) return benchFormulaWords.dose.sampleVolume;
  if (!(basis.sampleDensityKgPerL > 0)) return benchFormulaWords.dose.sampleDensity;
  if (!(basis.totalSolidsPct > 0)) return benchFormulaWords.dose.totalSolids;
  if (!(basis.solutionActivePct > 0)) return benchFormulaWords.dose.strength;
  if (!(basis.solutionDensityKgPerL > 0)) return benchFormulaWords.dose.solutionDensity;
  return null;
}

/** Active dose in kg/t dry solids from the volume injected: 1000 Vp rho w / (Vs rho_s TS) (mass basis). */
export function doseFromSyringe(syringeMl: number, basis: JarBasis): Outcome<number> {
  const fault = check(basis);
  if (fault) return bad(fault);
  const polymerG = (syringeMl * basis.solutionDensityKgPerL * basis.solutionActivePct) / 100;
  return good((1000 * polymerG) / drySolidsG(basis));
}

/** The volume to inject for a dose: the same formula turned round. mL. */
export function syringeForDose(doseKgPerT: number, basis: JarBasis): Outcome<number> {
  const fault = check(basis);
  if (fault) return bad(fault);
  return good(
    (doseKgPerT * drySolidsG(basis)) / (1000 * basis.solutionDensityKgPerL * (basis.solutionActivePct / 100)),
  );
}

/** Whether D times a or D / a would lie in a band of usual doses while D itself does not: the slip of bases. */
export function basisSlip(
  doseKgPerT: number,
  activePct: number,
  band: { low: number; high: number },
): "read-as-supplied" | "read-as-active" | null {
  const inside = (dose: number) => dose >= band.low && dose <= band.high;
  if (inside(doseKgPerT)) return null;
  if (inside((doseKgPerT * activePct) / 100)) return "read-as-supplied";
  if (inside(doseKgPerT / (activePct / 100))) return "read-as-active";
  return null;
}
