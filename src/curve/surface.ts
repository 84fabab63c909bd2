import { leastSquaresDeviance } from "./deviance.ts";
import { aiccFrom } from "./aicc.ts";
import { blankReport } from "./blank-report.ts";
import {
  convexHull,
  eigenvaluesOf,
  insideHull,
  secondOrderOf,
  secondOrderRow,
  stationaryKind,
  stationaryPoint,
  type StationaryKind,
} from "./canonical.ts";
import { fisherUpperTail, tQuantile } from "./distributions.ts";
import { lackOfFitTest, pureError, pureErrorCells } from "./lack-of-fit.ts";
import { solveLeastSquares } from "./least-squares.ts";
import { censoredCovariance, censoredLinear, type Censoring } from "./likelihood.ts";
import { offScale, onScale } from "./problem.ts";
import type { FitReport, Scale } from "./types.ts";

/** One jar of a two-polymer series. */
export interface SurfacePoint {
  a: number;
  b: number;
  y: number;
  row: number;
  allRows?: number[];
  block?: string;
  order?: number;
  censored?: "above" | "below";
}

export interface Stationary {
  x1: number;
  x2: number;
  value: number;
  kind: StationaryKind;
  eigenvalues: number[];
  codedEigenvalues: number[];
  inside: boolean;
}

/** As a fit's report, with the stationary point in the file's units. */
export type SurfaceReport = Omit<FitReport, "model" | "influence"> & {
  model: "surface";
  influence: { row: number; shift: { x1: number; x2: number } }[];
  stationary: Stationary | null;
};

/** A fitted surface with what bounds and regions need. */
export interface SurfaceFit {
  report: SurfaceReport;
  scale: Scale;
  /** coefficients and covariance on coded doses, block shifts last */
  coded: { coefficients: number[]; covariance: number[][] };
  middle: [number, number];
  half: [number, number];
  hull: [number, number][];
  df: number;
  residualSd: number;
  /** jars' average block shift on the fit's scale, as weights of the block columns */
  blockShares: number[];
}

const surfaceNames = ["b0", "b1", "b2", "b11", "b22", "b12"] as const;
const terms = surfaceNames.length;

