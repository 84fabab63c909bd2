import { bad, good, type Outcome } from "../outcome.ts";
import { fisherTail, tFactor } from "../units/student.ts";
import { shapeError, shapeFlow, shapeSetting, shapeSlope, type PumpShape } from "./pump-shape.ts";
import { plantFormulaWords } from "../words/plant-formulas.ts";

/** One draw-down: the pump's setting and the flow it gave (mL/min, or g/min for a feeder). */
export interface Draw {
  setting: number;
  flow: number;
}

/** Flow against setting as a straight line with its intercept kept: a pump hardly ever runs through the origin. */
export interface PumpLine {
  intercept: number;
  slope: number;
  /** null for two draws: nothing is left to judge scatter by */
  residualSd: number | null;
  n: number;
  meanSetting: number;
  sxx: number;
  tested: { low: number; high: number };
  testedFlow: { low: number; high: number };
  /** a curve, or a weighted line: it then holds instead of intercept and slope, which stay the plain line's */
  shape?: PumpShape;
}

export interface LackOfFit {
  f: number;
  df1: number;
  df2: number;
  p: number;
}

/** Plain least squares over all draws. Needs two settings; refuses a flow that does not rise with the setting. */
export function fitPumpLine(draws: Draw[]): Outcome<PumpLine> {
  const n = draws.length;
  if (n < 2) return bad(plantFormulaWords.pump.oneDraw);
  const meanSetting = draws.reduce((sum, draw) => sum + draw.setting, 0) / n;
  const meanFlow = draws.reduce((sum, draw) => sum + draw.flow, 0) / n;
  const sxx = draws.reduce((sum, draw) => sum + (draw.setting - meanSetting) ** 2, 0);
  if (!(sxx > 0)) return bad(plantFormulaWords.pump.oneSetting);
  const slope =
    draws.reduce((sum, draw) => sum + (draw.setting - meanSetting) * (draw.flow - meanFlow), 0) / sxx;
  if (!(slope > 0)) return bad(plantFormulaWords.pump.notRising);
  const intercept = meanFlow - slope * meanSetting;
  const rss = draws.reduce((sum, draw) => sum + (draw.flow - intercept - slope * draw.setting) ** 2, 0);
  const settings = draws.map((draw) => draw.setting);
  const low = Math.min(...settings);
  const high = Math.max(...settings);
  return good({
    intercept,
    slope,
    residualSd: n > 2 ? Math.sqrt(rss / (n - 2)) : null,
    n,
    meanSetting,
    sxx,
    tested: { low, high },
    testedFlow: { low: intercept + slope * low, high: intercept + slope * high },
  });
}

/** The pump's setting for a flow. Outside the settings tested there is no number, only the side it lies on. */
export interface PumpSetting {
  status: "ok" | "above" | "below";
  pct: number | null;
  /** 95 % from the pump line alone; null under three draws */
  low: number | null;
  high: number | null;
}

/**
 * Inverts the line: s = (q - alpha) / beta, with se(s) = (s_y / beta) sqrt(1 + 1/n + (s - mean)^2 / Sxx); a curve the
 * same way on its rising branch. Only between the lowest and the highest setting proven.
 */
export function settingFor(line: PumpLine, flow: number): PumpSetting {
  const refused = (status: "above" | "below"): PumpSetting => ({ status, pct: null, low: null, high: null });
  let setting = (flow - line.intercept) / line.slope;
  if (line.shape) {
    const slack = 1e-9 * (line.testedFlow.high - line.testedFlow.low);
    if (flow > line.testedFlow.high + slack) return refused("above");
    if (flow < line.testedFlow.low - slack) return refused("below");
    setting = shapeSetting(line.shape, flow, line.tested.low, line.tested.high);
  } else {
    const slack = 1e-9 * (line.tested.high - line.tested.low);
    if (setting > line.tested.high + slack) return refused("above");
    if (setting < line.tested.low - slack) return refused("below");
  }
  const error = settingError(line, setting);
  if (error === null) return { status: "ok", pct: setting, low: null, high: null };
  const half = tFactor(freedomOf(line)) * error;
  return { status: "ok", pct: setting, low: setting - half, high: setting + half };
}

/** Degrees of freedom of a line's (or curve's) scatter. */
export function freedomOf(line: PumpLine): number {
  return line.shape ? line.shape.df : line.n - 2;
}

