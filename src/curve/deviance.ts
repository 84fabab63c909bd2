import { smallLeastSquares } from "./householder.ts";
import { censoredLinear } from "./likelihood.ts";
import type { Problem } from "./problem.ts";

export interface LinearSolution {
  coefficients: number[];
  /** n ln(rss / n) where every response was read, else -2 ln L with all constants */
  deviance: number;
  /** maximum-likelihood residual sd */
  sigma: number;
}

const rounding = 1e-10;

/**
 * n ln(rss / n), with what is only rounding of the responses counted as one and the same: otherwise two models that
 * both fit exactly would be told apart by noise of the arithmetic.
 */
export function leastSquaresDeviance(rss: number, y: number[]): number {
  const floor = Math.max(...y.map((value) => Math.abs(value)), 1e-290) * rounding;
  return y.length * Math.log(Math.max(rss / y.length, floor * floor));
}

/**
 * Solves a model that is linear in these columns (block columns are added) by least squares, or by maximum
 * likelihood where readings are censored. `offset` is subtracted from y first (fixed linear parameters).
 */
export function solveColumns(
  columns: number[][],
  problem: Problem,
  offset: number[] | null,
): LinearSolution | null {
  const n = problem.x.length;
  const blocks = problem.blockNames.length;
  const width = (columns[0]?.length ?? 0) + blocks;
  const y = offset ? problem.y.map((value, i) => value - offset[i]!) : problem.y;
  if (problem.anyCensored) {
    const design = columns.map((row, i) => [...row, ...problem.blockColumns[i]!]);
    const solved = censoredLinear(design, y, problem.censored);
    return solved
      ? { coefficients: solved.coefficients, deviance: solved.deviance, sigma: solved.sigma }
      : null;
  }
  const a = new Float64Array(n * width);
  for (let i = 0; i < n; i++) {
    const row = columns[i]!;
    for (let j = 0; j < row.length; j++) a[i * width + j] = row[j]!;
    for (let j = 0; j < blocks; j++) a[i * width + row.length + j] = problem.blockColumns[i]![j]!;
  }
  const solved = smallLeastSquares(a, Float64Array.from(y), n, width);
  if (!solved.x) return null;
  return {
    coefficients: Array.from(solved.x),
    deviance: leastSquaresDeviance(solved.rss, problem.y),
    sigma: Math.sqrt(solved.rss / n),
  };
}
