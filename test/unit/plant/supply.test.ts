import { expect, test } from "vitest";
import { applyCommand, type Command } from "../../../src/study/commands.ts";
import { demoCommands } from "../../../src/study/demo.ts";
import { machineChain } from "../../../src/study/derive/plant-machine.ts";
import { mixingChain } from "../../../src/study/derive/plant-mixing.ts";
import { supplyFigures } from "../../../src/study/derive/plant-supply.ts";
import { plantChain } from "../../../src/study/derive/plant.ts";
import { sampleChain } from "../../../src/study/derive/sample.ts";
import { emptyState, type StudyState } from "../../../src/study/schema/records.ts";

const apply = (state: StudyState, command: Command) => {
  const applied = applyCommand(state, command);
  if (!applied.ok) throw new Error(applied.message);
  return applied.value.state;
};
const demo = demoCommands("2026-03-01T12:00:00Z").reduce(apply, emptyState());

test("water and cost of worked 7.1 (source: trade formulas, section 7, recomputed independently)", () => {
  const state = apply(demo, {
    do: "set",
    kind: "feedCase",
    id: "feed-2",
    fields: { flowM3PerH: 20, totalSolidsPct: 2.5, densityKgPerL: 1.003 },
  });
  const usual = plantChain(state, "series-1", { a: 4, b: null }).cases[1]!;
  const figures = supplyFigures(usual.polymers[0]!, usual.feedCase, usual.load.value!);
  const of = (title: RegExp) => figures.find((one) => title.test(one.title))!.figure;
  expect(usual.load.value).toBeCloseTo(501.5, 8);
  expect(of(/Make-up/).value).toBeCloseTo(998.224, 3);
  expect(of(/Carrier/).value).toBeCloseTo(1003, 8);
  expect(of(/per t/).value).toBeCloseTo(30.4762, 4);
  expect(of(/a year/).value).toBeCloseTo(30567.6, 1);
  const dear = apply(state, {
    do: "set",
    kind: "product",
    id: "product-1",
    fields: { pricePerKgNeat: null },
  });
  const again = plantChain(dear, "series-1", { a: 4, b: null }).cases[1]!;
  expect(supplyFigures(again.polymers[0]!, again.feedCase, again.load.value!).at(-1)!.figure).toMatchObject({
    value: null,
    missing: "enter the price of Flocculant E-42 (invented)",
  });
});

test("bench against plant mixing: alike, too much, too little, and the jar time that would match", () => {
  const series = demo.series["series-1"]!;
  const conditions = {
    benchTemperatureC: 20,
    plantTemperatureC: 20,
    densityKgPerL: 1,
    feedM3PerH: 18,
    solutionLPerH: 0,
  };
  const record = demo.mixing["mixing-1"]!;
  // worked 4.2: a valve of 15 kPa and 1.0 s has G 3870 and Gt 3870 (5 L at 18 m³/h is 1.0 s)
  const one = mixingChain(record, series, conditions);
  expect(one.retention.value).toBeCloseTo(1, 10);
  expect(one.plantG.value).toBeCloseTo(3870, -0.5);
  expect(one.plantGt.value).toBeCloseTo(one.plantG.value!, 6);
  expect(one.verdict.tone).toBe("good");
  // mixing the jars for the matching time makes both equal
  const matched = mixingChain(
    record,
    { ...series, protocol: { ...series.protocol, fastS: one.matchFastS.value } },
    conditions,
  );
  expect(matched.ratio.value).toBeCloseTo(1, 8);
  expect(mixingChain({ ...record, pressureDropKPa: 200 }, series, conditions).verdict.words).toMatch(
    /mixes more .*turn down the valve/,
  );
  expect(mixingChain({ ...record, pressureDropKPa: 1 }, series, conditions).verdict.words).toMatch(
    /mixes less .*turn up the valve/,
  );
  const bare = { ...series, protocol: { ...series.protocol, stirrerDiameterMm: null } };
  const gap = mixingChain(record, bare, conditions);
  expect(gap.verdict.words).toMatch(/diameter of the jar's paddle/);
  expect(gap.ratio.value).toBeNull();
  // a study from before the stirrer stood in the series alone
  const older = mixingChain({ ...record, jarPaddleMm: 50 }, bare, conditions);
  expect(older.ratio.value).toBeCloseTo(one.ratio.value!, 12);
  // source: trade formulas, section 6: 20.6 m³/h, DN 100, 60 s needs 43.715 m of pipe
  const pipe = mixingChain({ ...record, wantedDelayS: 60 }, series, { ...conditions, feedM3PerH: 20.6 });
  expect(pipe.pipeNeeded.value).toBeCloseTo(43.715, 3);
});

test("the demo's machine carries its source flag, and its checks follow class, load and ash", () => {
  const machine = demo.machine["machine-1"]!;
  expect(machine.note).toMatch(/common practice, no source: replace with your supplier's/);
  expect(machine.loadings.map(({ kgPerHPerM }) => kgPerHPerM)).toEqual([40, 50, 60]);
  expect(machine).toMatchObject({
    feedLowPct: 0.5,
    feedHighPct: 5,
    solidsThresholdPct: 2,
    inorganicLowPct: 40,
    inorganicHighPct: 60,
  });
  const usual = plantChain(demo, "series-1", { a: 5.2, b: null }).cases[1]!;
  const sample = sampleChain(demo, "sample-1");
  const lines = machineChain(machine, usual.feed, sample);
  expect(lines.map(({ check }) => check.state)).toEqual(Array.from({ length: 5 }, () => "within"));
  expect(lines[0]!.figure.value).toBeCloseTo(usual.load.value! / 10, 10);
  expect(lines.at(-1)!.figure.value).toBeCloseTo(100 - sample.volatileSolids.value!, 10);
  const unpicked = machineChain({ ...machine, loadingClass: "" }, usual.feed, sample)[0]!;
  expect(unpicked.figure).toMatchObject({
    value: null,
    missing: expect.stringMatching(/loading for this class/) as string,
  });
  const blank = apply(demo, { do: "add", kind: "machine", record: { id: "m-2", label: "New" } }).machine[
    "m-2"
  ]!;
  expect(machineChain(blank, usual.feed, sample).every(({ check }) => check.state === "missing")).toBe(true);
});
