import { estimate } from "./estimate.ts";
import type { Fit } from "./fit.ts";

/** Tukey's constant: 95 % efficiency where the scatter is normal. */
const cut = 4.685;
const rounds = 60;

export interface RobustFit {
  /** the optimum or knee of the robust fit; null where it has none */
  dose: number | null;
  parameters: number[];
  /** rows whose weight fell below one half, lightest first */
  downWeighted: { row: number; weight: number }[];
}

function medianOf(values: number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  const middle = Math.floor(sorted.length / 2);
  return sorted.length % 2 === 1 ? sorted[middle]! : (sorted[middle - 1]! + sorted[middle]!) / 2;
}

/**
 * Bisquare refit of a converged least-squares fit, by least squares on pseudo-values (fitted + bounded residual) until
 * they stand still: the same solver serves every model. Scale: median absolute residual / 0.6745 of the first fit.
 * null where nothing is down-weighted, readings are censored, or the scale is 0 (source: Beaton & Tukey 1974, from memory).
 */
export function robustRefit(fit: Fit): RobustFit | null {
  const { model, problem } = fit;
  if (fit.report.status !== "converged" || problem.anyCensored) return null;
  const scale = medianOf(fit.estimate.residuals.map(Math.abs)) / 0.6745;
  if (!(scale > 0)) return null;
  const weightOf = (r: number) => {
    const u = r / (cut * scale);
    return Math.abs(u) < 1 ? (1 - u * u) ** 2 : 0;
  };
  let current = fit.estimate;
  let residuals = current.residuals;
  if (residuals.every((r) => weightOf(r) > 0.5)) return null;
  for (let round = 0; round < rounds; round++) {
    const pseudo = problem.y.map((y, i) => y - residuals[i]! + residuals[i]! * weightOf(residuals[i]!));
    const next = estimate(model, { ...problem, y: pseudo }, new Map(), current.parameters);
    if (next.status !== "converged") return null;
    const moved = next.residuals.map((r, i) => r + problem.y[i]! - pseudo[i]!);
    const step = Math.max(...moved.map((r, i) => Math.abs(r - residuals[i]!)));
    current = next;
    residuals = moved;
    if (step < 1e-9 * scale) break;
  }
  const turning = model.turning(current.parameters, problem.range);
  return {
    dose: turning && Number.isFinite(turning.dose) ? turning.dose : null,
    parameters: current.parameters,
    downWeighted: residuals
      .map((r, i) => ({ row: problem.rows[i]!, weight: weightOf(r) }))
      .filter(({ weight }) => weight < 0.5)
      .sort((a, b) => a.weight - b.weight),
  };
}