/** Fits the second-order surface on doses coded by midrange and half-range. */
export function fitSurface(points: SurfacePoint[], scale: Scale, withInfluence = true): SurfaceFit {
  const pairs = new Set(
    pureErrorCells(
      points.map(({ a, b }) => [a, b]),
      points.map(() => ""),
    ),
  );
  const blockOf = points.map((point) => point.block ?? "");
  const blocks = [...new Set(blockOf)].sort().slice(1);
  const p = terms + blocks.length;
  const n = points.length;
  const fit: SurfaceFit = emptyFit(points, scale);
  if (pairs.size < terms || n - p < 1) return fit;
  const extent = (values: number[]): [number, number] => {
    const low = Math.min(...values);
    const high = Math.max(...values);
    return [(low + high) / 2, (high - low) / 2];
  };
  const [middleA, halfA] = extent(points.map((point) => point.a));
  const [middleB, halfB] = extent(points.map((point) => point.b));
  if (!(halfA > 0) || !(halfB > 0)) return { ...fit, report: { ...fit.report, status: "singular" } };
  const design = points.map(({ a, b }, i) => [
    ...secondOrderRow([(a - middleA) / halfA, (b - middleB) / halfB]),
    ...blocks.map((name) => (blockOf[i] === name ? 1 : 0)),
  ]);
  const y = points.map((point) => onScale(point.y, scale));
  const solved = solve(design, y, points);
  if (!solved) return { ...fit, report: { ...fit.report, status: "singular" } };
  const { coefficients, covariance, rss, residuals, leverage, deviance } = solved;
  const df = n - p;
  const residualSd = solved.residualSd;

  const expand = expansion([middleA, middleB], [halfA, halfB], blocks.length);
  const natural = expand.map((row) => dot(row, coefficients));
  const naturalCovariance = expand.map((row) => expand.map((other) => form(row, covariance, other)));
  const report = fit.report;
  report.status = "converged";
  report.iterations = 1;
  report.parameters = natural.map((value, k) => ({
    name: surfaceNames[k] ?? `block ${blocks[k - terms]}`,
    value,
    se: Math.sqrt(Math.max(0, naturalCovariance[k]![k]!)),
  }));
  report.covariance = naturalCovariance;
  report.df = df;
  report.residualSd = residualSd;
  report.aicc = aiccFrom(deviance, n, p);
  if (report.aicc !== null) {
    const logs = scale === "log" ? y.filter((_, i) => !points[i]!.censored) : [];
    report.aiccNatural = report.aicc + 2 * logs.reduce((sum, value) => sum + value, 0);
  }
  const flat = solve(
    points.map((_, i) => [1, ...blocks.map((name) => (blockOf[i] === name ? 1 : 0))]),
    y,
    points,
  );
  if (flat) {
    const f = Math.max(0, ((Math.exp((flat.deviance - deviance) / n) - 1) * df) / (terms - 1));
    if (Number.isFinite(f))
      report.fModel = { f, df1: terms - 1, df2: df, p: fisherUpperTail(f, terms - 1, df) };
  }
  if (rss !== null) {
    const mean = y.reduce((sum, value) => sum + value, 0) / n;
    const total = y.reduce((sum, value) => sum + (value - mean) ** 2, 0);
    report.rss = rss;
    report.r2 = total > 0 ? 1 - rss / total : null;
    const cells = pureErrorCells(
      points.map(({ a, b }) => [a, b]),
      blockOf,
    );
    report.lackOfFit = lackOfFitTest(rss, p, pureError(y, cells));
    if (df >= 2) {
      const cut = tQuantile(1 - 0.05 / (2 * n), df - 1);
      residuals.forEach((r, i) => {
        const room = 1 - leverage[i]!;
        const variance = (rss - (r * r) / room) / (df - 1);
        const t = room > 1e-9 && variance > 1e-24 ? r / Math.sqrt(variance * room) : 0;
        if (Math.abs(t) > cut) report.outliers.push({ row: points[i]!.row, t, cut });
      });
    }
  }
  const next: SurfaceFit = {
    ...fit,
    coded: { coefficients, covariance },
    middle: [middleA, middleB],
    half: [halfA, halfB],
    df,
    residualSd,
    blockShares: blocks.map((name) => blockOf.filter((block) => block === name).length / n),
  };
  report.stationary = stationaryOf(next, natural);
  if (withInfluence && report.stationary) report.influence = influenceOf(points, scale, report.stationary);
  return next;
}

function emptyFit(points: SurfacePoint[], scale: Scale): SurfaceFit {
  const report: SurfaceReport = {
    model: "surface",
    ...blankReport(
      points.map((point) => point.allRows ?? [point.row]),
      scale,
      "too-few-points",
      0,
      points.some((point) => point.censored),
    ),
    stationary: null,
  };
  return {
    report,
    scale,
    coded: { coefficients: [], covariance: [] },
    middle: [0, 0],
    half: [1, 1],
    hull: convexHull(points.map(({ a, b }) => [a, b])),
    df: 0,
    residualSd: NaN,
    blockShares: [],
  };
}

interface Solved {
  coefficients: number[];
  covariance: number[][];
  rss: number | null;
  residuals: number[];
  leverage: number[];
  residualSd: number;
  deviance: number;
}

