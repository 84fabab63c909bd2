import { describe, expect, test } from "vitest";
import { savingAgainst } from "../../../src/choice/against-today.ts";
import { compareAlternatives } from "../../../src/choice/compare.ts";
import { nextJars, tightEnough } from "../../../src/choice/next-jars.ts";
import { fitModel } from "../../../src/curve/fit.ts";
import { modelNamed } from "../../../src/curve/models/registry.ts";
import { normalFrom, seededRandom } from "../../../src/curve/random.ts";
import { robustRefit } from "../../../src/curve/robust.ts";

const doses = [2, 2, 3, 3, 4, 4, 5, 5, 6, 6, 8, 8];
const valley = (d: number) => Math.exp(3.8 + 0.16 * (d - 5.5) ** 2);
const noise = normalFrom(seededRandom(4));
const points = doses.map((x, i) => ({ x, y: valley(x) * Math.exp(0.08 * noise()), row: i + 2 }));
const fit = fitModel(modelNamed("quadratic")!, points, { scale: "log" });

describe("next jars", () => {
  test("what is promised comes true on average when the jars are run", () => {
    const next = nextJars(fit)!;
    expect(next.doses.length).toBeGreaterThanOrEqual(2);
    expect(next.doses.length).toBeLessThanOrEqual(4);
    for (const dose of next.doses) expect(dose >= 2 && dose <= 8).toBe(true);
    expect(next.shrinkPct).toBeGreaterThan(5);
    const widthOf = (report: typeof fit.report) => {
      const delta = report.optimum!.intervals.find((one) => one.method === "delta")!;
      return delta.high! - delta.low!;
    };
    const normal = normalFrom(seededRandom(8));
    let ratio = 0;
    const runs = 200;
    for (let run = 0; run < runs; run++) {
      const fresh = doses.map((x, i) => ({ x, y: valley(x) * Math.exp(0.08 * normal()), row: i + 2 }));
      const added = next.doses.map((x, i) => ({ x, y: valley(x) * Math.exp(0.08 * normal()), row: 50 + i }));
      const options = { scale: "log" as const, influence: false };
      const before = fitModel(modelNamed("quadratic")!, fresh, options).report;
      const after = fitModel(modelNamed("quadratic")!, [...fresh, ...added], options).report;
      ratio += widthOf(after) / widthOf(before) / runs;
    }
    expect(100 * (1 - ratio)).toBeGreaterThan(next.shrinkPct - 6);
    expect(100 * (1 - ratio)).toBeLessThan(next.shrinkPct + 6);
  });
  test("doses chosen are better than the same number of jars in the middle", () => {
    const next = nextJars(fit)!;
    const widthWith = (extra: number[]) => {
      const report = fitModel(
        modelNamed("quadratic")!,
        [...points, ...extra.map((x, i) => ({ x, y: valley(x), row: 60 + i }))],
        { scale: "log", influence: false },
      ).report;
      const delta = report.optimum!.intervals.find((one) => one.method === "delta")!;
      return delta.high! - delta.low!;
    };
    expect(widthWith(next.doses)).toBeLessThan(widthWith(next.doses.map(() => 5.5)));
  });
  test("tight enough is a question of money", () => {
    expect(tightEnough(5, 6, (d) => 500 + d)).toBe(true);
    expect(tightEnough(5, 6, (d) => 100 * d)).toBe(false);
    expect(tightEnough(5, 6, () => null)).toBeNull();
  });
});

test("a bisquare refit sets a wild jar aside and stays put where there is none", () => {
  expect(robustRefit(fit)).toBeNull();
  const wild = points.map((point) => (point.row === 12 ? { ...point, y: point.y * 4 } : point));
  const hurt = fitModel(modelNamed("quadratic")!, wild, { scale: "log" });
  const robust = robustRefit(hurt)!;
  expect(robust.downWeighted[0]!.row).toBe(12);
  expect(Math.abs(robust.dose! - fit.report.optimum!.dose)).toBeLessThan(
    Math.abs(hurt.report.optimum!.dose - fit.report.optimum!.dose) / 2,
  );
});

test("a saving is reckoned on the same simulated curves, so that what they share cancels", () => {
  const cost = {
    pricePerKgNeat: 3,
    activePct: 50,
    disposalPerWetT: 90,
    returnPerT: null,
    cakePct: () => 20,
    capturePct: () => 97,
  };
  const shared = {
    response: "cake_ts_pct",
    tested: { low: 2, high: 8 },
    mean: () => 20,
    low95: () => 19,
    high95: () => 21,
    simulate: (normal: () => number) => {
      const level = 20 + normal();
      return () => level;
    },
  };
  const saving = savingAgainst(
    4,
    6,
    cost,
    { cake: shared, capture: null },
    { low: 2, high: 8 },
    normalFrom(seededRandom(1)),
    500,
  )!;
  expect(saving.perTDs).toBeCloseTo(-12, 10);
  expect(saving.low).toBeCloseTo(-12, 6);
  expect(saving.high).toBeCloseTo(-12, 6);
  expect(saving.chanceReal).toBe(1);
  expect(
    savingAgainst(
      4,
      9,
      cost,
      { cake: null, capture: null },
      { low: 2, high: 8 },
      normalFrom(seededRandom(1)),
      10,
    ),
  ).toBeNull();
});

test("two alternatives a standard deviation apart are ranked with the chance that theory gives", () => {
  const one = (name: string, cost: number) => ({
    name,
    cost,
    simulate: (normal: () => number) => cost + normal(),
  });
  const ranked = compareAlternatives(
    [one("dear", 101), one("cheap", 100)],
    normalFrom(seededRandom(2)),
    20_000,
  );
  expect(ranked.map(({ name }) => name)).toEqual(["cheap", "dear"]);
  // P(N(1, sqrt 2) > 0) = 0.7602
  expect(ranked[0]!.chanceBest).toBeCloseTo(0.7602, 1);
});
