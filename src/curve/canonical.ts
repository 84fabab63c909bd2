import { EigenvalueDecomposition, Matrix, solve } from "ml-matrix";

export type StationaryKind = "minimum" | "maximum" | "saddle" | "ridge";

/** A second-order polynomial in k factors: c + b'x + x'Bx with B symmetric. */
export interface SecondOrder {
  constant: number;
  linear: number[];
  /** symmetric: own terms on the diagonal, half of each cross term beside it */
  quadratic: number[][];
}

const ridgeRatio = 0.05;

/** Reads coefficients in the order 1, x_i, x_i^2, x_i x_j (i < j). */
export function secondOrderOf(coefficients: number[], factors: number): SecondOrder {
  const quadratic = Array.from({ length: factors }, () => new Array<number>(factors).fill(0));
  for (let i = 0; i < factors; i++) quadratic[i]![i] = coefficients[1 + factors + i]!;
  let at = 1 + 2 * factors;
  for (let i = 0; i < factors; i++)
    for (let j = i + 1; j < factors; j++) {
      quadratic[i]![j] = coefficients[at]! / 2;
      quadratic[j]![i] = coefficients[at]! / 2;
      at += 1;
    }
  return { constant: coefficients[0]!, linear: coefficients.slice(1, 1 + factors), quadratic };
}

/** The columns 1, x_i, x_i^2, x_i x_j of one point. */
export function secondOrderRow(x: number[]): number[] {
  const cross: number[] = [];
  for (let i = 0; i < x.length; i++) for (let j = i + 1; j < x.length; j++) cross.push(x[i]! * x[j]!);
  return [1, ...x, ...x.map((value) => value * value), ...cross];
}

/** Eigenvalues of a symmetric matrix, lowest first. */
export function eigenvaluesOf(matrix: number[][]): number[] {
  return new EigenvalueDecomposition(new Matrix(matrix), { assumeSymmetric: true }).realEigenvalues.sort(
    (a, b) => a - b,
  );
}

/** The stationary point -B^-1 b / 2, or null where the surface has no curvature in some direction at all. */
export function stationaryPoint(surface: SecondOrder): { at: number[]; value: number } | null {
  let at: number[];
  try {
    at = solve(new Matrix(surface.quadratic), Matrix.columnVector(surface.linear))
      .to1DArray()
      .map((value) => -value / 2);
  } catch {
    return null;
  }
  if (!at.every(Number.isFinite)) return null;
  const value = surface.constant + at.reduce((sum, x, i) => sum + (surface.linear[i]! * x) / 2, 0);
  return { at, value };
}

/** What kind of stationary point coded eigenvalues describe. A ridge comes first: its place is hardly determined. */
export function stationaryKind(codedEigenvalues: number[]): StationaryKind {
  const sizes = codedEigenvalues.map(Math.abs);
  if (Math.min(...sizes) < ridgeRatio * Math.max(...sizes)) return "ridge";
  if (codedEigenvalues.every((value) => value > 0)) return "minimum";
  if (codedEigenvalues.every((value) => value < 0)) return "maximum";
  return "saddle";
}

type Pair = [number, number];

/** The convex hull of points in the plane, counter-clockwise (monotone chain). */
export function convexHull(points: Pair[]): Pair[] {
  const sorted = [...points].sort((a, b) => a[0] - b[0] || a[1] - b[1]);
  const turn = (o: Pair, a: Pair, b: Pair) => (a[0] - o[0]) * (b[1] - o[1]) - (a[1] - o[1]) * (b[0] - o[0]);
  const half = (list: Pair[]) => {
    const chain: Pair[] = [];
    for (const point of list) {
      while (chain.length >= 2 && turn(chain.at(-2)!, chain.at(-1)!, point) <= 0) chain.pop();
      chain.push(point);
    }
    chain.pop();
    return chain;
  };
  return [...half(sorted), ...half([...sorted].reverse())];
}

/** Whether a point lies in (or on) a convex hull; the tolerance is relative to the hull's own size. */
export function insideHull(hull: Pair[], point: Pair): boolean {
  if (hull.length < 3) return false;
  const width = Math.max(...hull.map((corner) => corner[0])) - Math.min(...hull.map((corner) => corner[0]));
  const height = Math.max(...hull.map((corner) => corner[1])) - Math.min(...hull.map((corner) => corner[1]));
  const slack = 1e-9 * width * height;
  return hull.every((corner, i) => {
    const next = hull[(i + 1) % hull.length]!;
    return (
      (next[0] - corner[0]) * (point[1] - corner[1]) - (next[1] - corner[1]) * (point[0] - corner[0]) >=
      -slack
    );
  });
}
