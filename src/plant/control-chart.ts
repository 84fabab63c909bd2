import { bad, good, type Outcome } from "../outcome.ts";
import { plantFormulaWords } from "../words/plant-formulas.ts";

/** Mean moving range of two over standard deviation for normal scatter, exactly 2 / sqrt(pi). */
const d2 = 2 / Math.sqrt(Math.PI);
const fewestForLimits = 6;
const runOneSide = 8;

export interface ControlPoint {
  value: number;
  /** on which side of the limits, or part of a long run on one side of the middle */
  signal: "above" | "below" | "run" | null;
}

export interface ControlChart {
  middle: number;
  low: number;
  high: number;
  /** mean moving range of the points that made the limits */
  movingRange: number;
  points: ControlPoint[];
  /** the latest point's own signal */
  latest: ControlPoint["signal"];
}

/**
 * Individuals and moving range: limits at the middle +- 3 (mean moving range / d2) from the first `baseline` points, in
 * order of time (all before the last where not given). Signals: a point outside, or eight in a row on one side.
 * Source: Shewhart's individuals chart, from memory; d2 computed.
 */
export function controlChart(values: number[], baseline?: number): Outcome<ControlChart> {
  const used = Math.max(fewestForLimits, Math.min(values.length, baseline ?? values.length - 1));
  if (values.length < fewestForLimits + 1)
    return bad(plantFormulaWords.runs.fewRuns(fewestForLimits + 1, values.length));
  const base = values.slice(0, used);
  const middle = base.reduce((sum, value) => sum + value, 0) / base.length;
  const movingRange =
    base.slice(1).reduce((sum, value, i) => sum + Math.abs(value - base[i]!), 0) / (base.length - 1);
  if (!(movingRange > 0)) return bad(plantFormulaWords.runs.noScatter);
  const reach = (3 * movingRange) / d2;
  const low = middle - reach;
  const high = middle + reach;
  let side = 0;
  let length = 0;
  const points = values.map((value): ControlPoint => {
    const now = Math.sign(value - middle);
    length = now !== 0 && now === side ? length + 1 : 1;
    side = now;
    if (value > high) return { value, signal: "above" };
    if (value < low) return { value, signal: "below" };
    return { value, signal: length >= runOneSide && side !== 0 ? "run" : null };
  });
  return good({ middle, low, high, movingRange, points, latest: points.at(-1)!.signal });
}
