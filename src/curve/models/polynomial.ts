import { modelWords } from "../../words/curve.ts";
import type { CurveModel, HeldFamily, Range, Turning } from "./model.ts";

const rounding = 1e-11;

function horner(u: number, b: number[]): number {
  let sum = 0;
  for (let k = b.length - 1; k >= 0; k--) sum = sum * u + b[k]!;
  return sum;
}

/** Stationary points of a polynomial of degree 2 or 3, in its own variable. */
function stationary(b: number[]): { u: number; curvature: number }[] {
  const [, b1 = 0, b2 = 0, b3 = 0] = b;
  if (b3 === 0) return b2 === 0 ? [] : [{ u: -b1 / (2 * b2), curvature: 2 * b2 }];
  const disc = b2 * b2 - 3 * b3 * b1;
  if (!(disc > 0)) return [];
  // The pair of roots without cancellation.
  const q = -(b2 + Math.sign(b2 || 1) * Math.sqrt(disc));
  const roots = q === 0 ? [0] : [q / (3 * b3), b1 / q];
  return roots.map((u) => ({ u, curvature: 2 * b2 + 6 * b3 * u }));
}

/**
 * A polynomial in dose or ln dose. Only degree 2 (one optimum) and the named cubics (the one inside the tested range)
 * have an optimum; `hasOptimum` is false for the plain polynomial of any other degree.
 */
export function polynomial(
  name: keyof typeof modelWords,
  degree: number,
  logDose: boolean,
  hasOptimum: boolean,
): CurveModel {
  const u = (x: number) => (logDose ? Math.log(x) : x);
  const dose = (value: number) => (logDose ? Math.exp(value) : value);
  const powers = (value: number) => Array.from({ length: degree + 1 }, (_, k) => value ** k);
  const indices = Array.from({ length: degree + 1 }, (_, k) => k);

  function turning(b: number[], range: Range): Turning | null {
    // Curvature that is only rounding beside the rest of the curve places nothing.
    const reach = Math.max(Math.abs(u(range.low)), Math.abs(u(range.high)));
    const [b0 = 0, b1 = 0, b2 = 0] = b;
    if (degree === 2 && Math.abs(b2) * reach * reach < rounding * (Math.abs(b0) + Math.abs(b1) * reach))
      return null;
    const all = stationary(b).map((point) => ({ dose: dose(point.u), curvature: point.curvature }));
    const candidates =
      degree === 2 ? all : all.filter((point) => point.dose >= range.low && point.dose <= range.high);
    const [only, second] = candidates;
    if (!only || second || !Number.isFinite(only.dose) || only.curvature === 0) return null;
    return { dose: only.dose, kind: only.curvature > 0 ? "minimum" : "maximum" };
  }

  function held(at: number, estimate: number[], range: Range): HeldFamily {
    const c = u(at);
    const found = turning(estimate, range);
    const wanted = found?.kind === "maximum" ? -1 : 1;
    const basis = (x: number) => {
      const shift = u(x) - c;
      return degree === 2 ? [1, shift ** 2] : [1, shift ** 2, shift ** 3];
    };
    // A cubic has two stationary points: only those of the estimate's own kind belong to its interval.
    if (degree === 2) return { basis, grid: [] };
    return {
      basis,
      grid: [],
      accept: (coefficients) => (coefficients[1] ?? 0) * wanted >= 0,
      boundary: (x) => [1, (u(x) - c) ** 3],
    };
  }

  return {
    name,
    get words() {
      return modelWords[name];
    },
    parameterNames: indices.map((k) => `b${k}`),
    linear: indices,
    nonlinear: [],
    positive: [],
    logDose,
    definedAtZero: !logDose,
    degree,
    ...(hasOptimum && degree === 3 ? { rivalValley: true } : {}),
    value: (x, b) => horner(u(x), b),
    gradient: (x) => powers(u(x)),
    basis: (x) => powers(u(x)),
    grid: () => [new Array<number>(degree + 1).fill(0)],
    turning: hasOptimum ? turning : () => null,
    ...(hasOptimum ? { held } : {}),
  };
}
