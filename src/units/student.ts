import fCdf from "@stdlib/stats-base-dists-f-cdf";
import tQuantile from "@stdlib/stats-base-dists-t-quantile";

/** The two-sided Student t factor for a confidence level (0.95 unless said) and its degrees of freedom. */
export function tFactor(df: number, level = 0.95): number {
  return tQuantile(0.5 + level / 2, df);
}

/** P(F > f), taken as the lower tail of 1/F so that a very small chance keeps its digits. */
export function fisherTail(f: number, df1: number, df2: number): number {
  return f > 0 ? fCdf(1 / f, df2, df1) : 1;
}
