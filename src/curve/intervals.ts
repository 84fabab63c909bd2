import { tQuantile } from "./distributions.ts";
import type { Estimate, Fixed } from "./estimate-result.ts";
import type { CurveModel } from "./models/model.ts";
import { canProfile, profileSet } from "./profile.ts";
import type { Problem } from "./problem.ts";
import type { DoseInterval } from "./types.ts";

/** Profile, Fieller (quadratics) and delta intervals for the optimum or knee, formed in ln dose where the model is. */
export function optimumIntervals(
  model: CurveModel,
  problem: Problem,
  fixed: Fixed,
  estimate: Estimate,
  dose: number,
  level: number,
): DoseInterval[] {
  const t = tQuantile(0.5 + level / 2, estimate.df);
  const all: DoseInterval[] = [];
  // A perfect fit leaves nothing but rounding to measure an interval by: it is the estimate itself.
  if (perfect(problem, estimate)) {
    const methods: DoseInterval["method"][] =
      model.degree === 2 && fixed.size === 0 ? ["profile", "fieller", "delta"] : ["profile", "delta"];
    return methods.map((method) => ({ method, kind: "interval", low: dose, high: dose }));
  }
  if (canProfile(model, fixed)) {
    const set = profileSet(model, problem, fixed, estimate, dose, t);
    all.push({
      method: "profile",
      kind: set.kind,
      low: set.kind === "all" ? null : finite(set.low),
      high: set.kind === "all" ? null : finite(set.high),
    });
  }
  if (model.degree === 2 && model.held && fixed.size === 0 && !problem.anyCensored) {
    const fieller = fiellerInterval(estimate, t, model.logDose);
    if (fieller) all.push(fieller);
  }
  const delta = deltaInterval(model, problem, estimate, t);
  if (delta) all.push(delta);
  return all;
}

function perfect(problem: Problem, estimate: Estimate): boolean {
  const size = Math.max(...problem.y.map(Math.abs));
  return !(estimate.residualSd > 1e-10 * size);
}

function finite(value: number | null): number | null {
  return value !== null && Number.isFinite(value) ? value : null;
}

/**
 * Fieller's set for -b1 / (2 b2) (Fieller 1954): an interval where b2 is significant, else a complement or the line.
 */
function fiellerInterval(estimate: Estimate, t: number, logDose: boolean): DoseInterval | null {
  const [, b1 = 0, b2 = 0] = estimate.parameters;
  const v = estimate.covariance;
  const v11 = v[1]?.[1];
  const v12 = v[1]?.[2];
  const v22 = v[2]?.[2];
  if (v11 === undefined || v12 === undefined || v22 === undefined) return null;
  const a = 4 * (b2 * b2 - t * t * v22);
  const b = 4 * (b1 * b2 - t * t * v12);
  const c = b1 * b1 - t * t * v11;
  const out = (u: number) => finite(logDose ? Math.exp(u) : u);
  const disc = b * b - 4 * a * c;
  if (disc < 0) return { method: "fieller", kind: "all", low: null, high: null };
  const q = -0.5 * (b + Math.sign(b || 1) * Math.sqrt(disc));
  const roots = [q / a, c / q].sort((x, y) => x - y);
  const [low, high] = roots as [number, number];
  return { method: "fieller", kind: a > 0 ? "interval" : "complement", low: out(low), high: out(high) };
}

/** The optimum on the scale its interval is formed on, or null where these parameters have none. */
function turningOnScale(model: CurveModel, problem: Problem, parameters: number[]): number | null {
  const turning = model.turning(parameters, problem.range);
  if (!turning || !Number.isFinite(turning.dose)) return null;
  if (!model.logDose) return turning.dose;
  return turning.dose > 0 ? Math.log(turning.dose) : null;
}

/** Standard error of the optimum by the delta method, on its own scale. */
export function turningError(
  model: CurveModel,
  problem: Problem,
  estimate: Estimate,
): { at: number; se: number } | null {
  const at = turningOnScale(model, problem, estimate.parameters);
  if (at === null) return null;
  const gradient = estimate.free.map((k, j) => {
    const se = Math.sqrt(estimate.covariance[j]![j]!);
    const step = Math.max(1e-5 * se, 1e-9 * Math.abs(estimate.parameters[k]!), 1e-300);
    const moved = (sign: number) => {
      const parameters = [...estimate.parameters];
      parameters[k]! += sign * step;
      return turningOnScale(model, problem, parameters);
    };
    const up = moved(1);
    const down = moved(-1);
    return up === null || down === null ? NaN : (up - down) / (2 * step);
  });
  let variance = 0;
  for (let i = 0; i < gradient.length; i++)
    for (let j = 0; j < gradient.length; j++)
      variance += gradient[i]! * estimate.covariance[i]![j]! * gradient[j]!;
  const se = Math.sqrt(variance);
  return Number.isFinite(se) ? { at, se } : null;
}

function deltaInterval(
  model: CurveModel,
  problem: Problem,
  estimate: Estimate,
  t: number,
): DoseInterval | null {
  const error = turningError(model, problem, estimate);
  if (!error) return null;
  const out = (u: number) => finite(model.logDose ? Math.exp(u) : u);
  const low = out(error.at - t * error.se);
  const high = out(error.at + t * error.se);
  return low === null || high === null ? null : { method: "delta", kind: "interval", low, high };
}
