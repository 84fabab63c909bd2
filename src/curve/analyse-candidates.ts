import type { ResponseSpec } from "./analyse-types.ts";
import { cellsOf, fitModel, type Fit } from "./fit.ts";
import { lackOfFitTest, pureError } from "./lack-of-fit.ts";
import type { CurveModel } from "./models/model.ts";
import { models } from "./models/registry.ts";
import { fisherUpperTail } from "./distributions.ts";
import type { DosePoint } from "./types.ts";

const tieWithin = 2;
const significance = 0.05;
/** up to here AICc's small-sample charge outweighs what a third parameter can show */
const smallSeries = 9;

/** Doses and jars a family needs before it may be ranked: four-parameter 6 and 8, three-parameter 4. */
function mayRank(model: CurveModel, points: DosePoint[], distinct: number): boolean {
  const shape = model.parameterNames.length;
  if (shape >= 4) return distinct >= 6 && points.length >= 8;
  return shape < 3 || distinct >= 4;
}

/** Fits every candidate family to the same rows, without the costly parts that only the chosen one needs. */
export function fitCandidates(points: DosePoint[], spec: ResponseSpec): Fit[] {
  return Object.values(models).map((model) =>
    fitModel(model, points, { scale: spec.scale, influence: false, intervals: false }),
  );
}

/** The better direction of a monotone model's knee: it must improve the response up to there. */
export function improves(fit: Fit, wanted: "minimum" | "maximum"): boolean {
  const { low, high } = fit.problem.range;
  const { parameters } = fit.estimate;
  const change = fit.model.value(high, parameters) - fit.model.value(low, parameters);
  return wanted === "minimum" ? change < 0 : change > 0;
}

/** Whether a four-parameter valley is one that the data can carry. */
function countsAsValley(fit: Fit, wanted: "minimum" | "maximum"): boolean {
  const { model, estimate, problem } = fit;
  if (model.rivalValley === true && model.turning(estimate.parameters, problem.range)?.kind !== wanted)
    return false;
  return model.carriedBy?.(estimate.parameters, problem.range) ?? true;
}

export interface Ranking {
  /** candidates that could be suggested, best first */
  passing: Fit[];
  suggested: Fit | null;
  tied: Fit[];
  /** more flexible valleys that beat the suggested one outright by the F test, though AICc charges them too much to rank */
  rivals: Fit[];
  /** the lowest AICc of all failed lack of fit */
  lackOfFit: boolean;
  masked: boolean;
  /** a curved family could be ranked at all */
  curvedRanked: boolean;
  anyConverged: boolean;
}

function lackOfFitWithout(
  fit: Fit,
  spec: ResponseSpec,
  points: DosePoint[],
  rows: Set<number>,
): number | null {
  const rest = points.filter((point) => !rows.has(point.row));
  const again = fitModel(fit.model, rest, { scale: spec.scale, influence: false, intervals: false });
  if (again.report.status !== "converged" || again.report.rss === null) return null;
  const coefficients = again.estimate.free.length + again.estimate.shifts.length;
  return (
    lackOfFitTest(again.report.rss, coefficients, pureError(again.problem.y, cellsOf(again.problem)))?.p ??
    null
  );
}

/**
 * Ranks candidates on identical rows: the suggested one has the lowest AICc of those that pass lack of fit (where
 * replicates allow the test, also with any outlying jar set aside). In small series AICc charges so much for a third
 * parameter that it prefers a constant or a line which the F test rejects outright; then the F test speaks.
 */
export function rankCandidates(
  fits: Fit[],
  points: DosePoint[],
  spec: ResponseSpec,
  distinct: number,
): Ranking {
  const wanted = spec.wanted;
  const converged = fits.filter((fit) => fit.report.status === "converged");
  const ranked = converged
    .filter(
      (fit) =>
        fit.report.aicc !== null && mayRank(fit.model, points, distinct) && countsAsValley(fit, wanted),
    )
    .sort((a, b) => a.report.aicc! - b.report.aicc!);
  const curved = (fit: Fit) => fit.model.parameterNames.length >= 3;
  const fitsData = (fit: Fit) => (fit.report.lackOfFit?.p ?? 1) >= significance;
  let passing = ranked.filter(fitsData);
  const lackOfFit = ranked.length > 0 && !fitsData(ranked[0]!);

  // An outlying replicate swells the pure error and lets a wrong shape pass: ask again without it.
  const outliers = new Set(
    ranked.slice(0, 4).flatMap((fit) => fit.report.outliers.map((outlier) => outlier.row)),
  );
  let masked = false;
  if (outliers.size > 0 && outliers.size <= Math.max(1, points.length / 6)) {
    const honest = passing.filter(
      (fit) => (lackOfFitWithout(fit, spec, points, outliers) ?? 1) >= significance,
    );
    masked = passing.length > 0 && passing[0] !== honest[0];
    passing = honest;
  }

  let suggested = passing[0] ?? null;
  const isFlat = (fit: Fit | null) => fit !== null && fit.model.parameterNames.length < 3;
  const isConstant = (fit: Fit) => fit.model.parameterNames.length === 1;
  if (suggested && isFlat(suggested)) {
    const base = suggested;
    const first = passing.find(curved);
    const speaks =
      first &&
      (first.report.fModel?.p ?? 1) < significance &&
      (isConstant(base) || partialTest(base, first) < significance);
    if (speaks && (isConstant(base) || points.length <= smallSeries)) suggested = first;
  }
  const tied = suggested
    ? passing.filter(
        (fit) => fit !== suggested && Math.abs(fit.report.aicc! - suggested!.report.aicc!) < tieWithin,
      )
    : [];
  return {
    passing,
    suggested,
    tied,
    lackOfFit,
    rivals: suggested ? rivalsOf(suggested, converged, wanted) : [],
    masked,
    curvedRanked: converged.some(
      (fit) => curved(fit) && fit.report.aicc !== null && mayRank(fit.model, points, distinct),
    ),
    anyConverged: converged.some(curved),
  };
}

function rivalsOf(suggested: Fit, converged: Fit[], wanted: "minimum" | "maximum"): Fit[] {
  if (suggested.model.parameterNames.length !== 3) return [];
  return converged.filter(
    (fit) =>
      fit.model.rivalValley === true &&
      countsAsValley(fit, wanted) &&
      partialTest(suggested, fit) < significance,
  );
}

/** The chance of such a drop in residuals from the flatter to the more curved model, were the flatter one true. */
function partialTest(flat: Fit, curved: Fit): number {
  const df1 = curved.estimate.free.length - flat.estimate.free.length;
  if (df1 < 1) return 1;
  const ratio = Math.exp((flat.estimate.deviance - curved.estimate.deviance) / curved.problem.x.length);
  return fisherUpperTail(((ratio - 1) * curved.estimate.df) / df1, df1, curved.estimate.df);
}