/** Standard error of one draw-down at a setting, in the flow's unit: scatter and the line's own error. null under three draws. */
export function drawError(line: PumpLine, setting: number): number | null {
  if (line.residualSd === null) return null;
  if (line.shape) return shapeError(line.shape, line.residualSd, setting);
  return line.residualSd * Math.sqrt(1 + 1 / line.n + (setting - line.meanSetting) ** 2 / line.sxx);
}

/** Standard error of an inverted setting, null under three draws. */
export function settingError(line: PumpLine, setting: number): number | null {
  const error = drawError(line, setting);
  if (error === null) return null;
  return error / (line.shape ? shapeSlope(line.shape, setting) : line.slope);
}

/** Flow at a setting with the 95 % prediction half-width of one draw-down there (null under three draws). */
export function flowAt(line: PumpLine, setting: number): { flow: number; halfWidth: number | null } {
  const flow = line.shape ? shapeFlow(line.shape, setting) : line.intercept + line.slope * setting;
  const error = drawError(line, setting);
  return { flow, halfWidth: error === null ? null : tFactor(freedomOf(line)) * error };
}

export interface PumpCheck {
  line: { intercept: number; slope: number; residualSd: number | null };
  lackOfFit: LackOfFit | null;
  /** largest range at one setting over the flow at the top setting, percent; null without repeats */
  repeatabilityPct: number | null;
  /** largest distance of a mean from the line over the flow at the top setting, percent */
  linearityPct: number;
  /** highest over lowest tested mean flow */
  turndown: number;
}

/** The draws at each setting with their mean. */
export function bySetting(draws: Draw[]): { setting: number; flows: number[]; mean: number }[] {
  const groups = new Map<number, number[]>();
  for (const draw of draws) groups.set(draw.setting, [...(groups.get(draw.setting) ?? []), draw.flow]);
  return [...groups].map(([setting, flows]) => ({
    setting,
    flows,
    mean: flows.reduce((sum, flow) => sum + flow, 0) / flows.length,
  }));
}

/** Lack of fit of a shape with so many parameters against the scatter of repeats; null where it cannot be judged. */
export function lackOfFitOf(
  draws: Draw[],
  predicted: (setting: number) => number,
  parameters: number,
  weight: (setting: number) => number = () => 1,
): LackOfFit | null {
  const means = bySetting(draws);
  const pureSs = means.reduce(
    (sum, group) =>
      sum + weight(group.setting) * group.flows.reduce((ss, flow) => ss + (flow - group.mean) ** 2, 0),
    0,
  );
  const pureDf = draws.length - means.length;
  const lofDf = means.length - parameters;
  if (!(pureDf > 0 && lofDf > 0 && pureSs > 0)) return null;
  const rss = draws.reduce(
    (sum, draw) => sum + weight(draw.setting) * (draw.flow - predicted(draw.setting)) ** 2,
    0,
  );
  const f = Math.max(0, rss - pureSs) / lofDf / (pureSs / pureDf);
  return { f, df1: lofDf, df2: pureDf, p: fisherTail(f, lofDf, pureDf) };
}

/** The figures of a draw-down calibration (API 675-style for a metering pump; the reading of its terms is our own). */
export function checkPump(draws: Draw[]): Outcome<PumpCheck> {
  const fitted = fitPumpLine(draws);
  if (!fitted.ok) return fitted;
  const line = fitted.value;
  const means = bySetting(draws);
  const top = means.reduce((best, group) => (group.setting > best.setting ? group : best)).mean;
  const predicted = (setting: number) => line.intercept + line.slope * setting;
  const repeated = means.filter((group) => group.flows.length > 1);
  const lackOfFit = lackOfFitOf(draws, predicted, 2);
  const flows = means.map((group) => group.mean);
  return good({
    line: { intercept: line.intercept, slope: line.slope, residualSd: line.residualSd },
    lackOfFit,
    repeatabilityPct:
      repeated.length === 0
        ? null
        : Math.max(
            ...repeated.map((group) => (100 * (Math.max(...group.flows) - Math.min(...group.flows))) / top),
          ),
    linearityPct: Math.max(
      ...means.map((group) => (100 * Math.abs(group.mean - predicted(group.setting))) / top),
    ),
    turndown: Math.max(...flows) / Math.min(...flows),
  });
}

/** Steadiness of repeated draws at one setting: half the range over the mean, percent. */
export function steadinessPct(flows: number[]): number {
  const mean = flows.reduce((sum, flow) => sum + flow, 0) / flows.length;
  return (50 * (Math.max(...flows) - Math.min(...flows))) / mean;
}
