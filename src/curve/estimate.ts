import { solveColumns } from "./deviance.ts";
import { finish, fittedAt, jacobianRows, noEstimate, type Estimate, type Fixed } from "./estimate-result.ts";
import { levenbergMarquardt, type Solution } from "./levenberg-marquardt.ts";
import { censoredCovariance } from "./likelihood.ts";
import { simplexMinimum } from "./minimise.ts";
import type { CurveModel } from "./models/model.ts";
import { fitMappedPolynomial } from "./polynomial-fit.ts";
import { estimatePlateau } from "./plateau-fit.ts";
import type { Problem } from "./problem.ts";

/** How many coefficients the data must pay for: free parameters and block shifts. */
function coefficientCount(model: CurveModel, fixed: Fixed, problem: Problem): number {
  return model.parameterNames.length - fixed.size + problem.blockNames.length;
}

/**
 * Whether there are too few points to fit: at least one more observation than coefficients, and one more distinct
 * dose than shape parameters where the shape is curved (three or more of them).
 */
function tooFewPoints(model: CurveModel, fixed: Fixed, problem: Problem): boolean {
  const shape = model.parameterNames.length - fixed.size;
  const dosesNeeded = shape >= 3 && model.parameterNames.length >= 3 ? shape + 1 : shape;
  return (
    problem.x.length - coefficientCount(model, fixed, problem) < 1 ||
    problem.distinctDoses < Math.max(1, dosesNeeded)
  );
}

// Most descents are over in a dozen steps; only the best of several is followed to the end.
const firstIterations = 25;
const allIterations = 300;

/** Fits a model to a problem. `start` (full natural parameters) replaces the self-starting values. */
export function estimate(model: CurveModel, problem: Problem, fixed: Fixed, start?: number[]): Estimate {
  if (tooFewPoints(model, fixed, problem)) return noEstimate("too-few-points");
  const free = model.parameterNames.map((_, k) => k).filter((k) => !fixed.has(k));
  if (problem.anyCensored) return estimateCensored(model, problem, fixed, free);
  if (model.degree !== undefined && fixed.size === 0) {
    const mapped = fitMappedPolynomial(model, problem);
    return mapped ?? noEstimate("singular");
  }
  if (model.corner !== undefined && !fixed.has(model.corner))
    return estimatePlateau(model, problem, fixed, free);
  const starts = start ? [start] : selfStarts(model, problem, fixed);
  if (starts.length === 0) return noEstimate("singular");
  let best: Solution | null = null;
  const solve = (from: number[], maxIterations: number) =>
    levenbergMarquardt(model, problem.x, problem.y, from, {
      free,
      extra: problem.blockColumns,
      maxIterations,
    });
  for (const from of starts) {
    const solution = solve(from, starts.length > 1 ? firstIterations : allIterations);
    const better =
      best === null ||
      (solution.status === "converged" && best.status !== "converged"
        ? solution.rss <= best.rss * (1 + 1e-9)
        : solution.rss < best.rss * (1 - 1e-12));
    if (better) best = solution;
  }
  if (best && best.status !== "converged" && starts.length > 1) {
    const shifted = best;
    const followed = solve(shifted.parameters, allIterations);
    if (followed.status === "converged" || followed.rss < best.rss) best = followed;
  }
  if (!best || best.status !== "converged" || degenerate(model, best.parameters, problem))
    return noEstimate("not-converged", best?.iterations ?? 0);
  return finish(model, problem, free, best.parameters, best.shifts, best.iterations);
}

/** Shapes that have run away to a limit where their parameters no longer mean anything. */
function degenerate(model: CurveModel, parameters: number[], { range }: Problem): boolean {
  const span = Math.max(range.high - Math.min(0, range.low), 1e-300);
  if (!parameters.every(Number.isFinite)) return true;
  return model.runAway?.(parameters, span) ?? false;
}

interface Gridded {
  parameters: number[];
  deviance: number;
}

/** Evaluates the grid of nonlinear parameters, each with its best linear ones. */
function gridded(model: CurveModel, problem: Problem, fixed: Fixed): Gridded[] {
  const freeLinear = model.linear.filter((k) => !fixed.has(k));
  const seen = new Set<string>();
  const found: Gridded[] = [];
  for (const point of model.grid(problem.range)) {
    const parameters = point.map((value, k) => fixed.get(k) ?? value);
    const key = model.nonlinear.map((k) => parameters[k]).join(" ");
    if (seen.has(key)) continue;
    seen.add(key);
    const solved = solveGiven(model, problem, fixed, parameters, freeLinear);
    if (solved) found.push(solved);
  }
  return found;
}

