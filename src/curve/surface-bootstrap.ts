import { solveCholesky } from "./fast-refit.ts";
import type { Random } from "./random.ts";

/**
 * Coefficients of a linear model under case resampling: rows drawn with replacement, each draw solved from sums of
 * row products that are laid out once. Columns should be coded (well scaled): the normal equations are then safe,
 * and the bench holds every 100th draw against the QR solver. Draws whose rows do not determine it are left out.
 */
export function caseBootstrap(
  design: number[][],
  y: number[],
  draws: number,
  random: Random,
): Float64Array[] {
  const n = design.length;
  const p = design[0]?.length ?? 0;
  const width = (p * (p + 1)) / 2 + p;
  const products = new Float64Array(n * width);
  for (let i = 0; i < n; i++) {
    let at = i * width;
    for (let j = 0; j < p; j++) for (let k = 0; k <= j; k++) products[at++] = design[i]![j]! * design[i]![k]!;
    for (let j = 0; j < p; j++) products[at++] = design[i]![j]! * y[i]!;
  }
  const sums = new Float64Array(width);
  const normal = new Float64Array(p * p);
  const right = new Float64Array(p);
  const found: Float64Array[] = [];
  for (let draw = 0; draw < draws; draw++) {
    sums.fill(0);
    for (let i = 0; i < n; i++) {
      const from = Math.floor(random() * n) * width;
      for (let k = 0; k < width; k++) sums[k]! += products[from + k]!;
    }
    let at = 0;
    for (let j = 0; j < p; j++) for (let k = 0; k <= j; k++) normal[j * p + k] = sums[at++]!;
    for (let j = 0; j < p; j++) right[j] = sums[at++]!;
    const coefficients = new Float64Array(p);
    if (solveCholesky(normal, right, coefficients, p)) found.push(coefficients);
  }
  return found;
}
