import { describe, expect, test } from "vitest";
import { feedFlowM3PerH, relativeOfProduct } from "../../../src/plant/feed.ts";
import { checkMachine, type MachineLimits } from "../../../src/plant/machine-check.ts";
import {
  ageingTankL,
  batchTiming,
  landDoseLimitKgPerT,
  productUse,
  returnLoad,
  stockDays,
  wetCakeWithPolymer,
} from "../../../src/plant/make-down-unit.ts";
import { meteringFigures, turndownNeeded } from "../../../src/plant/metering.ts";
import { choosePumpModel, withinPanel } from "../../../src/plant/pump-model.ts";
import { drawError, flowAt, settingFor } from "../../../src/plant/pump-line.ts";
import { strokeAtHeldSpeed } from "../../../src/plant/stroke-speed.ts";

const had = <T>(outcome: { ok: true; value: T } | { ok: false; message: string }): T => {
  if (!outcome.ok) throw new Error(outcome.message);
  return outcome.value;
};

describe("feed flow", () => {
  const none = {
    flowM3PerH: null,
    timedVolumeM3: null,
    tankAreaM2: null,
    levelChangeM: null,
    timedMin: null,
    supplyM3PerH: null,
    returnM3PerH: null,
  };
  test("meter, timed volume, level, supply less return", () => {
    expect(had(feedFlowM3PerH({ ...none, flowFrom: "meter", flowM3PerH: 20 }))).toBe(20);
    expect(had(feedFlowM3PerH({ ...none, flowFrom: "timed", timedVolumeM3: 5, timedMin: 15 }))).toBe(20);
    expect(
      had(feedFlowM3PerH({ ...none, flowFrom: "level", tankAreaM2: 12.5, levelChangeM: 0.4, timedMin: 15 })),
    ).toBe(20);
    expect(had(feedFlowM3PerH({ ...none, flowFrom: "difference", supplyM3PerH: 26, returnM3PerH: 6 }))).toBe(
      20,
    );
  });
  test("each way names what is missing", () => {
    for (const [flowFrom, words] of [
      ["meter", /feed flow/],
      ["timed", /volume/],
      ["level", /area/],
      ["difference", /supply/],
    ] as const)
      expect(feedFlowM3PerH({ ...none, flowFrom })).toMatchObject({
        ok: false,
        message: expect.stringMatching(words) as string,
      });
    expect(feedFlowM3PerH({ ...none, flowFrom: "difference", supplyM3PerH: 6, returnM3PerH: 6 }).ok).toBe(
      false,
    );
  });
  test("relative uncertainties join in quadrature", () => {
    expect(relativeOfProduct([0.03, 0.04])).toBeCloseTo(0.05, 12);
  });
});

describe("make-down unit (source: worked 7.1, recomputed independently)", () => {
  test("ageing volume with dead volume, batch against draw", () => {
    expect(ageingTankL(1003, 30, 0)).toBeCloseTo(501.5, 8);
    expect(ageingTankL(1003, 30, 10)).toBeCloseTo(551.65, 8);
    const slow = batchTiming(1000, 1003, { fillMin: 15, wetMin: 5, ageMin: 30, transferMin: 10 });
    expect(slow.lastsMin / 60).toBeCloseTo(0.99701, 5);
    expect(slow).toMatchObject({ readyMin: 60, keepsUp: false });
    expect(slow.leastBatchL).toBeCloseTo(1003, 8);
    expect(batchTiming(1000, 1003, { fillMin: 10, wetMin: 5, ageMin: 30, transferMin: 10 }).keepsUp).toBe(
      true,
    );
  });
  test("use, containers and days of stock", () => {
    const use = productUse(4.776190476, 8, 250);
    expect(use.kgPerDay).toBeCloseTo(38.2095, 4);
    expect(use.kgPerYear).toBeCloseTo(9552.38, 2);
    expect(use.kgPerMonth * 12).toBeCloseTo(use.kgPerYear, 8);
    const stock = stockDays(use, 1030, 2);
    expect(stock.daysPerContainer).toBeCloseTo(26.9566, 3);
    expect(stock.days).toBeCloseTo(2 * 26.9566, 2);
    expect(stock.containersPerYear).toBeCloseTo(9.27416, 4);
  });
  test("wet cake with retained polymer, and what returns with the filtrate", () => {
    expect(wetCakeWithPolymer(501.5, 97, 20, 4, 0)).toBeCloseTo(2432.28, 1);
    expect(wetCakeWithPolymer(501.5, 97, 20, 4, 1)).toBeCloseTo(2442.0, 1);
    const flows = { returnKgPerH: 15.045, feedM3PerH: 20, solutionLPerH: 1003, carrierLPerH: 0 };
    const plain = returnLoad({ ...flows, washM3PerH: 0, wetCakeKgPerH: 2432.275 })!;
    expect(plain.filtrateM3PerH).toBeCloseTo(18.5707, 4);
    expect(plain.mgPerL).toBeCloseTo(810.146, 2);
    expect(returnLoad({ ...flows, washM3PerH: 6, wetCakeKgPerH: 2432.275 })!.mgPerL).toBeCloseTo(612.314, 2);
    expect(returnLoad({ ...flows, feedM3PerH: 1, washM3PerH: 0, wetCakeKgPerH: 2432 })).toBeNull();
  });
  test("polymer per hectare: 45 kg per 3 years on 5 t DS gives 9.0 kg/t (source: trade formulas, section 10)", () => {
    expect(landDoseLimitKgPerT(45, 5)).toBeCloseTo(9, 12);
  });
});

