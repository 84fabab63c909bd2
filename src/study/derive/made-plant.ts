import type { PumpLine } from "../../plant/pump-line.ts";
import type { Made, MadeInput } from "./figure.ts";

const calibration = "pump line by least squares; trade formulas, section 7";

function lineInputs(line: PumpLine, unit: string): MadeInput[] {
  return [
    { name: "line, intercept", value: line.intercept, unit },
    { name: "line, slope", value: line.slope, unit: `${unit} a step of the setting` },
    { name: "lowest setting drawn down", value: line.tested.low, unit: "" },
    { name: "highest setting drawn down", value: line.tested.high, unit: "" },
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
    formula:
      "load = feed flow x 1000 x density x TS; pump flow = flow of the case x load / load of the case; setting = (flow - intercept) / slope on a straight line; nothing outside the settings drawn down",
    inputs: [
      { name: "total solids of this row", value: input.totalSolidsPct, unit: "%" },
      { name: "density of the feed", value: input.densityKgPerL, unit: "kg/L" },
      { name: "pump flow of the case", value: input.flowOfCase, unit: input.flowUnit },
      { name: "dry solids of the case", value: input.loadOfCase, unit: "kg/h" },
      ...lineInputs(input.line, input.flowUnit),
    ],
    source: calibration,
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
    formula:
      "dose = factor x bench dose x (1 + n x step); setting = (flow for that dose - intercept) / slope",
    inputs: [
      { name: "bench dose", value: input.benchDoseKgPerT, unit: "kg/t" },
      { name: "factor", value: input.factor ?? "none known, taken as 1", unit: "" },
      { name: "step", value: input.stepPct, unit: "%" },
      { name: "dose of this step", value: input.doseKgPerT, unit: "kg/t" },
      ...(input.line ? lineInputs(input.line, input.flowUnit) : []),
    ],
    source: `plan of the step test: trade formulas, section 8; ${calibration}`,
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
    formula: "flow = caught / seconds x 60; off = flow - flow of the line at this setting",
    inputs: [
      { name: "caught", value: input.amount, unit: input.unit },
      { name: "seconds", value: input.seconds, unit: "s" },
      { name: "flow of the line", value: input.onLine, unit: `${input.unit}/min` },
    ],
    source: calibration,
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
    formula:
      "flow at the setting x seconds / 60; band: one draw-down's scatter and the line's error, the reading and the stopwatch in quadrature, Student's 95 %",
    inputs: [
      { name: "seconds", value: input.seconds, unit: "s" },
      { name: "scatter of one draw-down", value: input.line?.residualSd ?? null, unit: `${input.unit}/min` },
      { name: "read within ±", value: input.readingLimit, unit: input.unit },
      { name: "stopwatch ±", value: input.watchLimitS, unit: "s" },
    ],
    source:
      "trade formulas, section 7; JCGM 100, annex G.4; reading limits: common practice until you enter your own",
  };
}
