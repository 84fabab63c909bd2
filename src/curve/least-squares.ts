import { Matrix, QrDecomposition } from "ml-matrix";

export interface LeastSquares {
  status: "fitted";
  coefficients: number[];
  /** (X'X)^-1: times the residual variance it is the covariance of the coefficients */
  unscaledCovariance: number[][];
  rss: number;
  df: number;
  residuals: number[];
  leverage: number[];
}

const rankTolerance = 1e-11;

/**
 * Ordinary least squares by Householder QR on columns scaled to unit length.
 * `design` has one row an observation; answers "singular" where the columns do not determine the coefficients.
 */
export function solveLeastSquares(design: number[][], y: number[]): LeastSquares | { status: "singular" } {
  const n = design.length;
  const p = design[0]?.length ?? 0;
  if (p === 0) {
    const rss = y.reduce((sum, value) => sum + value * value, 0);
    return {
      status: "fitted",
      coefficients: [],
      unscaledCovariance: [],
      rss,
      df: n,
      residuals: [...y],
      leverage: y.map(() => 0),
    };
  }
  if (n < p) return { status: "singular" };
  const scale = new Array<number>(p).fill(0);
  for (const row of design) for (let j = 0; j < p; j++) scale[j]! += (row[j] ?? 0) ** 2;
  for (let j = 0; j < p; j++) {
    scale[j] = Math.sqrt(scale[j]!);
    if (!(scale[j]! > 0) || !Number.isFinite(scale[j]!)) return { status: "singular" };
  }
  const qr = new QrDecomposition(new Matrix(design.map((row) => row.map((value, j) => value / scale[j]!))));
  const q = qr.orthogonalMatrix;
  const r = qr.upperTriangularMatrix;
  const smallest = Math.min(...Array.from({ length: p }, (_, j) => Math.abs(r.get(j, j))));
  if (!(smallest > rankTolerance)) return { status: "singular" };

  const inverse = invertUpper(r, p);
  const projected = Array.from({ length: p }, (_, j) => dotColumn(q, j, y));
  const coefficients = Array.from({ length: p }, (_, i) => {
    let sum = 0;
    for (let j = i; j < p; j++) sum += inverse[i]![j]! * projected[j]!;
    return sum / scale[i]!;
  });
  const residuals = design.map(
    (row, i) => y[i]! - row.reduce((sum, value, j) => sum + value * coefficients[j]!, 0),
  );
  const unscaledCovariance = Array.from({ length: p }, (_, i) =>
    Array.from({ length: p }, (_, j) => {
      let sum = 0;
      for (let k = Math.max(i, j); k < p; k++) sum += inverse[i]![k]! * inverse[j]![k]!;
      return sum / (scale[i]! * scale[j]!);
    }),
  );
  const leverage = design.map((_, i) => {
    let sum = 0;
    for (let j = 0; j < p; j++) sum += q.get(i, j) ** 2;
    return Math.min(1, sum);
  });
  const rss = residuals.reduce((sum, value) => sum + value * value, 0);
  return { status: "fitted", coefficients, unscaledCovariance, rss, df: n - p, residuals, leverage };
}

function dotColumn(q: Matrix, column: number, y: number[]): number {
  let sum = 0;
  for (let i = 0; i < y.length; i++) sum += q.get(i, column) * y[i]!;
  return sum;
}

function invertUpper(r: Matrix, p: number): number[][] {
  const inverse = Array.from({ length: p }, () => new Array<number>(p).fill(0));
  for (let j = 0; j < p; j++) {
    inverse[j]![j] = 1 / r.get(j, j);
    for (let i = j - 1; i >= 0; i--) {
      let sum = 0;
      for (let k = i + 1; k <= j; k++) sum += r.get(i, k) * inverse[k]![j]!;
      inverse[i]![j] = -sum / r.get(i, i);
    }
  }
  return inverse;
}
