import { tQuantile } from "./distributions.ts";
import { meanShift, type Fit } from "./fit.ts";
import { offScale } from "./problem.ts";
import type { ResponseCurve } from "./types.ts";

/** Fitted mean on the fit's scale with its standard error, averaged over blocks. */
export function meanOnScale(fit: Fit, x: number): { mean: number; se: number } {
  const { model, problem, estimate } = fit;
  const gradient = model.gradient(x, estimate.parameters);
  const n = problem.x.length;
  const row = [
    ...estimate.free.map((k) => gradient[k]!),
    ...problem.blockNames.map(
      (_, j) => problem.blockColumns.reduce((sum, columns) => sum + columns[j]!, 0) / n,
    ),
  ];
  let variance = 0;
  for (let i = 0; i < row.length; i++)
    for (let j = 0; j < row.length; j++) variance += row[i]! * estimate.covariance[i]![j]! * row[j]!;
  return {
    mean: model.value(x, estimate.parameters) + meanShift(problem, estimate),
    se: Math.sqrt(Math.max(0, variance)),
  };
}

/** The fitted response at a dose, on the natural scale. */
export function meanAt(fit: Fit, x: number): number {
  return offScale(meanOnScale(fit, x).mean, fit.report.scale);
}

/** Two-sided confidence band of the mean curve at a dose, natural scale. */
export function meanBand(fit: Fit, x: number, level = 0.95): { low: number; high: number } {
  const { mean, se } = meanOnScale(fit, x);
  const t = tQuantile(0.5 + level / 2, fit.estimate.df);
  return { low: offScale(mean - t * se, fit.report.scale), high: offScale(mean + t * se, fit.report.scale) };
}

/** Two-sided prediction band for one new jar at a dose, natural scale. */
export function predictionBand(fit: Fit, x: number, level = 0.95): { low: number; high: number } {
  const { mean, se } = meanOnScale(fit, x);
  const t = tQuantile(0.5 + level / 2, fit.estimate.df);
  const half = t * Math.hypot(se, fit.estimate.residualSd);
  return { low: offScale(mean - half, fit.report.scale), high: offScale(mean + half, fit.report.scale) };
}

/** The lower Cholesky factor of a covariance, with tiny negative pivots taken as zero. */
export function choleskyOf(covariance: number[][]): number[][] {
  const p = covariance.length;
  const lower = Array.from({ length: p }, () => new Array<number>(p).fill(0));
  for (let i = 0; i < p; i++)
    for (let j = 0; j <= i; j++) {
      let sum = covariance[i]![j]!;
      for (let k = 0; k < j; k++) sum -= lower[i]![k]! * lower[j]![k]!;
      lower[i]![j] = i === j ? Math.sqrt(Math.max(0, sum)) : lower[j]![j]! > 0 ? sum / lower[j]![j]! : 0;
    }
  return lower;
}

/** The fit as the choice of a dose sees it (ResponseCurve). Only for a converged fit. */
export function responseCurve(fit: Fit, response: string): ResponseCurve {
  const { model, problem, estimate } = fit;
  const { scale } = fit.report;
  const one = tQuantile(0.95, estimate.df);
  const cholesky = choleskyOf(estimate.covariance);
  return {
    response,
    tested: { low: problem.range.low, high: problem.range.high },
    mean: (x) => meanAt(fit, x),
    low95: (x) => {
      const { mean, se } = meanOnScale(fit, x);
      return offScale(mean - one * se, scale);
    },
    high95: (x) => {
      const { mean, se } = meanOnScale(fit, x);
      return offScale(mean + one * se, scale);
    },
    simulate: (normal) => {
      const z = estimate.covariance.map(() => normal());
      const moved = cholesky.map((row) => row.reduce((sum, value, k) => sum + value * z[k]!, 0));
      const parameters = [...estimate.parameters];
      estimate.free.forEach((k, j) => {
        const positive = model.positive.includes(k);
        const value = parameters[k]!;
        parameters[k] = positive ? value * Math.exp(moved[j]! / value) : value + moved[j]!;
      });
      const shift = meanShift(problem, {
        ...estimate,
        shifts: estimate.shifts.map((value, j) => value + moved[estimate.free.length + j]!),
      });
      return (x) => offScale(model.value(x, parameters) + shift, scale);
    },
    scatter: (mean, z) =>
      scale === "log" ? mean * Math.exp(estimate.residualSd * z) : mean + estimate.residualSd * z,
  };
}
