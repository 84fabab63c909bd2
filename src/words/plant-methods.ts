import { area } from "./language.ts";

/** From the approved dose to pump settings, and back from plant runs: what each formula is for, the formula in plain signs, and where it comes from. */
export const plantMethodWords = area("plantMethods", {
  rates: {
    what: "Dry-solids load and rates",
    formula:
      "DS = 1000 Q rho TS; active = DS D; neat = active / active share; solution = active / strength; make-up water = solution - neat; carrier to a lower strength = active / that strength - solution; water at 1.000 kg/L",
    source:
      "mass balance, recomputed independently (20 m³/h at 2.5 % and 4 kg/t gives 501.5 kg/h and 77.28 mL/min)",
  },
  feedFlow: {
    what: "Feed flow",
    formula:
      "as metered; volume over time; area x change of level over time; supply less return; relative uncertainties in quadrature",
    source: "volume balance",
  },
  pumpLine: {
    what: "Pump line and setting",
    formula:
      "flow = a + b x setting by least squares, never through the origin; setting = (flow - a) / b with standard error (s/b) sqrt(1 + 1/n + (setting - mean)^2 / Sxx); nothing outside the settings drawn down",
    source: "standard calibration statistics, recomputed independently (77.2846 mL/min gives 92.05 % ± 0.65)",
  },
  pumpCurve: {
    what: "Pump curve, weights, stroke times speed",
    formula:
      "a second-degree curve where the line fails its lack of fit, kept only where it rises over the whole range; weights 1 / flow^2 only if asked; stroke at the held speed that gives as much: zero + (stroke - zero) x speed / held speed",
    source: "standard statistics; stroke times speed recomputed independently (50.870 L/h)",
  },
  pumpCheck: {
    what: "Repeatability, linearity and turndown of a pump",
    formula:
      "largest range at one setting, and largest distance of a mean from the line, over the flow at the top setting; highest over lowest flow",
    source:
      "API 675-style check: that standard covers reciprocating pumps only, and the reading of its terms is our own",
  },
  cylinder: {
    what: "Cylinder band",
    formula:
      "95 % of one draw-down: pump scatter and line error, cylinder and stopwatch (half-width / sqrt(3)) in quadrature, with Student's factor at the effective degrees of freedom",
    source:
      "JCGM 100 for the sum (clause from memory); ± 1 mL and ± 0.3 s, unless the crew enters its own, are common practice, no source",
  },
  makeDownUnit: {
    what: "Make-down unit, use and stock",
    formula:
      "ageing volume = solution x ageing time x (1 + dead volume); a batch lasts its volume over the solution; use = neat x hours x days; stock days = stock over daily use",
    source: "mass and volume balance, recomputed independently",
  },
  outlet: {
    what: "Wet cake, what returns, polymer on land",
    formula:
      "wet cake = DS R (1 + D / 1000 x retained share) / C; returned TSS = DS (1 - R); largest dose = polymer allowed per hectare / dry solids spread per hectare",
    source: "mass balance; local consent decides on land",
  },
  loading: {
    what: "Machine loading",
    formula: "dry solids per hour / effective width, against the owner's own limits",
    source:
      "limits as entered; the demo's 40, 50 and 60 kg/h·m are starting values for one slow class of machine, common practice, no source",
  },
  solidsDrift: {
    what: "Dose when the feed's solids move, pipe for a delay",
    formula: "dose now = dose set x TS set at / TS now; pipe length = flow x delay / cross-section",
    source: "mass and volume balance, recomputed independently",
  },
  runDose: {
    what: "Dose of a plant run",
    formula:
      "active polymer over dry solids, three ways: caught in the cylinder, the container's loss of mass, the pump line at the setting; further apart than 5 % a measurement is wrong",
    source: "mass balance; the 5 % is common practice, no source",
  },
  factor: {
    what: "Bench-to-plant factor",
    formula:
      "geometric mean of plant dose over bench dose for one machine, sludge and product; range t(n - 1) s / sqrt(n) in logs; the next dose takes the spread of one further trial",
    source: "standard statistics; usually 0.8 to 1.5 (common practice, no source)",
  },
  drift: {
    what: "Drift watch",
    formula:
      "routine runs on a chart of individuals: mean ± 3 x mean moving range / 1.128; beyond its limits, or eight in a row on one side of the middle",
    source: "Shewhart's charts, from memory",
  },
  stepTest: {
    what: "Step test and paired comparison",
    formula:
      "levels around factor x bench dose; sampled after three residence times; pairs: mean difference ± t(n - 1) s / sqrt(n), two-sided p",
    source: "standard statistics; the waiting and the size of a step are common practice, no source",
  },
  age: {
    what: "Age of a sample",
    formula: "past a day it has changed: take a fresh one",
    source: "common practice, no source",
  },
});
