import { bad, good, type Outcome } from "../outcome.ts";
import { waterViscosityMPaS } from "./water.ts";
import { benchFormulaWords } from "../words/bench-formulas.ts";

/** Capillary suction time above the water blank, per g/L of suspended solids: s·L/g. */
export function normalisedCst(cstS: number, waterS: number, solidsGPerL: number): Outcome<number> {
  if (!(solidsGPerL > 0)) return bad(benchFormulaWords.filtration.suspendedSolids);
  if (cstS < waterS) return bad(benchFormulaWords.filtration.waterSlower);
  return good((cstS - waterS) / solidsGPerL);
}

/** A capillary suction time as it would be at 20 °C, by water's viscosity (paper effects ignored). */
export function cstAt20C(cstS: number, temperatureC: number): number {
  return (cstS * waterViscosityMPaS(20)) / waterViscosityMPaS(temperatureC);
}

/** Turbidity of the undiluted filtrate from a diluted reading (dilution = total volume over sample volume). */
export function undilutedTurbidity(read: number, dilution: number): number {
  return read * dilution;
}

/** Share of the jar's liquid that drained, percent: V / (Vs + Vp). */
export function drainedPct(drainedMl: number, sampleMl: number, addedMl: number): number {
  return (100 * drainedMl) / (sampleMl + addedMl);
}

/** Pressure of a force on a round piston, kPa. */
export function pressureKPa(forceN: number, diameterMm: number): number {
  return forceN / (Math.PI * (diameterMm / 2000) ** 2) / 1000;
}

/** Time to filter per g/L of suspended solids: s·L/g. */
export function normalisedFilterTime(seconds: number, solidsGPerL: number): number {
  return seconds / solidsGPerL;
}

export interface FiltrationResistance {
  /** slope of t/V against V, s/m6 */
  slope: number;
  /** intercept, s/m3 */
  intercept: number;
  r2: number;
  /** specific resistance to filtration, m/kg */
  srfMPerKg: number;
  /** resistance of the medium, 1/m */
  mediumPerM: number;
}

/**
 * Specific resistance to filtration from filtrate volumes (mL) and times (s): t/V = b V + c; SRF = 2 dP A^2 b / (mu w).
 * Textbook constant-pressure form, from memory; EN 14701-2.
 */
export function filtrationResistance(
  points: { volumeMl: number; seconds: number }[],
  conditions: { diameterMm: number; pressureKPa: number; viscosityMPaS: number; cakeKgPerM3: number },
): Outcome<FiltrationResistance> {
  if (points.length < 3) return bad(benchFormulaWords.filtration.fewVolumes);
  const x = points.map((point) => point.volumeMl * 1e-6);
  const y = points.map((point, i) => point.seconds / x[i]!);
  const n = x.length;
  const mean = (values: number[]) => values.reduce((sum, value) => sum + value, 0) / n;
  const [mx, my] = [mean(x), mean(y)];
  const sxx = x.reduce((sum, value) => sum + (value - mx) ** 2, 0);
  const sxy = x.reduce((sum, value, i) => sum + (value - mx) * (y[i]! - my), 0);
  const syy = y.reduce((sum, value) => sum + (value - my) ** 2, 0);
  if (!(sxx > 0)) return bad(benchFormulaWords.filtration.sameVolumes);
  const slope = sxy / sxx;
  if (!(slope > 0)) return bad(benchFormulaWords.filtration.notCake);
  const intercept = my - slope * mx;
  const area = Math.PI * (conditions.diameterMm / 2000) ** 2;
  const pressure = conditions.pressureKPa * 1000;
  const viscosity = conditions.viscosityMPaS / 1000;
  return good({
    slope,
    intercept,
    r2: syy > 0 ? (sxy * sxy) / (sxx * syy) : 1,
    srfMPerKg: (2 * pressure * area ** 2 * slope) / (viscosity * conditions.cakeKgPerM3),
    mediumPerM: (intercept * pressure * area) / viscosity,
  });
}

/** Dry cake left by each volume of filtrate, kg/m3: 1 / (1/c0 - 1/ck) of feed and cake concentration. */
export function cakePerFiltrateKgPerM3(feedKgPerM3: number, cakeKgPerM3: number): Outcome<number> {
  if (!(feedKgPerM3 > 0)) return bad(benchFormulaWords.filtration.feed);
  if (!(cakeKgPerM3 > feedKgPerM3)) return bad(benchFormulaWords.filtration.cake);
  return good(1 / (1 / feedKgPerM3 - 1 / cakeKgPerM3));
}

/**
 * Floc strength by breaking and regrowing: strength factor broken / first, and recovery (regrown - broken) /
 * (first - broken), both as shares; recovery is null where it was not regrown. Formula from memory.
 */
export function flocStrength(
  firstMm: number,
  brokenMm: number,
  regrownMm: number | null,
): { strength: number; recovery: number | null } {
  return {
    strength: brokenMm / firstMm,
    recovery:
      regrownMm === null || firstMm === brokenMm ? null : (regrownMm - brokenMm) / (firstMm - brokenMm),
  };
}
