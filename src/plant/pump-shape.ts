import { inverse, Matrix } from "ml-matrix";
import { bad, good, type Outcome } from "../outcome.ts";
import { plantFormulaWords } from "../words/plant-formulas.ts";

/** How flow bends with the setting, and how sure that is: powers of u = (setting - centre) / half. */
export interface PumpShape {
  /** two coefficients for a line, three for a curve */
  coefficients: number[];
  centre: number;
  half: number;
  /** inverse of the weighted normal equations */
  inverse: number[][];
  df: number;
  /** true where the scatter grows with the flow: residualSd is then a share of the flow */
  relative: boolean;
}

export interface Weighed {
  setting: number;
  flow: number;
  weight: number;
}

/** Weighted least squares of degree 1 or 2 over draws. Needs more distinct settings than the degree. */
export function fitShape(
  draws: Weighed[],
  degree: 1 | 2,
  relative: boolean,
): Outcome<{ shape: PumpShape; residualSd: number | null }> {
  const settings = draws.map((draw) => draw.setting);
  if (new Set(settings).size <= degree)
    return bad(degree === 2 ? plantFormulaWords.pump.fewForCurve : plantFormulaWords.pump.oneSetting);
  const low = Math.min(...settings);
  const high = Math.max(...settings);
  const centre = (low + high) / 2;
  const half = (high - low) / 2;
  const powers = (setting: number) =>
    Array.from({ length: degree + 1 }, (_, k) => ((setting - centre) / half) ** k);
  // Roots of the weights scale the rows, so that the normal equations are those of the weighted problem.
  const rows = new Matrix(
    draws.map((draw) => powers(draw.setting).map((value) => value * Math.sqrt(draw.weight))),
  );
  const values = Matrix.columnVector(draws.map((draw) => draw.flow * Math.sqrt(draw.weight)));
  const inverted = inverse(rows.transpose().mmul(rows));
  const solved = inverted.mmul(rows.transpose().mmul(values)).to1DArray();
  const df = draws.length - degree - 1;
  const shape: PumpShape = {
    coefficients: solved,
    centre,
    half,
    inverse: inverted.to2DArray(),
    df,
    relative,
  };
  const rss = draws.reduce(
    (sum, draw) => sum + draw.weight * (draw.flow - shapeFlow(shape, draw.setting)) ** 2,
    0,
  );
  return good({ shape, residualSd: df > 0 ? Math.sqrt(rss / df) : null });
}

/** Flow at a setting. */
export function shapeFlow(shape: PumpShape, setting: number): number {
  const u = (setting - shape.centre) / shape.half;
  return shape.coefficients.reduce((sum, value, k) => sum + value * u ** k, 0);
}

/** How much the flow rises for one unit of the setting. */
export function shapeSlope(shape: PumpShape, setting: number): number {
  const u = (setting - shape.centre) / shape.half;
  return (
    shape.coefficients.reduce((sum, value, k) => sum + k * value * u ** Math.max(0, k - 1), 0) / shape.half
  );
}

/** Standard error of one draw at a setting: its own scatter and the shape's. */
export function shapeError(shape: PumpShape, residualSd: number, setting: number): number {
  const u = (setting - shape.centre) / shape.half;
  const x = shape.coefficients.map((_, k) => u ** k);
  const leverage = x.reduce(
    (sum, left, i) => sum + x.reduce((inner, right, j) => inner + left * right * shape.inverse[i]![j]!, 0),
    0,
  );
  const own = shape.relative ? shapeFlow(shape, setting) ** 2 : 1;
  return residualSd * Math.sqrt(own + leverage);
}

/** The setting that gives a flow, between two settings where the flow rises all the way. */
export function shapeSetting(shape: PumpShape, flow: number, low: number, high: number): number {
  const [c0 = 0, c1 = 0, c2 = 0] = shape.coefficients;
  const root =
    Math.abs(c2) < 1e-12 * Math.abs(c1)
      ? (flow - c0) / c1
      : // the root on the rising branch, in the form that loses no digits for a weak bend
        (2 * (flow - c0)) / (c1 + Math.sqrt(Math.max(0, c1 * c1 + 4 * c2 * (flow - c0))));
  return Math.min(high, Math.max(low, shape.centre + shape.half * root));
}
