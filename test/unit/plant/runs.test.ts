import { describe, expect, test } from "vitest";
import { benchFactor, nextDose } from "../../../src/plant/bench-factor.ts";
import { controlChart } from "../../../src/plant/control-chart.ts";
import { comparePairs } from "../../../src/plant/paired.ts";
import { activeOfStream, doseOfRate, reconcile } from "../../../src/plant/run-dose.ts";
import { planStepTest } from "../../../src/plant/step-test.ts";
import { seededRandom } from "../../../src/curve/random.ts";

const had = <T>(outcome: { ok: true; value: T } | { ok: false; message: string }): T => {
  if (!outcome.ok) throw new Error(outcome.message);
  return outcome.value;
};

describe("step test (source: trade formulas, section 8; waiting and step size are common practice, no source)", () => {
  const input = {
    benchDoseKgPerT: 5,
    factor: 1.1,
    stepPct: 15,
    levels: 5,
    order: "down-then-up" as const,
    holdUpL: 3000,
    feedM3PerH: 18,
  };
  test("five levels around factor x bench dose, down and then up, waiting three residence times", () => {
    const plan = had(planStepTest(input, () => 0));
    const doses = plan.steps.map(({ doseKgPerT }) => Number(doseKgPerT.toFixed(6)));
    expect(doses).toEqual([7.15, 6.325, 5.5, 4.675, 3.85, 4.675, 5.5, 6.325, 7.15]);
    expect(plan.steps.filter(({ repeat }) => repeat)).toHaveLength(4);
    expect(plan.residenceMin).toBeCloseTo(10, 10);
    expect(plan.waitMin).toBeCloseTo(30, 10);
  });
  test("a random order holds each level once and is the same for the same seed", () => {
    const run = (seed: number) =>
      had(planStepTest({ ...input, order: "random" }, seededRandom(seed))).steps.map(({ doseKgPerT }) =>
        Number(doseKgPerT.toFixed(6)),
      );
    expect(run(3)).toEqual(run(3));
    expect([...run(3)].sort((a, b) => a - b)).toEqual([3.85, 4.675, 5.5, 6.325, 7.15]);
    expect(new Set([1, 2, 3, 4, 5].map((seed) => run(seed).join())).size).toBeGreaterThan(1);
  });
  test("steps down to nothing are refused", () => {
    expect(planStepTest({ ...input, stepPct: 50 }, () => 0).ok).toBe(false);
    expect(planStepTest({ ...input, levels: 4 }, () => 0).ok).toBe(false);
  });
});

describe("the actual dose by three ways", () => {
  test("worked 7.1 backwards: 77.2846 mL/min neat on 501.5 kg/h is 4.000 kg/t", () => {
    expect(had(doseOfRate(activeOfStream(77.28463553706273, 1.03, 42), 501.5))).toBeCloseTo(4, 8);
  });
  test("the draw-down counts before the container, and 5 % decides agreement", () => {
    const close = had(
      reconcile([
        { way: "pump-line", doseKgPerT: 5.1 },
        { way: "container", doseKgPerT: 5.05 },
        { way: "draw-down", doseKgPerT: 5 },
      ]),
    );
    expect(close).toMatchObject({ doseKgPerT: 5, from: "draw-down", agrees: true });
    expect(close.spreadPct).toBeCloseTo((100 * 0.1) / 5.05, 10);
    expect(close.differences.map(({ differencePct }) => Number(differencePct.toFixed(6)))).toEqual([0, 1, 2]);
    const apart = had(
      reconcile([
        { way: "draw-down", doseKgPerT: 5 },
        { way: "container", doseKgPerT: 5.4 },
      ]),
    );
    expect(apart.agrees).toBe(false);
    expect(had(reconcile([{ way: "container", doseKgPerT: 5 }]))).toMatchObject({
      spreadPct: null,
      agrees: null,
    });
    expect(reconcile([]).ok).toBe(false);
  });
});

