import { Matrix, inverse } from "ml-matrix";
import { tQuantile } from "../curve/distributions.ts";
import { turningError } from "../curve/intervals.ts";
import type { Fit } from "../curve/fit.ts";

export interface NextJars {
  doses: number[];
  /** by how much the interval of the optimum is expected to shrink, percent */
  shrinkPct: number;
}

const candidates = 80;
const worthPct = 6;

/** Gradient of the optimum (on its own scale) with respect to the free parameters, by central differences. */
function turningGradient(fit: Fit): number[] | null {
  const { model, problem, estimate } = fit;
  const at = (parameters: number[]) => {
    const turning = model.turning(parameters, problem.range);
    return turning ? (model.logDose ? Math.log(turning.dose) : turning.dose) : NaN;
  };
  const gradient = estimate.free.map((k, j) => {
    const step = Math.max(
      1e-5 * Math.sqrt(estimate.covariance[j]![j]!),
      1e-9 * Math.abs(estimate.parameters[k]!),
    );
    const moved = (sign: number) =>
      at(estimate.parameters.map((value, i) => (i === k ? value + sign * step : value)));
    return (moved(1) - moved(-1)) / (2 * step);
  });
  return gradient.every(Number.isFinite) ? gradient : null;
}

/**
 * The next two to four doses that shrink the optimum's interval most on the current best model: c-optimal, added one
 * after another from a grid over the tested range. More than two are named only while each still shrinks the interval
 * by 6 %. null where the optimum has no standard error to shrink.
 */
export function nextJars(fit: Fit): NextJars | null {
  const { model, problem, estimate } = fit;
  if (fit.report.status !== "converged" || !turningError(model, problem, estimate)) return null;
  const c = turningGradient(fit);
  if (!c || estimate.shifts.length > 0) return null;
  const p = c.length;
  let information: Matrix;
  try {
    information = inverse(new Matrix(estimate.covariance)).mul(estimate.residualSd ** 2);
  } catch {
    return null;
  }
  const varianceOf = (m: Matrix): number => {
    try {
      const v = inverse(m);
      let sum = 0;
      for (let i = 0; i < p; i++) for (let j = 0; j < p; j++) sum += c[i]! * v.get(i, j) * c[j]!;
      return sum > 0 ? sum : Infinity;
    } catch {
      return Infinity;
    }
  };
  const { high } = problem.range;
  const low = problem.range.low > 0 || !model.logDose ? problem.range.low : high / 50;
  const grid = Array.from({ length: candidates + 1 }, (_, i) => low + ((high - low) * i) / candidates);
  const start = varianceOf(information);
  if (!Number.isFinite(start)) return null;
  const width = (variance: number, df: number) => tQuantile(0.975, df) * Math.sqrt(variance);
  const before = width(start, estimate.df);
  const doses: number[] = [];
  let last = before;
  for (let added = 1; added <= 4; added++) {
    let best: { dose: number; m: Matrix; variance: number } | null = null;
    for (const dose of grid) {
      const gradient = model.gradient(dose, estimate.parameters);
      const row = estimate.free.map((k) => gradient[k]!);
      const m = information.clone();
      for (let i = 0; i < p; i++) for (let j = 0; j < p; j++) m.set(i, j, m.get(i, j) + row[i]! * row[j]!);
      const variance = varianceOf(m);
      if (best === null || variance < best.variance) best = { dose, m, variance };
    }
    if (!best || !Number.isFinite(best.variance)) break;
    const now = width(best.variance, estimate.df + added);
    if (added > 2 && 1 - now / last < worthPct / 100) break;
    doses.push(best.dose);
    information = best.m;
    last = now;
  }
  if (doses.length === 0) return null;
  return { doses: doses.sort((a, b) => a - b), shrinkPct: 100 * (1 - last / before) };
}

/**
 * Whether an interval is tight enough to matter no more in money: the total cost differs by less than 1 % of itself
 * across it. null where nothing is priced.
 */
export function tightEnough(
  low: number,
  high: number,
  cost: (dose: number) => number | null,
): boolean | null {
  const values = Array.from({ length: 21 }, (_, i) => cost(low + ((high - low) * i) / 20));
  if (values.some((value) => value === null)) return null;
  const known = values as number[];
  return Math.max(...known) - Math.min(...known) < 0.01 * Math.min(...known);
}
