import type { Method } from "./method.ts";

const worked = "test/unit/plant/worked.test.ts";
const machine = "test/unit/plant/machine.test.ts";
const runs = "test/unit/plant/runs.test.ts";
const chain = "test/unit/plant/chain.test.ts";
const monteCarlo = "test/property/plant-monte-carlo.test.ts";

/** From the approved dose to pump settings, and back from plant runs. */
export const plantMethods = [
  {
    id: "rates",
    what: "Dry-solids load and rates",
    formula:
      "DS = 1000 Q rho TS; active = DS D; neat = active / active share; solution = active / strength; make-up water = solution - neat; carrier to a lower strength = active / that strength - solution; water at 1.000 kg/L",
    source:
      "mass balance, recomputed independently (20 m³/h at 2.5 % and 4 kg/t gives 501.5 kg/h and 77.28 mL/min)",
    code: ["src/plant/rates.ts", "src/study/derive/plant.ts"],
    checks: [
      { file: worked, asserts: "every rate of one polymer, of two, and of a dry product by mass" },
      { file: "test/property/plant.test.ts", asserts: "dose to rate to dose, in either unit system" },
      { file: monteCarlo, asserts: "the load's propagated uncertainty against simulation" },
    ],
  },
  {
    id: "feedFlow",
    what: "Feed flow",
    formula:
      "as metered; volume over time; area x change of level over time; supply less return; relative uncertainties in quadrature",
    source: "volume balance",
    code: ["src/plant/feed.ts", "src/study/derive/plant-feed.ts"],
    checks: [{ file: machine, asserts: "each way by hand, and each gap named" }],
  },
  {
    id: "pumpLine",
    what: "Pump line and setting",
    formula:
      "flow = a + b x setting by least squares, never through the origin; setting = (flow - a) / b with standard error (s/b) sqrt(1 + 1/n + (setting - mean)^2 / Sxx); nothing outside the settings drawn down",
    source: "standard calibration statistics, recomputed independently (77.2846 mL/min gives 92.05 % ± 0.65)",
    code: ["src/plant/pump-line.ts"],
    checks: [
      { file: worked, asserts: "line, setting and interval; out of range in words" },
      { file: monteCarlo, asserts: "scatter of an inverted setting and coverage of its interval" },
    ],
  },
  {
    id: "pumpCurve",
    what: "Pump curve, weights, stroke times speed",
    formula:
      "a second-degree curve where the line fails its lack of fit, kept only where it rises over the whole range; weights 1 / flow^2 only if asked; stroke at the held speed that gives as much: zero + (stroke - zero) x speed / held speed",
    source: "standard statistics; stroke times speed recomputed independently (50.870 L/h)",
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
    what: "Repeatability, linearity and turndown of a pump",
    formula:
      "largest range at one setting, and largest distance of a mean from the line, over the flow at the top setting; highest over lowest flow",
    source:
      "API 675-style check: that standard covers reciprocating pumps only, and the reading of its terms is our own",
    code: ["src/plant/metering.ts", "src/plant/pump-line.ts"],
    checks: [
      { file: worked, asserts: "steadiness ± 0.5099 %, repeatability and linearity" },
      { file: machine, asserts: "the figures against their limits; 9 : 1 needed, 5.97 : 1 proven" },
    ],
  },
  {
    id: "cylinder",
    what: "Cylinder band",
    formula:
      "95 % of one draw-down: pump scatter and line error, cylinder and stopwatch (half-width / sqrt(3)) in quadrature, with Student's factor at the effective degrees of freedom",
    source:
      "JCGM 100 for the sum (clause from memory); ± 1 mL and ± 0.3 s, unless the crew enters its own, are common practice, no source",
    code: ["src/plant/cylinder.ts"],
    checks: [
      { file: monteCarlo, asserts: "the band holds 95 % of simulated draw-downs" },
      { file: worked, asserts: "it holds the expected volume and widens with a shorter time" },
    ],
  },
  {
    id: "makeDownUnit",
    what: "Make-down unit, use and stock",
    formula:
      "ageing volume = solution x ageing time x (1 + dead volume); a batch lasts its volume over the solution; use = neat x hours x days; stock days = stock over daily use",
    source: "mass and volume balance, recomputed independently",
    code: ["src/plant/make-down-unit.ts", "src/study/derive/plant-unit.ts"],
    checks: [
      { file: machine, asserts: "ageing volume, batch against draw, use, containers and days of stock" },
      { file: chain, asserts: "the unit says in words whether it keeps up" },
    ],
  },
  {
    id: "outlet",
    what: "Wet cake, what returns, polymer on land",
    formula:
      "wet cake = DS R (1 + D / 1000 x retained share) / C; returned TSS = DS (1 - R); largest dose = polymer allowed per hectare / dry solids spread per hectare",
    source: "mass balance; local consent decides on land",
    code: ["src/plant/make-down-unit.ts", "src/study/derive/plant-unit.ts"],
    checks: [
      { file: machine, asserts: "wet cake with retained polymer, the return load; 45 kg on 5 t is 9.0 kg/t" },
    ],
  },
  {
    id: "loading",
    what: "Machine loading",
    formula: "dry solids per hour / effective width, against the owner's own limits",
    source:
      "limits as entered; the demo's 40, 50 and 60 kg/h·m are starting values for one slow class of machine, common practice, no source",
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
    what: "Dose when the feed's solids move, pipe for a delay",
    formula: "dose now = dose set x TS set at / TS now; pipe length = flow x delay / cross-section",
    source: "mass and volume balance, recomputed independently",
    code: ["src/plant/load.ts"],
    checks: [{ file: worked, asserts: "five drifted doses, and a pipe's length" }],
  },
  {
    id: "runDose",
    what: "Dose of a plant run",
    formula:
      "active polymer over dry solids, three ways: caught in the cylinder, the container's loss of mass, the pump line at the setting; further apart than 5 % a measurement is wrong",
    source: "mass balance; the 5 % is common practice, no source",
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
    what: "Bench-to-plant factor",
    formula:
      "geometric mean of plant dose over bench dose for one machine, sludge and product; range t(n - 1) s / sqrt(n) in logs; the next dose takes the spread of one further trial",
    source: "standard statistics; usually 0.8 to 1.5 (common practice, no source)",
    code: ["src/plant/bench-factor.ts", "src/study/derive/plant-factor.ts"],
    checks: [
      { file: runs, asserts: "5.6 / 4.9 is 1.1429; doses of 2 and 1/2 times the bench cancel; three trials" },
      { file: monteCarlo, asserts: "the next dose's range covers about 95 times in 100" },
    ],
  },
  {
    id: "drift",
    what: "Drift watch",
    formula:
      "routine runs on a chart of individuals: mean ± 3 x mean moving range / 1.128; beyond its limits, or eight in a row on one side of the middle",
    source: "Shewhart's charts, from memory",
    code: ["src/plant/control-chart.ts"],
    checks: [{ file: runs, asserts: "limits by hand; a point outside; eight on one side; too few runs" }],
  },
  {
    id: "stepTest",
    what: "Step test and paired comparison",
    formula:
      "levels around factor x bench dose; sampled after three residence times; pairs: mean difference ± t(n - 1) s / sqrt(n), two-sided p",
    source: "standard statistics; the waiting and the size of a step are common practice, no source",
    code: ["src/plant/step-test.ts", "src/plant/paired.ts"],
    checks: [
      { file: runs, asserts: "levels, order and waiting; a paired comparison recomputed independently" },
    ],
  },
  {
    id: "age",
    what: "Age of a sample",
    formula: "past a day it has changed: take a fresh one",
    source: "common practice, no source",
    code: ["src/study/derive/quality/sample-checks.ts"],
    checks: [
      {
        file: "test/unit/study/quality.test.ts",
        asserts: "an ageing and then an old sample, by the last jar once all are read",
      },
    ],
  },
] as const satisfies readonly Method[];
