import { describe, expect, test } from "vitest";
import { costAt, leastCost, lowestNear } from "../../../src/choice/cost.ts";
import { desirability, overallDesirability } from "../../../src/choice/desirability.ts";
import { holdingSpans, limitSpans } from "../../../src/choice/limits.ts";
import { chanceToMiss } from "../../../src/choice/miss.ts";
import { guarded, nearestEdge, workingWindow } from "../../../src/choice/window.ts";
import { normalFrom, seededRandom } from "../../../src/curve/random.ts";
import type { ResponseCurve } from "../../../src/curve/types.ts";

// Source of the cost and desirability figures: the project's trade table, section 5, each recomputed independently.
const cake = (d: number) => 21.2775 - (21.2775 - 9.49715) * Math.exp(-0.362276 * d);
const cost = {
  pricePerKgNeat: 3.2,
  activePct: 42,
  disposalPerWetT: 90,
  returnPerT: null,
  cakePct: cake,
  capturePct: () => 97,
};

test("worked total cost, its least dose and the lowest within 1 %", () => {
  const table: [number, number][] = [
    [3, 527.361],
    [4, 502.071],
    [5, 489.206],
    [6, 483.587],
    [7, 482.44],
    [8, 484.161],
  ];
  for (const [dose, total] of table) expect(costAt(dose, cost).total).toBeCloseTo(total, 2);
  const least = leastCost([{ low: 2, high: 10 }], cost)!;
  expect(least.dose).toBeCloseTo(6.832, 2);
  expect(least.cost).toBeCloseTo(482.398, 2);
  expect(lowestNear([{ low: 2, high: 10 }], cost, least.cost)).toBeCloseTo(5.2552, 3);
  expect(costAt(5, { ...cost, pricePerKgNeat: null }).total).toBeNull();
});

test("worked desirability (Derringer & Suich 1980)", () => {
  const d = [
    desirability(62, { worst: 150, best: 40, weight: 1 }),
    desirability(18.8, { worst: 16, best: 20, weight: 1 }),
    desirability(30.48, { worst: 60, best: 20, weight: 1 }),
  ];
  [0.8, 0.7, 0.738].forEach((value, i) => expect(d[i]).toBeCloseTo(value, 4));
  const overall = (weights: number[]) =>
    overallDesirability(d.map((one, i) => ({ desirability: one, weight: weights[i]! })));
  expect(overall([1, 1, 1])).toBeCloseTo(0.74487, 4);
  expect(overall([2, 3, 1])).toBeCloseTo(0.73834, 4);
});

const valley: ResponseCurve = {
  response: "turbidity_ntu",
  tested: { low: 2, high: 8 },
  mean: (d) => Math.exp(9.231967 - 1.95367 * d + 0.1764375 * d * d),
  low95: (d) => 0.95 * Math.exp(9.231967 - 1.95367 * d + 0.1764375 * d * d),
  high95: (d) => 1.05 * Math.exp(9.231967 - 1.95367 * d + 0.1764375 * d * d),
  simulate: () => (d) => Math.exp(9.231967 - 1.95367 * d + 0.1764375 * d * d),
  scatter: (mean, z) => mean * Math.exp(0.1 * z),
};
const at = (value: number) => ({
  response: "turbidity_ntu",
  side: "at-most" as const,
  value,
  words: `turbidity at most ${value} NTU`,
});

describe("limits and window", () => {
  test("worked dose windows of the quadratic in dose", () => {
    const [hundred] = limitSpans(valley, at(100)).mean;
    expect(hundred!.low).toBeCloseTo(3.432, 3);
    expect(hundred!.high).toBeCloseTo(7.6409, 3);
    const [sixty] = limitSpans(valley, at(60)).mean;
    expect(sixty!.low).toBeCloseTo(4.2981, 3);
    expect(sixty!.high).toBeCloseTo(6.7748, 3);
  });
  test("a tighter limit, or the bound instead of the mean, never widens a window", () => {
    const width = (value: number, key: "mean" | "bound") =>
      limitSpans(valley, at(value))[key].reduce((sum, span) => sum + span.high - span.low, 0);
    for (const value of [50, 60, 80, 120]) {
      expect(width(value, "bound")).toBeLessThanOrEqual(width(value, "mean"));
      expect(width(value - 2, "mean")).toBeLessThanOrEqual(width(value, "mean"));
    }
  });
  test("an empty window names the two limits and where they come nearest, and relaxes neither", () => {
    const low = { limit: at(60), spans: [{ low: 2, high: 4 }] };
    const high = { limit: { ...at(19), words: "cake TS at least 19 %" }, spans: [{ low: 5, high: 8 }] };
    const empty = workingWindow([low, high], { low: 2, high: 8 }, String);
    expect(empty).toMatchObject({ kind: "empty", nearest: 4.5 });
    expect(empty.kind === "empty" && empty.conflict.map((one) => one.words)).toEqual([
      low.limit.words,
      high.limit.words,
    ]);
    const never = workingWindow([{ limit: at(10), spans: [] }, high], { low: 2, high: 8 }, String);
    expect(never).toMatchObject({ kind: "empty", conflict: [at(10)] });
  });
  test("guard band and the nearest failing edge", () => {
    expect(guarded([{ low: 4, high: 6 }], { low: 2, high: 8 }, 10)).toEqual([{ low: 4.4, high: 5.4 }]);
    expect(guarded([{ low: 2, high: 8 }], { low: 2, high: 8 }, 10)).toEqual([{ low: 2, high: 8 }]);
    expect(guarded([{ low: 5, high: 5.2 }], { low: 2, high: 8 }, 10)).toEqual([]);
    const edge = nearestEdge([{ limit: at(60), spans: [{ low: 4.3, high: 6.8 }] }], 5, { low: 2, high: 8 });
    expect(edge!.distance).toBeCloseTo(0.7, 10);
  });
  test("spans of a wavy function are all found", () => {
    expect(holdingSpans((x) => Math.sin(x), { low: 0.5, high: 13 })).toHaveLength(2);
  });
});

test("the simulated chance to miss agrees with the normal chance it must be", () => {
  // curve fixed, scatter 10 % on the log: P(value > limit) = P(z > ln(limit / mean) / 0.1)
  const mean = valley.mean(5);
  const limit = at(mean * Math.exp(0.1));
  const draws = 20_000;
  const [miss] = chanceToMiss({
    dose: 5,
    limits: [{ limit, curve: valley }],
    sharedRelative: 0,
    driftRelative: 0,
    normal: normalFrom(seededRandom(3)),
    draws,
  });
  expect(Math.abs(miss!.chance - 0.158655)).toBeLessThan(4 * Math.sqrt((0.158655 * 0.841345) / draws));
});
