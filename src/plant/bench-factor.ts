import { bad, good, type Outcome } from "../outcome.ts";
import { tFactor } from "../units/student.ts";
import { plantFormulaWords } from "../words/plant-formulas.ts";

/** One trial at the plant: the dose it settled on there and the one the jars had said, kg/t. */
export interface FactorTrial {
  plantDoseKgPerT: number;
  benchDoseKgPerT: number;
}

export interface BenchFactor {
  /** geometric mean of plant dose over bench dose */
  factor: number;
  n: number;
  /** coefficient of variation between trials, percent; null for one trial */
  spreadPct: number | null;
  /** 95 % of the mean; null for one trial */
  low: number | null;
  high: number | null;
  /** relative standard uncertainty of the next trial's factor: spread and mean together; null for one trial */
  nextRelative: number | null;
}

/** Bench-to-plant factor: geometric mean and spread of D plant / D bench over trials of one machine, sludge and product. */
export function benchFactor(trials: FactorTrial[]): Outcome<BenchFactor> {
  const n = trials.length;
  if (n === 0) return bad(plantFormulaWords.runs.noFactorRun);
  const logs: number[] = [];
  for (const { plantDoseKgPerT, benchDoseKgPerT } of trials) {
    if (!(plantDoseKgPerT > 0 && benchDoseKgPerT > 0)) return bad(plantFormulaWords.runs.factorDoses);
    logs.push(Math.log(plantDoseKgPerT / benchDoseKgPerT));
  }
  const mean = logs.reduce((sum, value) => sum + value, 0) / n;
  const factor = Math.exp(mean);
  if (n === 1) return good({ factor, n, spreadPct: null, low: null, high: null, nextRelative: null });
  const sd = Math.sqrt(logs.reduce((sum, value) => sum + (value - mean) ** 2, 0) / (n - 1));
  const half = (tFactor(n - 1) * sd) / Math.sqrt(n);
  return good({
    factor,
    n,
    spreadPct: 100 * Math.sqrt(Math.exp(sd ** 2) - 1),
    low: Math.exp(mean - half),
    high: Math.exp(mean + half),
    nextRelative: sd * Math.sqrt(1 + 1 / n),
  });
}

export interface NextDose {
  doseKgPerT: number;
  /** 95 %; null where neither the bench dose nor the factor has a known uncertainty */
  low: number | null;
  high: number | null;
  /** relative standard uncertainty of what is known */
  relative: number | null;
}

/** Two-sided 95 % factor of the normal distribution, for parts whose uncertainty is taken as known. */
const normal95 = 1.959964;

/**
 * The plant dose to set next: factor x bench dose. Relative standard uncertainties join in quadrature; for the range
 * each part enters at its own 95 % (Student's for the factor, which rests on few trials), which holds in simulation
 * where effective degrees of freedom do not. Ends are formed in ln dose.
 */
export function nextDose(
  benchDoseKgPerT: number,
  benchRelative: number | null,
  factor: BenchFactor | null,
): NextDose {
  const doseKgPerT = benchDoseKgPerT * (factor?.factor ?? 1);
  const own = factor?.nextRelative ?? 0;
  const relative = Math.hypot(benchRelative ?? 0, own);
  if (!(relative > 0)) return { doseKgPerT, low: null, high: null, relative: null };
  const half = Math.hypot(normal95 * (benchRelative ?? 0), own > 0 ? tFactor(factor!.n - 1) * own : 0);
  return {
    doseKgPerT,
    low: doseKgPerT * Math.exp(-half),
    high: doseKgPerT * Math.exp(half),
    relative,
  };
}
