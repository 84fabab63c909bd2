import { bad, good, type Outcome } from "../outcome.ts";
import { tFactor } from "../units/student.ts";

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
  if (tareG === null) return bad("the empty dish is not weighed yet");
  if (wetG === null) return bad("the dish with wet sludge is not weighed yet");
  if (dryG === null) return bad("the dish is not dried yet");
  if (!(tareG < dryG && dryG < wetG)) return bad("the masses are out of order: empty < dry < wet");
  return good((100 * (dryG - tareG)) / (wetG - tareG));
}

/** Volatile share of the dry solids in percent: 100 (dry - ash) / (dry - tare). Source: Standard Methods 2540 G. */
export function volatileSolidsPct({ tareG, dryG, ashG }: DishMasses): Outcome<number> {
  if (tareG === null) return bad("the empty dish is not weighed yet");
  if (dryG === null) return bad("the dish is not dried yet");
  if (ashG === null) return bad("the dish is not ashed yet");
  if (!(tareG < ashG && ashG < dryG)) return bad("the masses are out of order: empty < ash < dry");
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
  if (n === 0) return bad("no value yet");
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
  if (!(volumeMl > 0)) return bad("the filtered volume must be above 0");
  if (!(dryG > tareG)) return bad("the dried filter must weigh more than the empty one");
  return good(((dryG - tareG) * 1e6) / volumeMl);
}
