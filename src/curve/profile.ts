import { solveColumns } from "./deviance.ts";
import type { Estimate, Fixed } from "./estimate-result.ts";
import { goldenMinimum } from "./minimise.ts";
import type { CurveModel } from "./models/model.ts";
import type { Problem } from "./problem.ts";

/** A set of doses as found along the fit's own dose scale. */
export type ProfileSet =
  | { kind: "interval"; low: number; high: number }
  | { kind: "one-sided"; low: number | null; high: number | null }
  | { kind: "complement"; low: number; high: number }
  | { kind: "all" };

/** Where the remaining nonlinear parameter was best at the dose held before: the next one lies near. */
export interface HeldMemory {
  logSize: number | null;
}

const nearby = 0.3;

/** The lowest deviance the model reaches with its optimum (or knee) held at this dose; Infinity where it has none. */
export function heldDeviance(
  model: CurveModel,
  problem: Problem,
  fixed: Fixed,
  parameters: number[],
  dose: number,
  memory: HeldMemory = { logSize: null },
): number {
  const family = model.held?.(dose, parameters, problem.range);
  if (!family) return Infinity;
  const solve = (basisAt: (x: number) => number[]): { deviance: number; coefficients: number[] } | null => {
    const basis = problem.x.map(basisAt);
    if (basis.some((row) => !row.every(Number.isFinite))) return null;
    // For the nonlinear families the columns are those of the linear parameters, so fixed ones are taken off here.
    if (fixed.size === 0 || model.degree !== undefined) return solveColumns(basis, problem, null);
    const offset = basis.map((row) =>
      row.reduce((sum, value, j) => sum + value * (fixed.get(model.linear[j]!) ?? 0), 0),
    );
    return solveColumns(
      basis.map((row) => row.filter((_, j) => !fixed.has(model.linear[j]!))),
      problem,
      offset,
    );
  };
  if (family.grid.length === 0) {
    const solved = solve((x) => family.basis(x, 0));
    if (solved && (!family.accept || family.accept(solved.coefficients))) return solved.deviance;
    return family.boundary ? (solve(family.boundary)?.deviance ?? Infinity) : flatDeviance(problem);
  }
  const at = (logSize: number) => solve((x) => family.basis(x, Math.exp(logSize)))?.deviance ?? Infinity;
  if (memory.logSize !== null) {
    const near = goldenMinimum(at, memory.logSize - nearby, memory.logSize + nearby, 20);
    if (Math.abs(near.at - memory.logSize) < 0.9 * nearby) {
      memory.logSize = near.at;
      return near.value;
    }
  }
  const values = family.grid.map((size) => at(Math.log(size)));
  let lowest = 0;
  values.forEach((value, i) => {
    if (value < values[lowest]!) lowest = i;
  });
  const low = Math.log(family.grid[Math.max(0, lowest - 1)]!);
  const high = Math.log(family.grid[Math.min(family.grid.length - 1, lowest + 1)]!);
  const best = goldenMinimum(at, low, high, 30);
  memory.logSize = best.value <= values[lowest]! ? best.at : Math.log(family.grid[lowest]!);
  return Math.min(values[lowest]!, best.value);
}

// With the knee far past the data the curve can only be flat or a line; the flat one is always there.
function flatDeviance(problem: Problem): number {
  return (
    solveColumns(
      problem.x.map(() => [1]),
      problem,
      null,
    )?.deviance ?? Infinity
  );
}

/** Held optima can be profiled unless the fixed parameters themselves place the optimum. */
export function canProfile(model: CurveModel, fixed: Fixed): boolean {
  if (!model.held) return false;
  if (fixed.size === 0) return true;
  return model.degree === undefined && model.nonlinear.every((k) => !fixed.has(k));
}

/**
 * All doses whose held deviance stays within the cut: n ln(1 + t^2 / df) above the best, which is the profile F
 * interval where nothing is censored and Fieller's for a quadratic.
 */
export function profileSet(
  model: CurveModel,
  problem: Problem,
  fixed: Fixed,
  estimate: Estimate,
  dose: number,
  t: number,
): ProfileSet {
  const log = model.logDose;
  const toDose = (w: number) => (log ? Math.exp(w) : w);
  const cut = estimate.deviance + problem.x.length * Math.log1p((t * t) / estimate.df);
  const memory: HeldMemory = { logSize: null };
  const inside = (w: number) => {
    const at = toDose(w);
    if (!Number.isFinite(at)) return false;
    return heldDeviance(model, problem, fixed, estimate.parameters, at, memory) <= cut;
  };
  const lowest = problem.range.low > 0 ? problem.range.low : problem.range.high / 20;
  const span = log ? Math.log(problem.range.high / lowest) || 1 : problem.range.high - problem.range.low || 1;
  const start = log ? Math.log(dose) : dose;
  // Knees of saturating curves live above zero; a polynomial's optimum may lie anywhere.
  const floor = !log && model.positive.includes(2) ? 1e-6 * span : -Infinity;
  const right = edge(inside, start, 1, span, Infinity);
  const left = edge(inside, start, -1, span, floor);
  if (model.degree === 2 && (left === null) !== (right === null)) {
    // The line closes at infinity for a quadratic: the set goes on from the other end.
    const far = log ? 60 : 1e7 * span;
    const open = left ?? right!;
    const back = left === null ? -1 : 1;
    const mended = edge(inside, open - back * far, back, far, open, true);
    if (mended !== null)
      return {
        kind: "complement",
        low: toDose(Math.min(open, mended)),
        high: toDose(Math.max(open, mended)),
      };
  }
  if (left === null && right === null) return { kind: "all" };
  if (left === null || right === null)
    return {
      kind: "one-sided",
      low: left === null ? null : toDose(left),
      high: right === null ? null : toDose(right),
    };
  return { kind: "interval", low: toDose(left), high: toDose(right) };
}

/**
 * Walks from a place inside the set until it is left and narrows the crossing down; null where it is never left.
 * With `wide` the walk shrinks its steps towards `stop` instead of growing them.
 */
function edge(
  inside: (w: number) => boolean,
  start: number,
  direction: 1 | -1,
  span: number,
  stop: number,
  wide = false,
): number | null {
  let from = start;
  let step = wide ? span / 2 : 0.02 * span;
  for (let round = 0; round < 80; round++) {
    let to = from + direction * step;
    if (direction < 0 ? to <= stop : to >= stop) to = stop;
    if (!Number.isFinite(to)) return null;
    if (!inside(to)) {
      let good = from;
      let out = to;
      for (let i = 0; i < 60 && Math.abs(out - good) > 1e-10 * Math.max(1, Math.abs(good)); i++) {
        const middle = (good + out) / 2;
        if (inside(middle)) good = middle;
        else out = middle;
      }
      return good;
    }
    if (to === stop) return null;
    from = to;
    step = wide ? step / 2 : step * 1.4;
    if (!wide && Math.abs(from - start) > 1e4 * span) return null;
  }
  return null;
}