function solveGiven(
  model: CurveModel,
  problem: Problem,
  fixed: Fixed,
  parameters: number[],
  freeLinear: number[],
): Gridded | null {
  const basis = problem.x.map((x) => model.basis(x, parameters));
  const offset = basis.map((row) =>
    model.linear.reduce((sum, k, j) => sum + (fixed.has(k) ? fixed.get(k)! * row[j]! : 0), 0),
  );
  const columns = basis.map((row) => row.filter((_, j) => !fixed.has(model.linear[j]!)));
  const solved = solveColumns(columns, problem, offset);
  if (!solved) return null;
  const full = [...parameters];
  freeLinear.forEach((k, j) => (full[k] = solved.coefficients[j]!));
  return { parameters: full, deviance: solved.deviance };
}

/** Deterministic starting values: the best few distinct places of the grid. */
function selfStarts(model: CurveModel, problem: Problem, fixed: Fixed): number[][] {
  const all = gridded(model, problem, fixed).sort((a, b) => a.deviance - b.deviance);
  const picked: Gridded[] = [];
  for (const candidate of all) {
    const near = picked.some((other) =>
      model.nonlinear.every((k) => {
        const a = candidate.parameters[k]!;
        const b = other.parameters[k]!;
        return Math.abs(a - b) <= 0.35 * Math.max(Math.abs(a), Math.abs(b));
      }),
    );
    if (!near) picked.push(candidate);
    if (picked.length === 3 || model.nonlinear.length === 0) break;
  }
  return picked.map((candidate) => candidate.parameters);
}

function estimateCensored(model: CurveModel, problem: Problem, fixed: Fixed, free: number[]): Estimate {
  const freeLinear = model.linear.filter((k) => !fixed.has(k));
  const moving = model.nonlinear.filter((k) => !fixed.has(k));
  const positive = new Set(model.positive);
  const grid = gridded(model, problem, fixed).sort((a, b) => a.deviance - b.deviance);
  let best = grid[0];
  if (!best) return noEstimate("singular");
  let iterations = 1;
  if (moving.length > 0) {
    const toNatural = (at: number[]) => {
      const parameters = [...best!.parameters];
      moving.forEach((k, j) => (parameters[k] = positive.has(k) ? Math.exp(at[j]!) : at[j]!));
      return parameters;
    };
    const start = moving.map((k) =>
      positive.has(k) ? Math.log(best!.parameters[k]!) : best!.parameters[k]!,
    );
    const span = problem.range.high - problem.range.low;
    const sizes = moving.map((k) =>
      positive.has(k) ? 0.1 : 0.05 * (k === 2 ? span : Math.abs(best!.parameters[k]!)),
    );
    const deviance = (at: number[]) =>
      solveGiven(model, problem, fixed, toNatural(at), freeLinear)?.deviance ?? Infinity;
    let place = simplexMinimum(deviance, start, sizes);
    place = simplexMinimum(
      deviance,
      place.at,
      sizes.map((size) => size / 20),
    );
    const refined = solveGiven(model, problem, fixed, toNatural(place.at), freeLinear);
    iterations = 2;
    if (!refined || place.spread > 1e-7 * (1 + Math.abs(place.value)))
      return noEstimate("not-converged", iterations);
    best = refined;
  }
  const { parameters } = best;
  if (degenerate(model, parameters, problem)) return noEstimate("not-converged", iterations);
  const columns = problem.x.map((x) => {
    const row = model.basis(x, parameters);
    return row.filter((_, j) => !fixed.has(model.linear[j]!));
  });
  const offset = problem.x.map((x) =>
    model.basis(x, parameters).reduce((sum, value, j) => sum + value * (fixed.get(model.linear[j]!) ?? 0), 0),
  );
  const solved = solveColumns(columns, problem, offset);
  if (!solved) return noEstimate("singular");
  const shifts = solved.coefficients.slice(freeLinear.length);
  const n = problem.x.length;
  const df = n - (free.length + shifts.length);
  const fitted = problem.x.map((_, i) => fittedAt(model, problem, parameters, shifts, i));
  const jacobian = jacobianRows(model, problem, free, parameters);
  const covariance = censoredCovariance(jacobian, problem.y, fitted, problem.censored, solved.sigma);
  if (!covariance) return noEstimate("singular", iterations);
  const residuals = problem.y.map((y, i) => y - fitted[i]!);
  const residualSd = solved.sigma * Math.sqrt(n / df);
  const leverage = jacobian.map((row) =>
    Math.min(
      1,
      row.reduce((sum, a, j) => sum + a * covariance[j]!.reduce((inner, c, k) => inner + c * row[k]!, 0), 0) /
        residualSd ** 2,
    ),
  );
  return {
    status: "converged",
    iterations,
    parameters,
    shifts,
    free,
    covariance,
    residuals,
    leverage,
    rss: null,
    df,
    residualSd,
    deviance: solved.deviance,
  };
}
