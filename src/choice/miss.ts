import type { ResponseCurve } from "../curve/types.ts";
import type { Limit } from "./limits.ts";

export interface MissInput {
  dose: number;
  limits: { limit: Limit; curve: ResponseCurve }[];
  /** relative standard uncertainty of the dose that all jars share and the plant does not repeat */
  sharedRelative: number;
  /** relative spread of the feed's solids at a fixed ratio of polymer to flow */
  driftRelative: number;
  /** standard normal draws from a seeded source */
  normal: () => number;
  draws: number;
}

export interface MissChance {
  limit: Limit;
  chance: number;
}

/**
 * The chance that each limit is missed at the plant, by simulation of curve error, shared dose error, feed drift and
 * one jar's scatter. Where a draw leaves the tested range the curve is taken at its end: nothing is extrapolated.
 */
export function chanceToMiss(input: MissInput): MissChance[] {
  const misses = input.limits.map(() => 0);
  for (let draw = 0; draw < input.draws; draw++) {
    const stretch = 1 + input.sharedRelative * input.normal();
    const drift = Math.max(0.05, 1 + input.driftRelative * input.normal());
    const actual = (input.dose * stretch) / drift;
    input.limits.forEach(({ limit, curve }, i) => {
      const dose = Math.min(curve.tested.high, Math.max(curve.tested.low, actual));
      const mean = (curve.simulate?.(input.normal) ?? curve.mean)(dose);
      const value = curve.scatter ? curve.scatter(mean, input.normal()) : mean;
      const fails = limit.side === "at-most" ? value > limit.value : value < limit.value;
      if (fails) misses[i]! += 1;
    });
  }
  return input.limits.map(({ limit }, i) => ({ limit, chance: misses[i]! / input.draws }));
}
