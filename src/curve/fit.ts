import { aiccFrom } from "./aicc.ts";
import { blankReport } from "./blank-report.ts";
import { bootstrapInterval } from "./bootstrap.ts";
import { solveColumns } from "./deviance.ts";
import { findOutliers, influenceOf, orderTrend } from "./diagnostics.ts";
import { fisherUpperTail } from "./distributions.ts";
import type { Estimate, Fixed } from "./estimate-result.ts";
import { estimate } from "./estimate.ts";
import { optimumIntervals } from "./intervals.ts";
import { lackOfFitTest, pureError, pureErrorCells } from "./lack-of-fit.ts";
import type { CurveModel } from "./models/model.ts";
import { buildProblem, offScale, type Problem } from "./problem.ts";
import type { DosePoint, FitReport, FTest, Optimum, Scale } from "./types.ts";

export interface FitOptions {
  scale: Scale;
  /** held parameters by name; unknown names are the caller's to refuse */
  fixed?: Record<string, number>;
  /** confidence level, 0.95 unless said */
  level?: number;
  bootstrap?: { draws: number; seed: number } | null;
  /** full natural parameters to start from instead of the self-starting values */
  start?: number[];
  /** leave-one-out refits cost n fits: off for candidates that only need ranking */
  influence?: boolean;
  intervals?: boolean;
}

/** A fit with what is needed to draw it and to build on it. All plain data but for the model object. */
export interface Fit {
  report: FitReport;
  model: CurveModel;
  problem: Problem;
  estimate: Estimate;
}

/** The global F test of a model against the constant (block shifts kept); null where it has no shape to test. */
function globalTest(problem: Problem, result: Estimate): FTest | null {
  const df1 = result.free.length - 1;
  if (df1 < 1 || result.df < 1) return null;
  const flat = solveColumns(
    problem.x.map(() => [1]),
    problem,
    null,
  );
  if (!flat) return null;
  // exp of the deviance step is RSS0 / RSS where nothing is censored; with censoring it stands in for that ratio.
  const ratio = Math.exp((flat.deviance - result.deviance) / problem.x.length);
  const f = Math.max(0, ((ratio - 1) * result.df) / df1);
  if (!Number.isFinite(f)) return null;
  return { f, df1, df2: result.df, p: fisherUpperTail(f, df1, result.df) };
}

/** Pure-error cells of a problem: planned-dose groups where given, else doses within 1 %. */
export function cellsOf(problem: Problem): number[] {
  if (problem.groupOf.every((group) => group !== "")) {
    const keys = problem.groupOf.map((group, i) => `${group}|${problem.blockOf[i]!}`);
    const names = [...new Set(keys)];
    return keys.map((key) => names.indexOf(key));
  }
  return pureErrorCells(
    problem.x.map((x) => [x]),
    problem.blockOf,
  );
}

/** Fits one model to points (see FitReport for what is answered). Deterministic; never throws on data. */
export function fitModel(model: CurveModel, points: DosePoint[], options: FitOptions): Fit {
  const problem = buildProblem(points, options.scale);
  const fixed: Fixed = new Map(
    Object.entries(options.fixed ?? {}).map(([name, value]) => [model.parameterNames.indexOf(name), value]),
  );
  const result = estimate(model, problem, fixed, options.start);
  return { report: reportOf(model, problem, fixed, result, options), model, problem, estimate: result };
}

function reportOf(
  model: CurveModel,
  problem: Problem,
  fixed: Fixed,
  result: Estimate,
  options: FitOptions,
): FitReport {
  const report: FitReport = {
    model: model.name,
    ...blankReport(problem.allRows, problem.scale, result.status, result.iterations, problem.anyCensored),
  };
  if (result.status !== "converged") return report;
  const level = options.level ?? 0.95;
  const n = problem.x.length;
  const coefficients = result.free.length + result.shifts.length;
  report.parameters = model.parameterNames.map((name, k) => {
    const place = result.free.indexOf(k);
    return {
      name,
      value: result.parameters[k]!,
      se: place < 0 ? null : Math.sqrt(Math.max(0, result.covariance[place]![place]!)),
    };
  });
  for (const [j, name] of problem.blockNames.entries()) {
    const place = result.free.length + j;
    report.parameters.push({
      name: `block ${name}`,
      value: result.shifts[j]!,
      se: Math.sqrt(Math.max(0, result.covariance[place]![place]!)),
    });
  }
  report.covariance = result.covariance.map((row) => [...row]);
  report.df = result.df;
  report.residualSd = result.residualSd;
  report.aicc = aiccFrom(result.deviance, n, coefficients);
  if (report.aicc !== null) {
    const jacobian = problem.scale === "log" ? problem.y.filter((_, i) => problem.censored[i] === 0) : [];
    report.aiccNatural = report.aicc + 2 * jacobian.reduce((sum, value) => sum + value, 0);
  }
  report.fModel = globalTest(problem, result);
  if (result.rss !== null) {
    const mean = problem.y.reduce((sum, value) => sum + value, 0) / n;
    const total = problem.y.reduce((sum, value) => sum + (value - mean) ** 2, 0);
    report.rss = result.rss;
    report.r2 = total > 0 ? 1 - result.rss / total : null;
    report.lackOfFit = lackOfFitTest(result.rss, coefficients, pureError(problem.y, cellsOf(problem)));
    report.outliers = findOutliers(problem, result);
    if (orderTrend(problem, result)) report.warnings.push("order-trend");
  }
  report.optimum = optimumOf(model, problem, fixed, result, options, level);
  if (options.influence !== false && report.optimum)
    report.influence = influenceOf(model, problem, fixed, result, report.optimum.dose);
  if (report.optimum && !report.optimum.inside) report.warnings.push("outside-range");
  return report;
}

function optimumOf(
  model: CurveModel,
  problem: Problem,
  fixed: Fixed,
  result: Estimate,
  options: FitOptions,
  level: number,
): Optimum | null {
  const turning = model.turning(result.parameters, problem.range);
  if (!turning || !Number.isFinite(turning.dose)) return null;
  const value = offScale(
    model.value(turning.dose, result.parameters) + meanShift(problem, result),
    problem.scale,
  );
  if (!Number.isFinite(value)) return null;
  const intervals =
    options.intervals === false ? [] : optimumIntervals(model, problem, fixed, result, turning.dose, level);
  if (options.bootstrap)
    intervals.push(
      bootstrapInterval(
        model,
        problem,
        fixed,
        result,
        level,
        options.bootstrap.draws,
        options.bootstrap.seed,
      ),
    );
  return {
    dose: turning.dose,
    value,
    kind: turning.kind,
    ...(turning.gainPct === undefined ? {} : { gainPct: turning.gainPct }),
    inside: turning.dose >= problem.range.low && turning.dose <= problem.range.high,
    intervals,
  };
}

/** The jars' average block shift, so that the drawn curve passes through the middle of all blocks. */
export function meanShift(problem: Problem, result: Estimate): number {
  return result.shifts.reduce(
    (sum, shift, j) =>
      sum + (shift * problem.blockColumns.reduce((count, row) => count + row[j]!, 0)) / problem.x.length,
    0,
  );
}
