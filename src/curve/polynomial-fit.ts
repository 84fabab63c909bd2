import { leastSquaresDeviance } from "./deviance.ts";
import type { Estimate } from "./estimate-result.ts";
import { solveLeastSquares } from "./least-squares.ts";
import type { CurveModel } from "./models/model.ts";
import type { Problem } from "./problem.ts";

/**
 * Fits a polynomial on its variable mapped to [-1, 1] by QR, and expands coefficients and covariance afterwards:
 * the raw powers of a high degree cannot be told apart in double precision. null where singular.
 */
export function fitMappedPolynomial(model: CurveModel, problem: Problem): Estimate | null {
  const degree = model.degree ?? 0;
  const u = problem.x.map((x) => (model.logDose ? Math.log(x) : x));
  const low = Math.min(...u);
  const high = Math.max(...u);
  const middle = (low + high) / 2;
  const half = (high - low) / 2 || 1;
  const design = u.map((value, i) => {
    const t = (value - middle) / half;
    return [...Array.from({ length: degree + 1 }, (_, k) => t ** k), ...problem.blockColumns[i]!];
  });
  const solved = solveLeastSquares(design, problem.y);
  if (solved.status === "singular") return null;
  const blocks = problem.blockNames.length;
  const expand = expansion(degree, middle, half);
  const width = degree + 1 + blocks;
  const full = Array.from({ length: width }, (_, i) =>
    Array.from({ length: width }, (_, j) => (i <= degree && j <= degree ? expand[i]![j]! : i === j ? 1 : 0)),
  );
  const variance = solved.rss / solved.df;
  const coefficients = full.map((row) =>
    row.reduce((sum, value, j) => sum + value * solved.coefficients[j]!, 0),
  );
  const half1 = full.map((row) =>
    Array.from({ length: width }, (_, k) =>
      row.reduce((sum, value, j) => sum + value * solved.unscaledCovariance[j]![k]!, 0),
    ),
  );
  const covariance = half1.map((row) =>
    full.map((other) => variance * row.reduce((sum, value, k) => sum + value * other[k]!, 0)),
  );
  return {
    status: "converged",
    iterations: 1,
    parameters: coefficients.slice(0, degree + 1),
    shifts: coefficients.slice(degree + 1),
    free: Array.from({ length: degree + 1 }, (_, k) => k),
    covariance,
    residuals: solved.residuals,
    leverage: solved.leverage,
    rss: solved.rss,
    df: solved.df,
    residualSd: Math.sqrt(variance),
    deviance: leastSquaresDeviance(solved.rss, problem.y),
  };
}

/** b = M a for p(u) = sum a_k ((u - middle) / half)^k = sum b_i u^i. */
function expansion(degree: number, middle: number, half: number): number[][] {
  const matrix = Array.from({ length: degree + 1 }, () => new Array<number>(degree + 1).fill(0));
  let column = [1];
  for (let k = 0; k <= degree; k++) {
    column.forEach((value, i) => (matrix[i]![k] = value));
    const next = new Array<number>(k + 2).fill(0);
    column.forEach((value, i) => {
      next[i + 1]! += value / half;
      next[i]! -= (value * middle) / half;
    });
    column = next;
  }
  return matrix;
}