describe("bench-to-plant factor", () => {
  test("one trial: 5.6 / 4.9 = 1.1429, without a spread (source: trade formulas, section 8, recomputed)", () => {
    const one = had(benchFactor([{ plantDoseKgPerT: 5.6, benchDoseKgPerT: 4.9 }]));
    expect(one.factor).toBeCloseTo(1.1429, 4);
    expect(one).toMatchObject({ n: 1, spreadPct: null, low: null, high: null, nextRelative: null });
    expect(nextDose(5, null, one)).toMatchObject({ low: null, high: null });
  });
  test("geometric: doses of 2 and 1/2 times the bench cancel", () => {
    const two = had(
      benchFactor([
        { plantDoseKgPerT: 10, benchDoseKgPerT: 5 },
        { plantDoseKgPerT: 2.5, benchDoseKgPerT: 5 },
      ]),
    );
    expect(two.factor).toBeCloseTo(1, 12);
    // sd of the logs is ln 2 x sqrt 2; the log-normal coefficient of variation by its closed form
    expect(two.spreadPct).toBeCloseTo(100 * Math.sqrt(Math.exp(2 * Math.log(2) ** 2) - 1), 8);
  });
  test("three trials widen the next dose with Student's factor on two degrees of freedom", () => {
    const factor = had(
      benchFactor([1.06, 1.1, 1.14].map((k) => ({ plantDoseKgPerT: 5 * k, benchDoseKgPerT: 5 }))),
    );
    const next = nextDose(5, null, factor);
    expect(next.doseKgPerT).toBeCloseTo(5 * factor.factor, 12);
    expect(Math.log(next.high! / next.doseKgPerT)).toBeCloseTo(4.302653 * factor.nextRelative!, 5);
    // a known bench uncertainty widens it further, but less than adding the two widths
    const both = nextDose(5, 0.03, factor);
    expect(both.relative!).toBeGreaterThan(factor.nextRelative!);
    expect(both.relative!).toBeLessThan(factor.nextRelative! + 0.03);
    expect(nextDose(5, 0.03, null).high!).toBeCloseTo(5 * Math.exp(1.959964 * 0.03), 4);
  });
  test("no trial, or no dose, is refused", () => {
    expect(benchFactor([]).ok).toBe(false);
    expect(benchFactor([{ plantDoseKgPerT: 0, benchDoseKgPerT: 5 }]).ok).toBe(false);
  });
});

describe("drift watch", () => {
  const calm = [20.1, 19.8, 20.3, 20.0, 20.2, 19.9];
  test("limits by hand: mean 20.05, mean moving range 0.32, 3 / d2 = 2.6587", () => {
    const chart = had(controlChart([...calm, 20.1]));
    expect(chart.middle).toBeCloseTo(20.05, 10);
    expect(chart.movingRange).toBeCloseTo((0.3 + 0.5 + 0.3 + 0.2 + 0.3) / 5, 10);
    expect(chart.high).toBeCloseTo(20.05 + 2.658681 * 0.32, 5);
    expect(chart.latest).toBeNull();
  });
  test("a point outside, and eight on one side", () => {
    expect(had(controlChart([...calm, 18.9])).latest).toBe("below");
    expect(had(controlChart([...calm, 21.2])).latest).toBe("above");
    const creeping = [...calm, ...Array.from({ length: 8 }, () => 20.3)];
    expect(had(controlChart(creeping, 6)).latest).toBe("run");
    expect(had(controlChart(creeping.slice(0, -1), 6)).latest).toBeNull();
  });
  test("too few runs, or no scatter, is said", () => {
    expect(controlChart(calm)).toMatchObject({
      ok: false,
      message: expect.stringMatching(/needs 7 runs/) as string,
    });
    expect(controlChart(Array.from({ length: 9 }, () => 20)).ok).toBe(false);
  });
});

test("paired comparison (source: trade formulas, section 8, recomputed independently)", () => {
  const a = [20.1, 19.8, 20.3, 20.0];
  const b = [20.9, 20.6, 21.0, 20.5];
  const found = had(comparePairs(a.map((value, i) => ({ a: value, b: b[i]! }))));
  expect(found.meanDifference).toBeCloseTo(0.7, 8);
  expect(found.sd).toBeCloseTo(0.141421, 6);
  expect(found.t).toBeCloseTo(9.8995, 4);
  expect(found.low).toBeCloseTo(0.475, 4);
  expect(found.high).toBeCloseTo(0.925, 4);
  expect(found.p).toBeCloseTo(0.00219, 5);
  expect(comparePairs([{ a: 1, b: 2 }]).ok).toBe(false);
  expect(
    comparePairs([
      { a: 1, b: 2 },
      { a: 2, b: 3 },
    ]),
  ).toMatchObject({ ok: true, value: { t: null, p: null, low: 1, high: 1 } });
});
