import { expect, test } from "vitest";
import type { Command } from "../../../src/study/commands.ts";
import { jarUncertainty } from "../../../src/study/derive/jar-uncertainty.ts";
import { seriesChain } from "../../../src/study/derive/jars.ts";
import { jarMeasurements, pressPressure } from "../../../src/study/derive/measurements.ts";
import { analyseRows } from "../../../src/study/derive/points.ts";
import type { StudyState } from "../../../src/study/schema/records.ts";
import { apply, demoState } from "./state.ts";

// The figures are the project's trade table, section 4, each recomputed independently; here they go through the
// study's own records, as the screens show them.
const demo = demoState("2026-03-01T12:00:00.000Z");
const run = (commands: Command[], state: StudyState = demo) => commands.reduce(apply, state);
const read = (id: string, result: object): Command => ({
  do: "add",
  kind: "reading",
  record: { id, jarId: "jar-x", result },
});
const jar: Command = {
  do: "add",
  kind: "jar",
  record: { id: "jar-x", seriesId: "series-1", label: "x", order: 40, syringeAMl: 25, blankWaterMl: 0 },
};
const results = (state: StudyState) => {
  const chain = seriesChain(state, "series-1");
  const found = chain.jars.find((one) => one.jar.id === "jar-x")!;
  return new Map(jarMeasurements(state, chain, found).map(({ name, figure }) => [name, figure]));
};
const close = (state: StudyState, name: string, value: number, digits: number) =>
  expect(results(state).get(name)?.value, name).toBeCloseTo(value, digits);

test("drained share of the jar's liquid: 196 of 525 mL is 37.33 %", () => {
  close(run([jar, read("r1", { kind: "drained", ml: 196, atS: 60 })]), "drained at 60 s", 37.33, 2);
});

test("CST: mean, above water per g/L, and at 20 °C", () => {
  const commands: Command[] = [
    jar,
    {
      do: "set",
      kind: "sample",
      id: "sample-1",
      fields: { suspendedSolidsPct: 2.5, densityKgPerL: 1, temperatureC: 15 },
    },
    ...[14, 14.6, 13.9].map((seconds, i) => read(`r${i}`, { kind: "cst", seconds })),
  ];
  const state = run(commands);
  close(state, "CST, mean of 3, 18 mm reservoir", 14.167, 3);
  const single = run([...commands.slice(0, 2), read("r9", { kind: "cst", seconds: 14.2 })]);
  close(single, "CST above water, per g/L", 0.248, 6);
  close(run([...commands.slice(0, 2), read("r9", { kind: "cst", seconds: 18 })]), "CST at 20 °C", 15.85, 2);
  const blind = run([{ do: "set", kind: "series", id: "series-1", fields: { cstWaterS: null } }], single);
  expect(results(blind).get("CST above water, per g/L")?.missing).toBe(
    "enter the CST of water on the same paper",
  );
});

test("specific resistance from volumes and times, and its point on the dose curve", () => {
  const points = [20, 40, 60, 80, 100, 120].map((volumeMl, i) => ({
    volumeMl,
    seconds: [6.6, 16.4, 29.5, 45.8, 65.2, 87.9][i]!,
  }));
  const test41 = {
    kind: "srf",
    points,
    firstUsed: 1,
    lastUsed: 6,
    diameterMm: 70,
    pressureKPa: 49,
    temperatureC: 20,
    cakeKgPerM3: 25,
  };
  const state = run([jar, read("r1", test41)]);
  close(state, "specific resistance", 0.2335, 4);
  const row = analyseRows(seriesChain(state, "series-1")).rows.find((one) => one.jar === "jar-x")!;
  expect(row.readings.srf_tm_per_kg!.value).toBeCloseTo(0.233467, 5);
  // another straight part is another answer
  const part = run([jar, read("r1", { ...test41, firstUsed: 3, lastUsed: 5 })]);
  expect(results(part).get("specific resistance")!.value).not.toBeCloseTo(0.2335, 4);
});