describe("pumps beyond the straight line", () => {
  // source: worked 7.2, recomputed independently
  const straight = [20, 40, 60, 80, 100].map((setting, i) => ({
    setting,
    flow: [14.1, 31.6, 49, 66.9, 84.2][i]!,
  }));
  const wish = { shape: "auto", weights: "equal" } as const;
  test("a straight pump keeps its line to the last digit", () => {
    const model = had(choosePumpModel(straight, wish));
    expect(model.used).toBe("line");
    expect(settingFor(model.line, 77.2846).pct).toBeCloseTo(92.0509, 3);
  });
  const bent = [20, 40, 60, 80, 100].flatMap((setting) =>
    [-0.1, 0.1].map((off) => ({ setting, flow: 2 + 0.6 * setting + 0.004 * setting ** 2 + off })),
  );
  test("a bent one becomes a curve, inverts to its own flow, and keeps its proven range", () => {
    const model = had(choosePumpModel(bent, wish));
    expect(model).toMatchObject({ used: "curve", doubtful: false });
    expect(model.lineLackOfFit!.p).toBeLessThan(0.05);
    for (const setting of [20, 33, 71.5, 100]) {
      const flow = 2 + 0.6 * setting + 0.004 * setting ** 2;
      expect(flowAt(model.line, setting).flow).toBeCloseTo(flow, 8);
      expect(settingFor(model.line, flow).pct).toBeCloseTo(setting, 6);
    }
    expect(settingFor(model.line, 102.2)).toMatchObject({ status: "above", pct: null });
    expect(settingFor(model.line, 15)).toMatchObject({ status: "below", pct: null });
    const at = settingFor(model.line, 49);
    expect(at.low!).toBeLessThan(at.pct!);
    expect(at.high!).toBeGreaterThan(at.pct!);
  });
  test("the line is kept where it is asked for, and called doubtful", () => {
    expect(had(choosePumpModel(bent, { ...wish, shape: "line" }))).toMatchObject({
      used: "line",
      doubtful: true,
    });
  });
  test("a curve that turns back inside the range is refused", () => {
    const turning = [20, 40, 60, 80, 100].flatMap((setting) =>
      [-0.1, 0.1].map((off) => ({ setting, flow: 90 - 0.02 * (setting - 85) ** 2 + off })),
    );
    expect(choosePumpModel(turning, { ...wish, shape: "curve" })).toMatchObject({
      ok: false,
      message: expect.stringMatching(/turns back/) as string,
    });
  });
  test("weights only if asked: they narrow the error at low flow and widen it at high flow", () => {
    const growing = [10, 20, 50, 100].flatMap((setting) =>
      [0.97, 1.03].map((share) => ({ setting, flow: setting * share })),
    );
    const equal = had(choosePumpModel(growing, { shape: "line", weights: "equal" })).line;
    const relative = had(choosePumpModel(growing, { shape: "line", weights: "relative" })).line;
    expect(equal.shape).toBeUndefined();
    expect(drawError(relative, 10)!).toBeLessThan(drawError(equal, 10)!);
    expect(drawError(relative, 100)!).toBeGreaterThan(drawError(equal, 100)!);
  });
  test("the panel's own ends bound what was proven", () => {
    const line = withinPanel(had(choosePumpModel(straight, wish)).line, 30, 90);
    expect(line.tested).toEqual({ low: 30, high: 90 });
    expect(settingFor(line, 77.2846).status).toBe("above");
  });
  test("stroke times speed: draws at several speeds fall on one line at the held speed (source: trade 7, recomputed)", () => {
    // 120 L/h at full stroke and speed, nothing at 8 % stroke
    const flowOf = (stroke: number, speed: number) => ((120 * (stroke - 8)) / (100 - 8)) * (speed / 100);
    expect(flowOf(60, 75)).toBeCloseTo(50.87, 3);
    const draws = [
      [30, 100],
      [60, 75],
      [90, 50],
      [100, 100],
    ].map(([stroke, speed]) => ({
      setting: strokeAtHeldSpeed(stroke!, speed!, 75, 8),
      flow: flowOf(stroke!, speed!),
    }));
    const model = had(choosePumpModel(draws, wish));
    expect(settingFor(model.line, 50.869565217).pct).toBeCloseTo(60, 6);
    expect(model.line.residualSd!).toBeLessThan(1e-9);
  });
  test("API 675-style figures against their limits; turndown 9 : 1 needed, 5.97 : 1 proven (worked 7.2)", () => {
    const figures = had(
      meteringFigures([...straight, { setting: 60, flow: 48.8 }, { setting: 60, flow: 49.3 }]),
    );
    const of = (name: string) => figures.find((one) => one.name === name)!;
    expect(of("steadiness").value).toBeCloseTo(0.5102, 3);
    expect(of("turndown")).toMatchObject({ within: false, limit: 10 });
    expect(of("turndown").value).toBeCloseTo(5.97, 2);
    expect(had(meteringFigures(straight))[0]).toMatchObject({ value: null, within: null });
    expect(
      turndownNeeded({
        feedM3PerH: { low: 8, high: 24 },
        doseKgPerT: { low: 3, high: 6 },
        totalSolidsPct: { low: 2, high: 3 },
      }),
    ).toBeCloseTo(9, 10);
  });
});

