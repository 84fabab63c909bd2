import type { Estimate, Fixed } from "./estimate-result.ts";
import { estimate as estimateModel } from "./estimate.ts";
import { fastRefitter } from "./fast-refit.ts";
import type { CurveModel } from "./models/model.ts";
import type { Problem } from "./problem.ts";
import { seededRandom } from "./random.ts";
import type { DoseInterval } from "./types.ts";

const tolerableLoss = 0.05;

/**
 * Percentile interval of the optimum from refits to resampled, leverage-adjusted residuals (cases where readings are
 * censored). Where more than 5 % of the draws have no optimum the interval is the whole line: not determined.
 */
export function bootstrapInterval(
  model: CurveModel,
  problem: Problem,
  fixed: Fixed,
  result: Estimate,
  level: number,
  draws: number,
  seed: number,
): DoseInterval {
  const found = bootstrapOptima(model, problem, fixed, result, draws, seed);
  if (found.length < (1 - tolerableLoss) * draws)
    return { method: "bootstrap", kind: "all", low: null, high: null };
  found.sort((a, b) => a - b);
  const at = (p: number) => {
    const place = p * (found.length - 1);
    const below = Math.floor(place);
    const above = Math.min(found.length - 1, below + 1);
    return found[below]! + (place - below) * (found[above]! - found[below]!);
  };
  return { method: "bootstrap", kind: "interval", low: at((1 - level) / 2), high: at((1 + level) / 2) };
}

/** The optimum of each resampled fit that has one of the estimate's own kind. */
export function bootstrapOptima(
  model: CurveModel,
  problem: Problem,
  fixed: Fixed,
  result: Estimate,
  draws: number,
  seed: number,
): number[] {
  const random = seededRandom(seed);
  const n = problem.x.length;
  const kind = model.turning(result.parameters, problem.range)?.kind;
  const fitted = problem.y.map((y, i) => y - result.residuals[i]!);
  const adjusted = result.residuals.map((r, i) => r / Math.sqrt(Math.max(1e-9, 1 - result.leverage[i]!)));
  const mean = adjusted.reduce((sum, r) => sum + r, 0) / n;
  const found: number[] = [];
  const quick =
    model.fast && fixed.size === 0 && !problem.anyCensored && problem.blockNames.length === 0
      ? fastRefitter(model.fast, problem.x)
      : null;
  const responses = new Float64Array(n);
  const refitted = new Float64Array(model.parameterNames.length);
  for (let draw = 0; draw < draws; draw++) {
    if (quick) {
      const picked = Array.from({ length: n }, () => Math.floor(random() * n));
      for (let i = 0; i < n; i++) responses[i] = fitted[i]! + adjusted[picked[i]!]! - mean;
      if (quick(responses, result.parameters, refitted)) {
        // depth keeps its sign and the centre is the optimum: see the model
        if (refitted[1]! > 0 === result.parameters[1]! > 0 && refitted[3]! > 0) found.push(refitted[2]!);
        continue;
      }
      const again = estimateModel(model, { ...problem, y: Array.from(responses) }, fixed, result.parameters);
      const turning = again.status === "converged" ? model.turning(again.parameters, problem.range) : null;
      if (turning && turning.kind === kind) found.push(turning.dose);
      continue;
    }
    const picks = Array.from({ length: n }, () => Math.floor(random() * n));
    const resampled = problem.anyCensored
      ? pickRows(problem, picks)
      : { ...problem, y: fitted.map((value, i) => value + adjusted[picks[i]!]! - mean) };
    const again = estimateModel(model, resampled, fixed, result.parameters);
    if (again.status !== "converged") continue;
    const turning = model.turning(again.parameters, problem.range);
    if (turning && turning.kind === kind && Number.isFinite(turning.dose)) found.push(turning.dose);
  }
  return found;
}

function pickRows(problem: Problem, picks: number[]): Problem {
  const take = <T>(list: T[]) => picks.map((i) => list[i]!);
  return {
    ...problem,
    x: take(problem.x),
    y: take(problem.y),
    censored: take(problem.censored),
    blockColumns: take(problem.blockColumns),
    blockOf: take(problem.blockOf),
    groupOf: take(problem.groupOf),
    order: take(problem.order),
  };
}
