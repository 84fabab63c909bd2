import { Matrix, solve } from "ml-matrix";
import { inverseMills, logNormalLowerTail } from "./distributions.ts";

/** 1 where the true value is at least y, -1 where at most, 0 where y itself was read. */
export type Censoring = -1 | 0 | 1;

export interface LinearLikelihood {
  coefficients: number[];
  /** the maximum-likelihood residual sd (divides by n) */
  sigma: number;
  /** -2 ln L with all constants */
  deviance: number;
}

const halfLog2Pi = 0.5 * Math.log(2 * Math.PI);

/**
 * Maximum likelihood of a linear model with normal residuals where some responses are only bounded.
 * Newton on the scaled parameters (coefficients / sigma, 1 / sigma), in which the likelihood is concave
 * (Olsen 1978, from memory). null where the data do not determine it.
 */
export function censoredLinear(
  design: number[][],
  y: number[],
  censored: Censoring[],
): LinearLikelihood | null {
  const n = y.length;
  const p = design[0]?.length ?? 0;
  const known = y.filter((_, i) => censored[i] === 0);
  if (known.length < 2 || p === 0) return null;
  const norms = Array.from({ length: p }, (_, j) => Math.hypot(...design.map((row) => row[j]!)) || 1);
  const x = design.map((row) => row.map((value, j) => value / norms[j]!));
  const centre = known.reduce((sum, value) => sum + value, 0) / known.length;
  const spread = Math.sqrt(known.reduce((sum, value) => sum + (value - centre) ** 2, 0) / known.length) || 1;
  let gamma = new Array<number>(p).fill(0);
  let h = 1 / (2 * spread);

  const logLikelihood = (g: number[], hh: number): number => {
    if (!(hh > 0)) return -Infinity;
    let sum = 0;
    for (let i = 0; i < n; i++) {
      const eta = x[i]!.reduce((total, value, j) => total + value * g[j]!, 0);
      if (censored[i] === 0) sum += Math.log(hh) - 0.5 * (hh * y[i]! - eta) ** 2 - halfLog2Pi;
      else sum += logNormalLowerTail(censored[i]! * (eta - hh * y[i]!));
    }
    return sum;
  };

  let best = logLikelihood(gamma, h);
  for (let iteration = 0; iteration < 200; iteration++) {
    const gradient = new Array<number>(p + 1).fill(0);
    const information = Matrix.zeros(p + 1, p + 1);
    for (let i = 0; i < n; i++) {
      const row = x[i]!;
      const eta = row.reduce((total, value, j) => total + value * gamma[j]!, 0);
      let slope: number;
      let weight: number;
      if (censored[i] === 0) {
        slope = h * y[i]! - eta;
        weight = 1;
      } else {
        const z = censored[i]! * (eta - h * y[i]!);
        const mills = inverseMills(z);
        slope = censored[i]! * mills;
        weight = Math.max(0, mills * (mills + z));
      }
      for (let j = 0; j < p; j++) {
        gradient[j]! += slope * row[j]!;
        for (let k = 0; k < p; k++) information.set(j, k, information.get(j, k) + weight * row[j]! * row[k]!);
        const cross = information.get(j, p) - weight * y[i]! * row[j]!;
        information.set(j, p, cross);
        information.set(p, j, cross);
      }
      gradient[p]! -= slope * y[i]!;
      information.set(p, p, information.get(p, p) + weight * y[i]! * y[i]!);
      if (censored[i] === 0) {
        gradient[p]! += 1 / h;
        information.set(p, p, information.get(p, p) + 1 / (h * h));
      }
    }
    let step: number[];
    try {
      step = solve(information, Matrix.columnVector(gradient)).to1DArray();
    } catch {
      return null;
    }
    if (!step.every(Number.isFinite)) return null;
    let shrink = 1;
    let moved = false;
    while (shrink > 1e-10) {
      const nextGamma = gamma.map((value, j) => value + shrink * step[j]!);
      const nextH = h + shrink * step[p]!;
      const next = logLikelihood(nextGamma, nextH);
      if (next >= best) {
        const gain = next - best;
        gamma = nextGamma;
        h = nextH;
        best = next;
        moved = gain > 1e-13 * (1 + Math.abs(best));
        break;
      }
      shrink /= 2;
    }
    if (!moved) break;
    if (!Number.isFinite(h) || h > 1e12 / spread) return null;
  }
  return {
    coefficients: gamma.map((value, j) => value / h / norms[j]!),
    sigma: 1 / h,
    deviance: -2 * best,
  };
}

/**
 * Covariance of the parameters (sigma estimated along) from the observed information at the maximum,
 * scaled by n / (n - p) as the residual sd is. `jacobian` has one gradient row an observation. null where singular.
 */
export function censoredCovariance(
  jacobian: number[][],
  y: number[],
  fitted: number[],
  censored: Censoring[],
  sigma: number,
): number[][] | null {
  const n = y.length;
  const p = jacobian[0]?.length ?? 0;
  const norms = Array.from({ length: p }, (_, j) => Math.hypot(...jacobian.map((row) => row[j]!)) || 1);
  const information = Matrix.zeros(p + 1, p + 1);
  for (let i = 0; i < n; i++) {
    const row = jacobian[i]!.map((value, j) => value / norms[j]!);
    let weight: number;
    let cross: number;
    let own: number;
    if (censored[i] === 0) {
      const e = (y[i]! - fitted[i]!) / sigma;
      weight = 1 / sigma ** 2;
      cross = (2 * e) / sigma;
      own = 2 * e * e;
    } else {
      const sign = censored[i]!;
      const z = (sign * (fitted[i]! - y[i]!)) / sigma;
      const mills = inverseMills(z);
      const w = Math.max(0, mills * (mills + z));
      weight = w / sigma ** 2;
      cross = (-sign * (w * z - mills)) / sigma;
      own = w * z * z - mills * z;
    }
    for (let j = 0; j < p; j++) {
      for (let k = 0; k < p; k++) information.set(j, k, information.get(j, k) + weight * row[j]! * row[k]!);
      information.set(j, p, information.get(j, p) + cross * row[j]!);
      information.set(p, j, information.get(p, j) + cross * row[j]!);
    }
    information.set(p, p, information.get(p, p) + own);
  }
  try {
    const inverse = solve(information, Matrix.eye(p + 1));
    const factor = n / (n - p);
    const covariance = Array.from({ length: p }, (_, j) =>
      Array.from({ length: p }, (_, k) => (factor * inverse.get(j, k)) / (norms[j]! * norms[k]!)),
    );
    return covariance.every((row, j) => row.every(Number.isFinite) && row[j]! > 0) ? covariance : null;
  } catch {
    return null;
  }
}
