import fCdf from "@stdlib/stats-base-dists-f-cdf";
import fQuantile from "@stdlib/stats-base-dists-f-quantile";
import normalCdf from "@stdlib/stats-base-dists-normal-cdf";
import normalQuantile from "@stdlib/stats-base-dists-normal-quantile";
import tQuantileRaw from "@stdlib/stats-base-dists-t-quantile";

// A band asks for one and the same quantile at every dose.
let lastT = { p: NaN, df: NaN, quantile: NaN };

/** Student t quantile at probability p. */
export function tQuantile(p: number, df: number): number {
  if (lastT.p !== p || lastT.df !== df) lastT = { p, df, quantile: tQuantileRaw(p, df) };
  return lastT.quantile;
}

/** F quantile at probability p. */
export function fisherQuantile(p: number, df1: number, df2: number): number {
  return fQuantile(p, df1, df2);
}

/** P(F > f): taken as the lower tail of 1/F, so that a very small chance keeps its digits. */
export function fisherUpperTail(f: number, df1: number, df2: number): number {
  if (!(f > 0)) return 1;
  if (!Number.isFinite(f)) return 0;
  return fCdf(1 / f, df2, df1);
}

/** Standard normal distribution function. */
function normalLowerTail(z: number): number {
  return normalCdf(z, 0, 1);
}

/** Standard normal quantile. */
export function normalPoint(p: number): number {
  return normalQuantile(p, 0, 1);
}

/** ln of the standard normal distribution function, also far out in its lower tail (continued fraction there). */
export function logNormalLowerTail(z: number): number {
  if (z > -8) return Math.log(normalLowerTail(z));
  return -0.5 * z * z - 0.5 * Math.log(2 * Math.PI) - Math.log(millsDenominator(-z));
}

/** phi(z) / Phi(z), the slope of ln Phi, also far out in the lower tail. */
export function inverseMills(z: number): number {
  if (z > -8) return Math.exp(-0.5 * z * z) / (Math.sqrt(2 * Math.PI) * normalLowerTail(z));
  return millsDenominator(-z);
}

// phi(t) / (1 - Phi(t)) for a large t as Laplace's continued fraction.
function millsDenominator(t: number): number {
  let value = t;
  for (let k = 60; k >= 1; k--) value = t + k / value;
  return value;
}
