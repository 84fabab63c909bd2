import { smallLeastSquares } from "./householder.ts";

/** A curve as the solver sees it: value and gradient at x for a full parameter vector. */
export interface SolvableCurve {
  value(x: number, parameters: number[]): number;
  gradient(x: number, parameters: number[]): number[];
  /** indices of parameters that must stay above zero: moved on the log scale */
  positive: number[];
}

export interface SolverOptions {
  /** indices of the parameters that move */
  free: number[];
  /** extra additive columns (block shifts), one row an observation */
  extra?: number[][];
  maxIterations?: number;
}

export interface Solution {
  status: "converged" | "not-converged";
  iterations: number;
  parameters: number[];
  /** coefficients of the extra columns */
  shifts: number[];
  rss: number;
  /** the projected residual relative to what is left: the measure that convergence is judged by */
  relativeOffset: number;
}

const offsetGoal = 1e-9;
const offsetFloor = 1e-5;

/**
 * Levenberg-Marquardt with column scaling on the stacked Jacobian (QR, never normal equations).
 * Convergence is judged by the relative offset of Bates & Watts: the projected residual against the residual left,
 * never by an absolute sum of squares.
 */
export function levenbergMarquardt(
  curve: SolvableCurve,
  x: number[],
  y: number[],
  start: number[],
  options: SolverOptions,
): Solution {
  const { free, extra } = options;
  const n = x.length;
  const extras = extra?.[0]?.length ?? 0;
  const p = free.length + extras;
  const positive = new Set(curve.positive);
  let parameters = [...start];
  let shifts = new Array<number>(extras).fill(0);
  const maxIterations = options.maxIterations ?? 300;
  const size = Math.sqrt(y.reduce((sum, value) => sum + value * value, 0)) || 1;

  const residualsOf = (at: number[], moved: number[]): Float64Array => {
    const out = new Float64Array(n);
    for (let i = 0; i < n; i++) {
      let fitted = curve.value(x[i]!, at);
      for (let j = 0; j < extras; j++) fitted += extra![i]![j]! * moved[j]!;
      out[i] = y[i]! - fitted;
    }
    return out;
  };
  const sumOf = (r: Float64Array) => r.reduce((sum, value) => sum + value * value, 0);

  let residuals = residualsOf(parameters, shifts);
  let rss = sumOf(residuals);
  let lambda = 1e-3;
  let relativeOffset = Infinity;
  let iterations = 0;
  let stalled = 0;
  const scale = new Float64Array(p);

  for (; iterations < maxIterations; iterations++) {
    if (!Number.isFinite(rss)) break;
    const jacobian = new Float64Array(n * p);
    for (let i = 0; i < n; i++) {
      const g = curve.gradient(x[i]!, parameters);
      for (let j = 0; j < free.length; j++) {
        const k = free[j]!;
        jacobian[i * p + j] = positive.has(k) ? g[k]! * parameters[k]! : g[k]!;
      }
      for (let j = 0; j < extras; j++) jacobian[i * p + free.length + j] = extra![i]![j]!;
    }
    const flat = smallLeastSquares(jacobian.slice(), residuals.slice(), n, p);
    const left = Math.sqrt(flat.rss / Math.max(1, n - p));
    relativeOffset = left > 0 ? flat.explained / Math.sqrt(p) / left : 0;
    if (relativeOffset < offsetGoal || Math.sqrt(rss) < 1e-14 * size)
      return { status: "converged", iterations, parameters, shifts, rss, relativeOffset };

    for (let j = 0; j < p; j++) {
      let norm = 0;
      for (let i = 0; i < n; i++) norm += jacobian[i * p + j]! ** 2;
      scale[j] = Math.max(scale[j]!, Math.sqrt(norm), 1e-300);
    }
    let accepted = false;
    while (lambda < 1e14) {
      const rows = n + p;
      const stacked = new Float64Array(rows * p);
      stacked.set(jacobian);
      for (let j = 0; j < p; j++) stacked[(n + j) * p + j] = Math.sqrt(lambda) * scale[j]!;
      const target = new Float64Array(rows);
      target.set(residuals);
      const { x: step } = smallLeastSquares(stacked, target, rows, p);
      if (step) {
        const trial = [...parameters];
        for (let j = 0; j < free.length; j++) {
          const k = free[j]!;
          trial[k] = positive.has(k)
            ? trial[k]! * Math.exp(Math.max(-2, Math.min(2, step[j]!)))
            : trial[k]! + step[j]!;
        }
        const moved = shifts.map((shift, j) => shift + step[free.length + j]!);
        const next = residualsOf(trial, moved);
        const nextRss = sumOf(next);
        if (nextRss <= rss && Number.isFinite(nextRss)) {
          const gain = rss - nextRss;
          stalled = gain > 1e-13 * rss ? 0 : stalled + 1;
          parameters = trial;
          shifts = moved;
          residuals = next;
          rss = nextRss;
          lambda = Math.max(1e-15, lambda / (gain > 0 ? 6 : 2));
          accepted = true;
          break;
        }
      }
      lambda *= 5;
    }
    // At the floor of the arithmetic no step can lower the sum any more: good where the projected residual is small.
    if (!accepted || stalled >= 4) break;
  }
  const status = relativeOffset < offsetFloor ? "converged" : "not-converged";
  return { status, iterations, parameters, shifts, rss, relativeOffset };
}
