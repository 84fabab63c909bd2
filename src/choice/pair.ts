import { choiceWords } from "../words/choice.ts";

/** A pair of doses in order of injection, kg/t. */
export interface Pair {
  a: number;
  b: number;
}

export interface PairLimit {
  words: string;
  /** at most 0 where the limit holds at the one-sided 95 % bound */
  excess(pair: Pair): number;
}

export interface PairInput {
  rangeA: { low: number; high: number };
  rangeB: { low: number; high: number };
  /** whether a pair lies within what was tested (the convex hull of the jars) */
  inside(pair: Pair): boolean;
  limits: PairLimit[];
  /** total cost per tonne dry solids; null where there is no price */
  cost: ((pair: Pair) => number | null) | null;
}

export type PairChoice =
  | { kind: "found"; pair: Pair; cost: number | null; by: "cost" | "least-polymer" }
  | { kind: "empty"; conflict: string[]; nearest: Pair | null; sentence: string };

const steps = 120;

/**
 * The cheapest pair within the tested hull that meets every limit at its bound (least total polymer where nothing is
 * priced), on a grid of 121 by 121. Where none does, the limits that shut each other out and the nearest pair.
 */
export function cheapestPair(
  input: PairInput,
  number: (doseKgPerT: number) => string,
  doseUnit = "kg/t",
): PairChoice {
  const { rangeA, rangeB } = input;
  let best: { pair: Pair; score: number } | null = null;
  let nearest: { pair: Pair; worst: number; failing: string[] } | null = null;
  const everMet = new Set<PairLimit>();
  for (let i = 0; i <= steps; i++)
    for (let j = 0; j <= steps; j++) {
      const pair = {
        a: rangeA.low + ((rangeA.high - rangeA.low) * i) / steps,
        b: rangeB.low + ((rangeB.high - rangeB.low) * j) / steps,
      };
      if (!input.inside(pair)) continue;
      const failing: string[] = [];
      let worst = 0;
      for (const limit of input.limits) {
        const excess = limit.excess(pair);
        if (excess <= 0) everMet.add(limit);
        else {
          failing.push(limit.words);
          worst = Math.max(worst, excess);
        }
      }
      if (failing.length > 0) {
        if (nearest === null || worst < nearest.worst) nearest = { pair, worst, failing };
        continue;
      }
      const score = input.cost?.(pair) ?? pair.a + pair.b;
      if (best === null || score < best.score) best = { pair, score };
    }
  if (best) {
    const cost = input.cost?.(best.pair) ?? null;
    return { kind: "found", pair: best.pair, cost, by: cost === null ? "least-polymer" : "cost" };
  }
  const never = input.limits.filter((limit) => !everMet.has(limit)).map((limit) => limit.words);
  const conflict =
    never.length > 0 ? never.slice(0, 1) : input.limits.map((limit) => limit.words).slice(0, 2);
  return {
    kind: "empty",
    conflict,
    nearest: nearest?.pair ?? null,
    sentence:
      never.length > 0
        ? choiceWords.pairNeverMet(never[0]!)
        : nearest
          ? choiceWords.pairConflictNear(conflict, number(nearest.pair.a), number(nearest.pair.b), doseUnit)
          : choiceWords.pairConflict(conflict),
  };
}
