import type { FastShape } from "../fast-refit.ts";

/** The optimum or knee a parameter vector implies, before any question of uncertainty. */
export interface Turning {
  dose: number;
  kind: "minimum" | "maximum" | "knee";
  gainPct?: number;
}

export interface Range {
  low: number;
  high: number;
}

/**
 * The model with its optimum or knee held at one dose: linear in all but at most one remaining parameter.
 * `grid` lists values of that parameter to start from (empty where there is none left).
 */
export interface HeldFamily {
  basis(x: number, nonlinear: number): number[];
  grid: number[];
  /** the linear coefficients' signs this optimum's kind needs; a wrong sign means the bound itself: leave that column out */
  accept?(coefficients: number[]): boolean;
  /** used where `accept` refuses: the boundary family */
  boundary?(x: number): number[];
}

/**
 * A dose-response model as one plain object. Parameters are natural (positive ones too); some enter linearly.
 * value = sum over linear parameters of parameter times its basis column.
 */
export interface CurveModel {
  name: string;
  /** the shape's meaning for somebody who is not a statistician */
  readonly words: string;
  parameterNames: string[];
  /** indices of parameters that enter linearly, in the order of `basis` */
  linear: number[];
  /** indices of the others */
  nonlinear: number[];
  /** nonlinear parameters that must be above zero */
  positive: number[];
  /** fitted in ln dose: intervals are formed there too */
  logDose: boolean;
  definedAtZero: boolean;
  /** set for polynomials: fitted on a mapped dose and expanded afterwards */
  degree?: number;
  value(x: number, parameters: number[]): number;
  gradient(x: number, parameters: number[]): number[];
  /** columns of the linear parameters, given the nonlinear ones */
  basis(x: number, parameters: number[]): number[];
  /** values of the nonlinear parameters to start from, as full vectors with zeros elsewhere */
  grid(range: Range): number[][];
  turning(parameters: number[], range: Range): Turning | null;
  /** whether the shape speaks for jars without polymer too, so that its verdict comes from all jars */
  holdsAtZero?: boolean;
  /** where its sums of squares have a corner at every dose: the nonlinear parameter to search between the doses */
  corner?: number;
  /** whether it has run away to a limit where its parameters no longer mean anything; span is the doses' width */
  runAway?(parameters: number[], span: number): boolean;
  /** whether a valley is one that doses of this range can carry; every shape's is where this is absent */
  carriedBy?(parameters: number[], range: Range): boolean;
  /** a valley that may stand against a plainer one by its F test, though AICc charges it too much in small series */
  rivalValley?: boolean;
  /** the dose that reaches 90 % of the gain, for shapes that level off */
  ninetyDose?(parameters: number[]): number;
  /** a quick way through many refits of resampled responses; the result is the same without it */
  fast?: FastShape;
  /** for the profile interval; absent where the model has no optimum */
  held?(dose: number, estimate: number[], range: Range): HeldFamily;
}

/** The logarithmic ladder from low to high with this many rungs. */
export function ladder(low: number, high: number, rungs: number): number[] {
  const step = Math.log(high / low) / (rungs - 1);
  return Array.from({ length: rungs }, (_, i) => low * Math.exp(step * i));
}

/** Evenly spaced values from low to high. */
export function steps(low: number, high: number, count: number): number[] {
  return Array.from({ length: count }, (_, i) => low + ((high - low) * i) / (count - 1));
}