function solve(design: number[][], y: number[], points: SurfacePoint[]): Solved | null {
  const n = y.length;
  const p = design[0]!.length;
  if (points.some((point) => point.censored)) {
    const censored = points.map((point): Censoring =>
      point.censored === "above" ? 1 : point.censored === "below" ? -1 : 0,
    );
    const solved = censoredLinear(design, y, censored);
    if (!solved) return null;
    const fitted = design.map((row) => dot(row, solved.coefficients));
    const covariance = censoredCovariance(design, y, fitted, censored, solved.sigma);
    if (!covariance) return null;
    return {
      coefficients: solved.coefficients,
      covariance,
      rss: null,
      residuals: y.map((value, i) => value - fitted[i]!),
      leverage: y.map(() => 0),
      residualSd: solved.sigma * Math.sqrt(n / (n - p)),
      deviance: solved.deviance,
    };
  }
  const solved = solveLeastSquares(design, y);
  if (solved.status === "singular") return null;
  const variance = solved.rss / solved.df;
  return {
    coefficients: solved.coefficients,
    covariance: solved.unscaledCovariance.map((row) => row.map((value) => value * variance)),
    rss: solved.rss,
    residuals: solved.residuals,
    leverage: solved.leverage,
    residualSd: Math.sqrt(variance),
    deviance: leastSquaresDeviance(solved.rss, y),
  };
}

const dot = (a: number[], b: number[]) => a.reduce((sum, value, i) => sum + value * b[i]!, 0);
const form = (a: number[], matrix: number[][], b: number[]) =>
  a.reduce((sum, value, i) => (value === 0 ? sum : sum + value * dot(matrix[i]!, b)), 0);

/** Rows that turn coded coefficients into natural ones, block shifts unchanged. */
function expansion([mA, mB]: [number, number], [hA, hB]: [number, number], blocks: number): number[][] {
  const rows = [
    [1, -mA / hA, -mB / hB, (mA / hA) ** 2, (mB / hB) ** 2, (mA * mB) / (hA * hB)],
    [0, 1 / hA, 0, (-2 * mA) / hA ** 2, 0, -mB / (hA * hB)],
    [0, 0, 1 / hB, 0, (-2 * mB) / hB ** 2, -mA / (hA * hB)],
    [0, 0, 0, 1 / hA ** 2, 0, 0],
    [0, 0, 0, 0, 1 / hB ** 2, 0],
    [0, 0, 0, 0, 0, 1 / (hA * hB)],
  ];
  return [
    ...rows.map((row) => [...row, ...new Array<number>(blocks).fill(0)]),
    ...Array.from({ length: blocks }, (_, j) => [
      ...new Array<number>(terms).fill(0),
      ...Array.from({ length: blocks }, (_unused, k) => (k === j ? 1 : 0)),
    ]),
  ];
}

function stationaryOf(fit: SurfaceFit, natural: number[]): Stationary | null {
  const coded = secondOrderOf(fit.coded.coefficients, 2);
  const found = stationaryPoint(coded);
  if (!found) return null;
  const x1 = fit.middle[0] + fit.half[0] * found.at[0]!;
  const x2 = fit.middle[1] + fit.half[1] * found.at[1]!;
  const shift = fit.blockShares.reduce(
    (sum, share, j) => sum + share * fit.coded.coefficients[terms + j]!,
    0,
  );
  const value = offScale(found.value + shift, fit.scale);
  if (![x1, x2, value].every(Number.isFinite)) return null;
  const codedEigenvalues = eigenvaluesOf(coded.quadratic);
  return {
    x1,
    x2,
    value,
    kind: stationaryKind(codedEigenvalues),
    eigenvalues: eigenvaluesOf(secondOrderOf(natural, 2).quadratic),
    codedEigenvalues,
    inside: insideHull(fit.hull, [x1, x2]),
  };
}

function influenceOf(points: SurfacePoint[], scale: Scale, whole: Stationary): SurfaceReport["influence"] {
  const size = ({ shift }: { shift: { x1: number; x2: number } }) => Math.hypot(shift.x1, shift.x2);
  return points
    .flatMap((point, i) => {
      const rest = fitSurface(
        points.filter((_, j) => j !== i),
        scale,
        false,
      ).report.stationary;
      return rest ? [{ row: point.row, shift: { x1: rest.x1 - whole.x1, x2: rest.x2 - whole.x2 } }] : [];
    })
    .sort((a, b) => size(b) - size(a));
}
