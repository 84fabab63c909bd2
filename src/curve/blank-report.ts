import type { FitReport, FitStatus, Scale } from "./types.ts";

/** A report without numbers, as it stands unless a fit converges. */
export function blankReport(
  rows: number[][],
  scale: Scale,
  status: FitStatus,
  iterations: number,
  censored: boolean,
): Omit<FitReport, "model" | "influence"> & { influence: [] } {
  return {
    n: rows.length,
    rowsUsed: rows.flat().sort((a, b) => a - b),
    scale,
    status,
    iterations,
    parameters: [],
    covariance: [],
    rss: null,
    df: null,
    residualSd: null,
    r2: null,
    aicc: null,
    aiccNatural: null,
    fModel: null,
    lackOfFit: null,
    optimum: null,
    outliers: [],
    influence: [],
    warnings: censored ? ["censored"] : [],
  };
}
