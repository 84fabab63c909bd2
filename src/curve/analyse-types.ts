import type { Fit } from "./fit.ts";
import type { SurfaceFit, SurfaceReport } from "./surface.ts";
import type { FitReport, Scale } from "./types.ts";

/** What the analysis has to know of a response: what it is fitted on, and which way is better. */
export interface ResponseSpec {
  name: string;
  label: string;
  unit: string;
  scale: Scale;
  wanted: "minimum" | "maximum";
}

/** One reading row of a series: a line of a file, or one reading round of a jar in a study. */
export interface AnalyseRow {
  row: number;
  jar: string | null;
  doseA: number;
  doseB: number;
  block: string | null;
  order: number | null;
  readings: Record<string, { value: number; censored: "above" | "below" | null }>;
}

export type Reason =
  | "no-effect"
  | "too-few-doses"
  | "not-curved"
  | "outside-range"
  | "unbounded"
  | "not-converged"
  | "no-model-fits"
  | "ambiguous";

export type Warning =
  | "few-doses"
  | "tie"
  | "lack-of-fit"
  | "outlier"
  | "outlier-masks-lack-of-fit"
  | "edge"
  | "censored"
  | "single-jars"
  | "zero-dose";

export type Axis = "a" | "b" | "surface";
export type DoseOrPair = number | { a: number; b: number };

export interface Verdict {
  kind: "optimum" | "knee" | "none";
  reason: Reason | null;
  dose: DoseOrPair | null;
  /** union over tied models */
  low: DoseOrPair | null;
  high: DoseOrPair | null;
  /** the suggested model's own */
  modelInterval: { low: DoseOrPair | null; high: DoseOrPair | null } | null;
  sentence: string;
  /** the same in the other system of units, where it was asked for */
  sentenceBeside?: string;
  warnings: Warning[];
}

export type ReportedFit = (FitReport | SurfaceReport) & { zeroDose?: "in" | "out" };

export interface ResponseAnalysis {
  name: string;
  scale: Scale;
  fits: ReportedFit[];
  suggested: string | null;
  verdict: Verdict;
}

export interface Analysis {
  rows: number;
  axis: Axis;
  responses: ResponseAnalysis[];
}

/** The same analysis with what screens draw: the fit behind each verdict, and whose tie it is. */
export interface ResponseWorking {
  analysis: ResponseAnalysis;
  /** the fit the verdict speaks of (zero-dose jars in or out by the rules), or the best there is; null where none */
  fit: Fit | null;
  surface: SurfaceFit | null;
  tied: Fit[];
}
