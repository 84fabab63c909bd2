import { sourceOf } from "../../methods/methods.ts";
import type { PresentRun } from "../../plant/present-dose.ts";
import type { PumpLine } from "../../plant/pump-line.ts";
import { madeChoiceWords } from "../../words/made-choice.ts";
import { plantInputWords } from "../../words/plant-inputs.ts";
import { plantMadeWords } from "../../words/plant-made.ts";
import type { Made, MadeInput } from "./figure.ts";

function lineInputs(line: PumpLine, unit: string): MadeInput[] {
  return [
    { name: plantMadeWords.intercept, value: line.intercept, unit },
    { name: plantMadeWords.slope, value: line.slope, unit: plantMadeWords.aStep(unit) },
    { name: plantMadeWords.lowest, value: line.tested.low, unit: "" },
    { name: plantMadeWords.highest, value: line.tested.high, unit: "" },
  ];
}

/** How a row of the table of settings was made. */
export function settingRowMade(input: {
  flowOfCase: number | null;
  loadOfCase: number | null;
  totalSolidsPct: number;
  densityKgPerL: number | null;
  line: PumpLine;
  flowUnit: string;
}): Made {
  return {
    formula: plantMadeWords.row.formula,
    inputs: [
      { name: plantMadeWords.row.totalSolids, value: input.totalSolidsPct, unit: "%" },
      { name: plantMadeWords.row.density, value: input.densityKgPerL, unit: "kg/L" },
      { name: plantMadeWords.row.pumpFlow, value: input.flowOfCase, unit: input.flowUnit },
      { name: plantMadeWords.row.drySolids, value: input.loadOfCase, unit: "kg/h" },
      ...lineInputs(input.line, input.flowUnit),
    ],
    source: sourceOf("pumpLine"),
  };
}

/** How the doses were made that a pump left as it is gives while the solids drift. */
export function driftMade(doseKgPerT: number, setAtPct: number): Made {
  return {
    formula: plantMadeWords.drift.formula,
    inputs: [
      { name: plantMadeWords.step.dose, value: doseKgPerT, unit: "kg/t" },
      { name: plantMadeWords.drift.setAt, value: setAtPct, unit: "%" },
    ],
    source: sourceOf("solidsDrift"),
  };
}

/** How the disposal of a year was made. */
export function disposalMade(input: {
  wetCakeKgPerH: number | null;
  hoursPerDay: number | null;
  daysPerYear: number | null;
  pricePerWetT: number | null;
  currency: string;
}): Made {
  return {
    formula: plantMadeWords.disposal.formula,
    inputs: [
      { name: plantMadeWords.disposal.wetCake, value: input.wetCakeKgPerH, unit: "kg/h" },
      { name: plantInputWords.hoursPerDay, value: input.hoursPerDay, unit: "h" },
      { name: plantInputWords.daysPerYear, value: input.daysPerYear, unit: "d" },
      { name: plantMadeWords.disposal.price, value: input.pricePerWetT, unit: `${input.currency}/t` },
    ],
    source: sourceOf("cost"),
  };
}

/** How a dose and its setting in a step test were made. */
export function stepMade(input: {
  benchDoseKgPerT: number | null;
  factor: number | null;
  stepPct: number;
  doseKgPerT: number;
  line: PumpLine | null;
  flowUnit: string;
}): Made {
  return {
    formula: plantMadeWords.step.formula,
    inputs: [
      { name: plantMadeWords.step.benchDose, value: input.benchDoseKgPerT, unit: "kg/t" },
      { name: plantMadeWords.step.factor, value: input.factor ?? plantMadeWords.step.noFactor, unit: "" },
      { name: plantMadeWords.step.step, value: input.stepPct, unit: "%" },
      { name: plantMadeWords.step.dose, value: input.doseKgPerT, unit: "kg/t" },
      ...(input.line ? lineInputs(input.line, input.flowUnit) : []),
    ],
    source: plantMadeWords.step.source(sourceOf("stepTest"), sourceOf("pumpLine")),
  };
}

/** How the plant's present dose was made from a pump's setting and the feed. */
export function presentMade(run: PresentRun, setting: number | null, settingUnit: string): Made {
  const names = madeChoiceWords.limitInputs;
  return {
    formula: madeChoiceWords.present,
    inputs: [
      { name: names.setting, value: setting, unit: settingUnit },
      { name: names.flow, value: run.flowMlPerMin, unit: "mL/min" },
      { name: names.flowDensity, value: run.flowDensityKgPerL, unit: "kg/L" },
      { name: names.active, value: run.activePct, unit: "%" },
      { name: names.feed, value: run.feedM3PerH, unit: "m³/h" },
      { name: names.density, value: run.densityKgPerL, unit: "kg/L" },
      { name: names.solids, value: run.totalSolidsPct, unit: "%" },
    ],
    source: sourceOf("runDose"),
  };
}

/** How the flow of a draw-down and its distance from the line were made. */
export function drawMade(input: {
  amount: number;
  seconds: number;
  onLine: number | null;
  unit: string;
}): Made {
  return {
    formula: plantMadeWords.draw.formula,
    inputs: [
      { name: plantMadeWords.draw.caught, value: input.amount, unit: input.unit },
      { name: plantMadeWords.draw.seconds, value: input.seconds, unit: "s" },
      { name: plantMadeWords.draw.flowOfLine, value: input.onLine, unit: `${input.unit}/min` },
    ],
    source: sourceOf("pumpLine"),
  };
}

/** How a cylinder band was made. */
export function bandMade(input: {
  seconds: number | null;
  line: PumpLine | null;
  readingLimit: number | null;
  watchLimitS: number | null;
  unit: string;
}): Made {
  return {
    formula: plantMadeWords.band.formula,
    inputs: [
      { name: plantMadeWords.draw.seconds, value: input.seconds, unit: "s" },
      { name: plantMadeWords.band.scatter, value: input.line?.residualSd ?? null, unit: `${input.unit}/min` },
      { name: plantMadeWords.band.readWithin, value: input.readingLimit, unit: input.unit },
      { name: plantMadeWords.band.stopwatch, value: input.watchLimitS, unit: "s" },
    ],
    source: sourceOf("cylinder"),
  };
}
