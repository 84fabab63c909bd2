import tQuantile from "@stdlib/stats-base-dists-t-quantile";

/** The two-sided Student t factor for a confidence level (0.95 unless said) and its degrees of freedom. */
export function tFactor(df: number, level = 0.95): number {
  return tQuantile(0.5 + level / 2, df);
}
