import type { PumpLine } from "../../plant/pump-line.ts";
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
    source: plantMadeWords.calibration,
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
    source: plantMadeWords.step.source(plantMadeWords.calibration),
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
    source: plantMadeWords.calibration,
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
    source: plantMadeWords.band.source,
  };
}
