import { leastSquaresDeviance } from "./deviance.ts";
import { solveLeastSquares } from "./least-squares.ts";
import type { CurveModel } from "./models/model.ts";
import type { Problem } from "./problem.ts";
import type { FitStatus } from "./types.ts";

/** Fixed parameters by their index in the model. */
export type Fixed = ReadonlyMap<number, number>;

/** The best parameters of one model for one problem, before any report is made of them. */
export interface Estimate {
  status: FitStatus;
  iterations: number;
  /** all natural parameters, fixed ones included */
  parameters: number[];
  /** additive shift of each block beyond the first */
  shifts: number[];
  /** indices of the parameters that were free */
  free: number[];
  /** of free parameters, then block shifts */
  covariance: number[][];
  residuals: number[];
  leverage: number[];
  /** null where readings are censored */
  rss: number | null;
  df: number;
  /** sqrt(rss / df), or sigma sqrt(n / df) */
  residualSd: number;
  deviance: number;
}

/** A status without numbers. */
export function noEstimate(status: Exclude<FitStatus, "converged">, iterations = 0): Estimate {
  return {
    status,
    iterations,
    parameters: [],
    shifts: [],
    free: [],
    covariance: [],
    residuals: [],
    leverage: [],
    rss: null,
    df: 0,
    residualSd: NaN,
    deviance: NaN,
  };
}

/** Covariance, leverage and the rest at a least-squares solution. */
export function finish(
  model: CurveModel,
  problem: Problem,
  free: number[],
  parameters: number[],
  shifts: number[],
  iterations: number,
): Estimate {
  const design = jacobianRows(model, problem, free, parameters);
  const residuals = problem.y.map((y, i) => y - fittedAt(model, problem, parameters, shifts, i));
  const rss = residuals.reduce((sum, value) => sum + value * value, 0);
  const solved = solveLeastSquares(design, residuals);
  if (solved.status === "singular") return noEstimate("singular", iterations);
  const n = problem.x.length;
  const df = n - (free.length + shifts.length);
  const variance = rss / df;
  return {
    status: "converged",
    iterations,
    parameters,
    shifts,
    free,
    covariance: solved.unscaledCovariance.map((row) => row.map((value) => value * variance)),
    residuals,
    leverage: solved.leverage,
    rss,
    df,
    residualSd: Math.sqrt(variance),
    deviance: leastSquaresDeviance(rss, problem.y),
  };
}

/** Gradient rows of the free parameters and block columns at these parameters. */
export function jacobianRows(
  model: CurveModel,
  problem: Problem,
  free: number[],
  parameters: number[],
): number[][] {
  return problem.x.map((x, i) => {
    const gradient = model.gradient(x, parameters);
    return [...free.map((k) => gradient[k]!), ...problem.blockColumns[i]!];
  });
}

/** The fitted value of observation i on the fit scale. */
export function fittedAt(
  model: CurveModel,
  problem: Problem,
  parameters: number[],
  shifts: number[],
  i: number,
): number {
  return (
    model.value(problem.x[i]!, parameters) +
    shifts.reduce((sum, shift, j) => sum + shift * problem.blockColumns[i]![j]!, 0)
  );
}