test("time to filter, broken floc, zeta, press", () => {
  const state = run([
    jar,
    { do: "set", kind: "sample", id: "sample-1", fields: { suspendedSolidsPct: 2.5, densityKgPerL: 1 } },
    read("r1", { kind: "filter-time", seconds: 95 }),
    read("r2", { kind: "re-shear", firstMm: 4, brokenMm: 2, regrownMm: 3 }),
    read("r3", { kind: "zeta", mV: -12.5 }),
  ]);
  close(state, "time to filter, per g/L", 3.8, 6);
  close(state, "floc strength", 0.5, 9);
  close(state, "floc recovery", 0.5, 9);
  close(state, "zeta potential", -12.5, 9);
  const series = run([
    {
      do: "set",
      kind: "series",
      id: "series-1",
      fields: { protocol: { ...demo.series["series-1"]!.protocol, pressForceN: 300, pistonDiameterMm: 50 } },
    },
  ]).series["series-1"]!;
  expect(pressPressure(series)!.value).toBeCloseTo(152.79, 2);
});

test("mixing by the stirrer as it was run, and by pouring", () => {
  const protocol = {
    ...demo.series["series-1"]!.protocol,
    fastRpm: 100,
    fastS: 30,
    slowRpm: null,
    stirrerDiameterMm: 76.2,
    stirrerPowerNumber: 1.6,
    pours: 10,
    pourHeightM: 0.15,
    poursS: 15,
  };
  const commands: Command[] = [
    { do: "set", kind: "series", id: "series-1", fields: { protocol, sampleVolumeMl: 2000 } },
    { do: "set", kind: "sample", id: "sample-1", fields: { temperatureC: 20, densityKgPerL: 0.998204 } },
    { do: "add", kind: "jar", record: { ...(jar as { record: object }).record, syringeAMl: 0 } as never },
  ];
  const state = run(commands);
  close(state, "G of fast mixing", 97.38, 1);
  expect(results(state).get("Gt of fast mixing")!.value! / 2921).toBeCloseTo(1, 3);
  close(state, "G of pouring", 988.6, 1);
  expect(results(state).get("Gt of pouring")!.value! / 14829).toBeCloseTo(1, 4);
  // what the timer kept counts, not the plan
  const timed = run([{ do: "set", kind: "jar", id: "jar-x", fields: { asMixed: { fastS: 60 } } }], state);
  expect(results(timed).get("Gt of fast mixing")!.value! / 5843).toBeCloseTo(1, 3);
});

test("a dish still in the oven feeds no curve, and does once it is dry (worked 3.1, cake)", () => {
  const wet = run([jar, read("r1", { kind: "cake-dish", tareG: 8.215, wetG: 63.015, dryG: null })]);
  const cake = (state: StudyState) =>
    seriesChain(state, "series-1").jars.find((one) => one.jar.id === "jar-x")!.responses.cake_ts_pct;
  expect(cake(wet)).toBeUndefined();
  const dry = run(
    [
      {
        do: "set",
        kind: "reading",
        id: "r1",
        fields: { result: { kind: "cake-dish", tareG: 8.215, wetG: 63.015, dryG: 19.8412 } },
      },
    ],
    wet,
  );
  expect(cake(dry)![0]!.value).toBeCloseTo(21.2157, 4);
});

test("dose uncertainty of one jar, split as in worked 2.2", () => {
  // the demo's own masses and tolerances: neat 2.381 g (u 0.03), active 42 +- 1, whole 500 +- 1, syringe +- 0.5
  const chain = seriesChain(demo, "series-1");
  const one = jarUncertainty(demo, {
    series: demo.series["series-1"]!,
    sample: chain.sample,
    stock: chain.stockA!,
    syringeMl: 25,
    sampleVolumeMl: 500,
  })!;
  const neat = 0.03 / 2.381;
  const active = 1 / Math.sqrt(3) / 42;
  const whole = 1 / Math.sqrt(3) / 500;
  const solids = chain.sample.totalSolidsStandard! / chain.sample.totalSolids.value!;
  expect(one.shared).toBeCloseTo(Math.hypot(neat, active, whole, solids), 10);
  expect(one.perJar).toBeCloseTo(Math.hypot(0.5 / Math.sqrt(3) / 25, 5 / Math.sqrt(3) / 500), 10);
});
