import { bad, good, type Outcome } from "../outcome.ts";
import { tFactor } from "../units/student.ts";
import { benchFormulaWords } from "../words/bench-formulas.ts";

/** One dish: ignited and cooled, with wet sludge, dried at 103 to 105 °C, ashed at 550 °C. Masses in g. */
export interface DishMasses {
  tareG: number | null;
  wetG: number | null;
  dryG: number | null;
  ashG: number | null;
}

/**
 * Total solids, percent of wet mass: 100 (dry - tare) / (wet - tare). Source: Standard Methods 2540 G; EN 15934
 * (number from memory). Says which mass is missing or out of order.
 */
export function totalSolidsPct({ tareG, wetG, dryG }: DishMasses): Outcome<number> {
  if (tareG === null) return bad(benchFormulaWords.dish.tareMissing);
  if (wetG === null) return bad(benchFormulaWords.dish.wetMissing);
  if (dryG === null) return bad(benchFormulaWords.dish.dryMissing);
  if (!(tareG < dryG && dryG < wetG)) return bad(benchFormulaWords.dish.wetOrder);
  return good((100 * (dryG - tareG)) / (wetG - tareG));
}

/** Volatile share of the dry solids in percent: 100 (dry - ash) / (dry - tare). Source: Standard Methods 2540 G. */
export function volatileSolidsPct({ tareG, dryG, ashG }: DishMasses): Outcome<number> {
  if (tareG === null) return bad(benchFormulaWords.dish.tareMissing);
  if (dryG === null) return bad(benchFormulaWords.dish.dryMissing);
  if (ashG === null) return bad(benchFormulaWords.dish.ashMissing);
  if (!(tareG < ashG && ashG < dryG)) return bad(benchFormulaWords.dish.ashOrder);
  return good((100 * (dryG - ashG)) / (dryG - tareG));
}

/** Mean and scatter of replicates. sd and what follows are null for a single value. */
export interface Replicates {
  n: number;
  mean: number;
  sd: number | null;
  /** percent */
  relativeSdPct: number | null;
  standardError: number | null;
  /** 95 % half-width of the mean (Student t) */
  halfWidth95: number | null;
  /** range over mean in percent: the relative percent difference for two */
  relativeDifferencePct: number | null;
}

/** Summarises replicate values; fails on none. */
export function replicates(values: number[]): Outcome<Replicates> {
  const n = values.length;
  if (n === 0) return bad(benchFormulaWords.dish.noValue);
  const mean = values.reduce((sum, value) => sum + value, 0) / n;
  if (n === 1)
    return good({
      n,
      mean,
      sd: null,
      relativeSdPct: null,
      standardError: null,
      halfWidth95: null,
      relativeDifferencePct: null,
    });
  const sd = Math.sqrt(values.reduce((sum, value) => sum + (value - mean) ** 2, 0) / (n - 1));
  const standardError = sd / Math.sqrt(n);
  const range = Math.max(...values) - Math.min(...values);
  return good({
    n,
    mean,
    sd,
    relativeSdPct: mean === 0 ? null : (100 * sd) / Math.abs(mean),
    standardError,
    halfWidth95: tFactor(n - 1) * standardError,
    relativeDifferencePct: mean === 0 ? null : (100 * range) / Math.abs(mean),
  });
}

/** Duplicate dishes of a feed sample should agree within 5 % of their mean (common practice, no source). */
export const feedDifferenceLimitPct = 5;

/** Suspended solids in mg/L from filter masses in g and the filtered volume in mL. Source: Standard Methods 2540 D. */
export function suspendedSolidsMgPerL(tareG: number, dryG: number, volumeMl: number): Outcome<number> {
  if (!(volumeMl > 0)) return bad(benchFormulaWords.dish.filterVolume);
  if (!(dryG > tareG)) return bad(benchFormulaWords.dish.filterMass);
  return good(((dryG - tareG) * 1e6) / volumeMl);
}