describe("machine check (40, 50, 60 kg/h·m: starting values for one slow class of machine, common practice, no source)", () => {
  const blank: MachineLimits = {
    effectiveWidthM: null,
    loadingKgPerHPerM: null,
    hydraulicLimitM3PerH: null,
    feedLowPct: null,
    feedHighPct: null,
    solidsThresholdPct: null,
    inorganicLowPct: null,
    inorganicHighPct: null,
  };
  const own: MachineLimits = {
    effectiveWidthM: 12.538,
    loadingKgPerHPerM: 40,
    hydraulicLimitM3PerH: 25,
    feedLowPct: 0.5,
    feedHighPct: 5,
    solidsThresholdPct: 2,
    inorganicLowPct: 40,
    inorganicHighPct: 60,
  };
  const feed = { dsKgPerH: 501.5, feedM3PerH: 20, totalSolidsPct: 2.5, inorganicPct: 25 };
  test("a new machine is blank: every check says what is missing", () => {
    for (const check of checkMachine(blank, feed)) {
      expect(check).toMatchObject({ state: "missing", value: null });
      expect(check.words).toMatch(/^enter/);
    }
  });
  test("worked: 501.5 kg/h needs 12.538 m at 40, 8.3583 m at 60", () => {
    expect(checkMachine(own, feed).every(({ state }) => state === "within")).toBe(true);
    const [loading] = checkMachine({ ...own, effectiveWidthM: 12.53 }, feed);
    expect(loading).toMatchObject({ state: "outside", high: 40 });
    expect(loading!.words).toMatch(/supplier and a licensed engineer/);
    expect(checkMachine({ ...own, effectiveWidthM: 8.36, loadingKgPerHPerM: 60 }, feed)[0]!.state).toBe(
      "within",
    );
  });
  test("outside says what to do, in each direction", () => {
    const state = (change: object) =>
      Object.fromEntries(checkMachine(own, { ...feed, ...change }).map((one) => [one.name, one]));
    expect(state({ feedM3PerH: 26 })["hydraulic"]!.words).toMatch(/thicken/);
    expect(state({ totalSolidsPct: 0.4 })["feed-window"]!.words).toMatch(/thin/);
    expect(state({ totalSolidsPct: 5.2 })["feed-window"]!.words).toMatch(/thick/);
    expect(state({ totalSolidsPct: 1.9 })["solids-threshold"]!.state).toBe("outside");
    expect(state({ inorganicPct: 45 })["inorganic"]!.words).toMatch(/Between/);
    expect(state({ inorganicPct: 61 })["inorganic"]!.words).toMatch(/Above/);
    expect(state({ inorganicPct: null })["inorganic"]!.state).toBe("missing");
  });
});
