import { choleskyOf } from "./bands.ts";
import { secondOrderOf, secondOrderRow } from "./canonical.ts";
import { fisherQuantile, tQuantile } from "./distributions.ts";
import { offScale } from "./problem.ts";
import type { SurfaceFit } from "./surface.ts";

/** A pair of doses on the scale from -1 to 1 that the surface is fitted on. */
export function codedOf(fit: SurfaceFit, a: number, b: number): [number, number] {
  return [(a - fit.middle[0]) / fit.half[0], (b - fit.middle[1]) / fit.half[1]];
}

/** Fitted mean on the fit's scale with its standard error, averaged over blocks. */
export function surfaceOnScale(fit: SurfaceFit, a: number, b: number): { mean: number; se: number } {
  const row = [...secondOrderRow(codedOf(fit, a, b)), ...fit.blockShares];
  const { coefficients, covariance } = fit.coded;
  let mean = 0;
  let variance = 0;
  for (let i = 0; i < row.length; i++) {
    mean += row[i]! * coefficients[i]!;
    for (let j = 0; j < row.length; j++) variance += row[i]! * covariance[i]![j]! * row[j]!;
  }
  return { mean, se: Math.sqrt(Math.max(0, variance)) };
}

/** The fitted surface at a pair of doses, natural scale. */
export function surfaceMean(fit: SurfaceFit, a: number, b: number): number {
  return offScale(surfaceOnScale(fit, a, b).mean, fit.scale);
}

/** One-sided bounds of the mean surface at a pair of doses, natural scale (95 % unless said). */
export function surfaceBounds(
  fit: SurfaceFit,
  a: number,
  b: number,
  level = 0.95,
): { low: number; high: number } {
  const { mean, se } = surfaceOnScale(fit, a, b);
  const t = tQuantile(level, fit.df);
  return { low: offScale(mean - t * se, fit.scale), high: offScale(mean + t * se, fit.scale) };
}

/** One simulated mean surface: coefficients drawn from their joint distribution with the given standard normal source. */
export function simulateSurface(fit: SurfaceFit, normal: () => number): (a: number, b: number) => number {
  const { coefficients, covariance } = fit.coded;
  const cholesky = choleskyOf(covariance);
  const z = coefficients.map(() => normal());
  const drawn = coefficients.map(
    (value, i) => value + cholesky[i]!.reduce((sum, c, k) => sum + c * z[k]!, 0),
  );
  return (a, b) => {
    const row = [...secondOrderRow(codedOf(fit, a, b)), ...fit.blockShares];
    return offScale(
      row.reduce((sum, value, i) => sum + value * drawn[i]!, 0),
      fit.scale,
    );
  };
}

/**
 * How far a pair is from being the stationary point: the quadratic form of the surface's slope there, over what 95 %
 * confidence allows. At most 1 means inside the confidence region (Box & Hunter 1954, from memory).
 */
export function stationaryDistance(fit: SurfaceFit, a: number, b: number, level = 0.95): number {
  const [u, v] = codedOf(fit, a, b);
  const { linear, quadratic } = secondOrderOf(fit.coded.coefficients, 2);
  const slope = [0, 1].map((k) => linear[k]! + 2 * (quadratic[k]![0]! * u + quadratic[k]![1]! * v));
  const rows = [
    [0, 1, 0, 2 * u, 0, v],
    [0, 0, 1, 0, 2 * v, u],
  ];
  const cov = (i: number, j: number) => {
    let sum = 0;
    for (let k = 0; k < 6; k++)
      for (let l = 0; l < 6; l++) sum += rows[i]![k]! * fit.coded.covariance[k]![l]! * rows[j]![l]!;
    return sum;
  };
  const [saa, sab, sbb] = [cov(0, 0), cov(0, 1), cov(1, 1)];
  const determinant = saa * sbb - sab * sab;
  if (!(determinant > 0)) return Infinity;
  const [ga, gb] = slope as [number, number];
  const form = (ga * ga * sbb - 2 * ga * gb * sab + gb * gb * saa) / determinant;
  return form / (2 * fisherQuantile(level, 2, fit.df));
}

export interface Extent {
  low: { a: number; b: number };
  high: { a: number; b: number };
  /** whether the region ends within the box that was searched (the tested range and half as much again on each side) */
  closed: boolean;
}

/** The box around the confidence region of the stationary point, found on a fine grid; null where no cell is inside. */
export function stationaryExtent(fit: SurfaceFit, level = 0.95): Extent | null {
  const steps = 160;
  const reach = 2;
  let box: [number, number, number, number] | null = null;
  for (let i = 0; i <= steps; i++)
    for (let j = 0; j <= steps; j++) {
      const u = -reach + (2 * reach * i) / steps;
      const v = -reach + (2 * reach * j) / steps;
      if (
        stationaryDistance(fit, fit.middle[0] + u * fit.half[0], fit.middle[1] + v * fit.half[1], level) > 1
      )
        continue;
      box = box
        ? [Math.min(box[0], u), Math.max(box[1], u), Math.min(box[2], v), Math.max(box[3], v)]
        : [u, u, v, v];
    }
  if (!box) return null;
  const a = (u: number) => fit.middle[0] + u * fit.half[0];
  const b = (v: number) => fit.middle[1] + v * fit.half[1];
  return {
    low: { a: a(box[0]), b: b(box[2]) },
    high: { a: a(box[1]), b: b(box[3]) },
    closed: box[0] > -reach && box[1] < reach && box[2] > -reach && box[3] < reach,
  };
}
