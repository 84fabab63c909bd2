/** The scale a response is fitted on: "log" is the natural logarithm, with values back-transformed (the median). */
export type Scale = "linear" | "log";

export type FitStatus = "converged" | "not-converged" | "too-few-points" | "singular";

/**
 * One jar's response, re-reads already averaged on the fit's scale.
 * `group` ties jars of one planned dose together for pure error; `row` is the 1-based line or place it came from.
 * `censored` "above" means the true value is at least y, "below" at most y. y is on the natural scale.
 */
export interface DosePoint {
  x: number;
  y: number;
  row: number;
  /** every row that was averaged into this point, where there is more than one */
  allRows?: number[];
  group?: string;
  block?: string;
  order?: number;
  censored?: "above" | "below";
}

export interface Parameter {
  name: string;
  value: number;
  /** null where the parameter was held fixed */
  se: number | null;
}

export interface FTest {
  f: number;
  df1: number;
  df2: number;
  p: number;
}

/** An interval for a dose: an open end is null; a complement means doses <= low and >= high are in; all has both null. */
export interface DoseInterval {
  method: "profile" | "fieller" | "delta" | "bootstrap";
  kind: "interval" | "one-sided" | "complement" | "all";
  low: number | null;
  high: number | null;
}

export interface Optimum {
  dose: number;
  /** the fitted response there, on the natural scale */
  value: number;
  kind: "minimum" | "maximum" | "knee";
  gainPct?: number;
  /** whether the dose lies within the tested range */
  inside: boolean;
  intervals: DoseInterval[];
}

/** The `fit` verb's answer, to the letter; it is plain data, so that it can cross a worker or a file unchanged. */
export interface FitReport {
  /** the model's name, as it has it in curve/models */
  model: string;
  n: number;
  rowsUsed: number[];
  scale: Scale;
  status: FitStatus;
  iterations: number;
  parameters: Parameter[];
  /** of the free parameters, in order */
  covariance: number[][];
  rss: number | null;
  df: number | null;
  residualSd: number | null;
  r2: number | null;
  aicc: number | null;
  aiccNatural: number | null;
  fModel: FTest | null;
  lackOfFit: FTest | null;
  optimum: Optimum | null;
  outliers: { row: number; t: number; cut: number }[];
  influence: { row: number; shift: number }[];
  warnings: string[];
}

/**
 * A fitted response as the choice of a dose sees it, whatever its model. All values are on the natural scale.
 * `low95`/`high95` are the one-sided 95 % bounds of the mean curve (each alone leaves 5 % on its side).
 */
export interface ResponseCurve {
  response: string;
  /** lowest and highest dose tested; nothing outside is ever offered */
  tested: { low: number; high: number };
  mean(doseKgPerT: number): number;
  low95(doseKgPerT: number): number;
  high95(doseKgPerT: number): number;
  /** one simulated mean curve, parameters drawn from their joint distribution with the given standard normal source */
  simulate?(normal: () => number): (doseKgPerT: number) => number;
  /** one simulated new jar at this dose, given a mean there and a standard normal draw */
  scatter?(mean: number, normal: number): number;
}
