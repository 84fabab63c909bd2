import type { plantMethodWords } from "../words/plant-methods.ts";
import type { MethodEntry } from "./method.ts";

const worked = "test/unit/plant/worked.test.ts";
const machine = "test/unit/plant/machine.test.ts";
const runs = "test/unit/plant/runs.test.ts";
const chain = "test/unit/plant/chain.test.ts";
const monteCarlo = "test/property/plant-monte-carlo.test.ts";

/** From the approved dose to pump settings, and back from plant runs. */
export const plantMethods = [
  {
    id: "rates",
    code: ["src/plant/rates.ts", "src/study/derive/plant.ts"],
    checks: [
      { file: worked, asserts: "every rate of one polymer, of two, and of a dry product by mass" },
      { file: "test/property/plant.test.ts", asserts: "dose to rate to dose, in either unit system" },
      { file: monteCarlo, asserts: "the load's propagated uncertainty against simulation" },
    ],
  },
  {
    id: "feedFlow",
    code: ["src/plant/feed.ts", "src/study/derive/plant-feed.ts"],
    checks: [{ file: machine, asserts: "each way by hand, and each gap named" }],
  },
  {
    id: "pumpLine",
    code: ["src/plant/pump-line.ts"],
    checks: [
      { file: worked, asserts: "line, setting and interval; out of range in words" },
      { file: monteCarlo, asserts: "scatter of an inverted setting and coverage of its interval" },
    ],
  },
  {
    id: "pumpCurve",
    code: ["src/plant/pump-model.ts", "src/plant/pump-shape.ts", "src/plant/stroke-speed.ts"],
    checks: [
      {
        file: machine,
        asserts: "a bent pump becomes a curve and inverts to its own flow; one that turns back is refused",
      },
    ],
  },
  {
    id: "pumpCheck",
    code: ["src/plant/metering.ts", "src/plant/pump-line.ts"],
    checks: [
      { file: worked, asserts: "steadiness ± 0.5099 %, repeatability and linearity" },
      { file: machine, asserts: "the figures against their limits; 9 : 1 needed, 5.97 : 1 proven" },
    ],
  },
  {
    id: "cylinder",
    code: ["src/plant/cylinder.ts"],
    checks: [
      { file: monteCarlo, asserts: "the band holds 95 % of simulated draw-downs" },
      { file: worked, asserts: "it holds the expected volume and widens with a shorter time" },
    ],
  },
  {
    id: "makeDownUnit",
    code: ["src/plant/make-down-unit.ts", "src/study/derive/plant-unit.ts"],
    checks: [
      { file: machine, asserts: "ageing volume, batch against draw, use, containers and days of stock" },
      { file: chain, asserts: "the unit says in words whether it keeps up" },
    ],
  },
  {
    id: "outlet",
    code: ["src/plant/make-down-unit.ts", "src/study/derive/plant-unit.ts"],
    checks: [
      { file: machine, asserts: "wet cake with retained polymer, the return load; 45 kg on 5 t is 9.0 kg/t" },
    ],
  },
  {
    id: "loading",
    code: ["src/plant/load.ts", "src/plant/machine-check.ts"],
    checks: [
      {
        file: machine,
        asserts: "501.5 kg/h needs 12.538 m at 40 and 8.3583 m at 60; a new machine is blank",
      },
    ],
  },
  {
    id: "solidsDrift",
    code: ["src/plant/load.ts"],
    checks: [{ file: worked, asserts: "five drifted doses, and a pipe's length" }],
  },
  {
    id: "runDose",
    code: ["src/plant/run-dose.ts", "src/study/derive/plant-runs.ts"],
    checks: [
      {
        file: runs,
        asserts: "77.2846 mL/min on 501.5 kg/h is 4.000 kg/t; which way counts; agreement at 5 %",
      },
      { file: monteCarlo, asserts: "what a caught flow means as a dose, against simulation" },
    ],
  },
  {
    id: "factor",
    code: ["src/plant/bench-factor.ts", "src/study/derive/plant-factor.ts"],
    checks: [
      { file: runs, asserts: "5.6 / 4.9 is 1.1429; doses of 2 and 1/2 times the bench cancel; three trials" },
      { file: monteCarlo, asserts: "the next dose's range covers about 95 times in 100" },
    ],
  },
  {
    id: "drift",
    code: ["src/plant/control-chart.ts"],
    checks: [{ file: runs, asserts: "limits by hand; a point outside; eight on one side; too few runs" }],
  },
  {
    id: "stepTest",
    code: ["src/plant/step-test.ts", "src/plant/paired.ts"],
    checks: [
      { file: runs, asserts: "levels, order and waiting; a paired comparison recomputed independently" },
    ],
  },
  {
    id: "age",
    code: ["src/study/derive/quality/sample-checks.ts"],
    checks: [
      {
        file: "test/unit/study/quality.test.ts",
        asserts: "an ageing and then an old sample, by the last jar once all are read",
      },
    ],
  },
] as const satisfies readonly MethodEntry<keyof typeof plantMethodWords>[];
