import tCdf from "@stdlib/stats-base-dists-t-cdf";
import { bad, good, type Outcome } from "../outcome.ts";
import { tFactor } from "../units/student.ts";
import { plantFormulaWords } from "../words/plant-formulas.ts";

export interface PairedComparison {
  n: number;
  /** mean of B - A */
  meanDifference: number;
  sd: number;
  t: number | null;
  df: number;
  low: number;
  high: number;
  /** two-sided; null where all differences are the same */
  p: number | null;
}

/** Paired comparison of two settings, pairs taken at the same time: mean difference B - A, its t, 95 % interval and p. */
export function comparePairs(pairs: { a: number; b: number }[]): Outcome<PairedComparison> {
  const n = pairs.length;
  if (n < 2) return bad(plantFormulaWords.runs.twoPairs);
  const differences = pairs.map(({ a, b }) => b - a);
  const meanDifference = differences.reduce((sum, value) => sum + value, 0) / n;
  const sd = Math.sqrt(differences.reduce((sum, value) => sum + (value - meanDifference) ** 2, 0) / (n - 1));
  const se = sd / Math.sqrt(n);
  const half = tFactor(n - 1) * se;
  const t = se > 0 ? meanDifference / se : null;
  return good({
    n,
    meanDifference,
    sd,
    t,
    df: n - 1,
    low: meanDifference - half,
    high: meanDifference + half,
    // the lower tail keeps the digits of a very small chance
    p: t === null ? null : 2 * tCdf(-Math.abs(t), n - 1),
  });
}
