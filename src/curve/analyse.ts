import { analyseSurface } from "./analyse-surface.ts";
import { fitCandidates, rankCandidates } from "./analyse-candidates.ts";
import type {
  AnalyseRow,
  Analysis,
  Axis,
  ReportedFit,
  ResponseSpec,
  ResponseWorking,
} from "./analyse-types.ts";
import { emptyVerdict, toldTwice, verdictOf, type WordOptions } from "./analyse-verdict.ts";
import { fitModel, type Fit } from "./fit.ts";
import { jarPoints, type JarPoint, type JarReading } from "./jars.ts";
import { countDistinct } from "./problem.ts";
import { bad, good, type Outcome } from "../outcome.ts";
import type { DosePoint } from "./types.ts";
import { verdictWords } from "../words/curve.ts";

export interface AnalyseOptions extends WordOptions {
  /** the file's (or series') name for sentences */
  name: string;
  level?: number;
  /** the responses there are, in the order of the answer */
  responses: readonly ResponseSpec[];
}

/** Which dose varies over all rows. */
export function axisOf(rows: AnalyseRow[]): Axis {
  const varies = (pick: (row: AnalyseRow) => number) => countDistinct(rows.map(pick)) > 1;
  const a = varies((row) => row.doseA);
  const b = varies((row) => row.doseB);
  return a && b ? "surface" : b ? "b" : "a";
}

/**
 * Analyses every response that was read: all models, the suggested one and a verdict in words, by the project's rules.
 * Fails only where the rows contradict themselves (one jar with two doses).
 */
export function analyseJars(
  rows: AnalyseRow[],
  options: AnalyseOptions,
): Outcome<{ analysis: Analysis; workings: ResponseWorking[] }> {
  const axis = axisOf(rows);
  const workings: ResponseWorking[] = [];
  for (const spec of options.responses) {
    const readings = readingsOf(rows, spec);
    if (readings.length === 0) continue;
    const jars = jarPoints(readings, spec.scale, options.name);
    if (!jars.ok) return bad(jars.message);
    workings.push(
      axis === "surface"
        ? analyseSurface(jars.value, spec, options)
        : analyseCurve(jars.value, spec, axis === "a" ? 0 : 1, options),
    );
  }
  return good({
    analysis: { rows: rows.length, axis, responses: workings.map((working) => working.analysis) },
    workings,
  });
}

function readingsOf(rows: AnalyseRow[], spec: ResponseSpec): JarReading[] {
  return rows.flatMap((row) => {
    const reading = row.readings[spec.name];
    if (!reading) return [];
    return [
      {
        row: row.row,
        jar: row.jar,
        doses: [row.doseA, row.doseB],
        value: reading.value,
        censored: reading.censored,
        block: row.block,
        order: row.order,
      },
    ];
  });
}

function toPoint(jar: JarPoint, at: 0 | 1): DosePoint {
  return {
    x: jar.doses[at]!,
    y: jar.y,
    row: jar.row,
    allRows: jar.allRows,
    ...(jar.block === undefined ? {} : { block: jar.block }),
    ...(jar.order === undefined ? {} : { order: jar.order }),
    ...(jar.censored === undefined ? {} : { censored: jar.censored }),
  };
}

/** The jars of one response along one dose, with every candidate fitted and ranked. */
function candidatesOf(jars: JarPoint[], spec: ResponseSpec, at: 0 | 1) {
  const all = jars.map((jar) => toPoint(jar, at));
  const points = all.filter((point) => point.x > 0);
  const distinct = countDistinct(points.map((point) => point.x));
  const candidates = points.length > 0 ? fitCandidates(points, spec) : [];
  return {
    all,
    points,
    zeros: all.length - points.length,
    distinct,
    candidates,
    ranking: rankCandidates(candidates, points, spec, distinct),
  };
}

/** The suggested model without and, where there are any and it is defined there, with the zero-dose jars. */
function chosenOf(
  { all, points, zeros, ranking }: ReturnType<typeof candidatesOf>,
  fitAgain: (fit: Fit, rows: DosePoint[]) => Fit,
): { out: Fit | null; withZeros: Fit | null } {
  const out = ranking.suggested ? fitAgain(ranking.suggested, points) : null;
  return { out, withZeros: out && zeros > 0 && out.model.definedAtZero ? fitAgain(out, all) : null };
}

/**
 * The fit that the verdict on one response would speak of, or its surface, without the verdict: no intervals, no
 * leave-one-out. For readers who only need the curve's value, at a fraction of the time. Fails as `analyseJars` does.
 */
export function speakingFit(
  rows: AnalyseRow[],
  response: string,
  options: AnalyseOptions,
): Outcome<Pick<ResponseWorking, "fit" | "surface">> {
  const spec = options.responses.find(({ name }) => name === response)!;
  const axis = axisOf(rows);
  const readings = readingsOf(rows, spec);
  if (readings.length === 0) return good({ fit: null, surface: null });
  const jars = jarPoints(readings, spec.scale, options.name);
  if (!jars.ok) return bad(jars.message);
  if (axis === "surface") {
    const { fit, surface } = analyseSurface(jars.value, spec, options);
    return good({ fit, surface });
  }
  const ranked = candidatesOf(jars.value, spec, axis === "a" ? 0 : 1);
  const { out, withZeros } = chosenOf(ranked, (fit, points) =>
    fitModel(fit.model, points, { scale: spec.scale, influence: false, intervals: false }),
  );
  return good({ fit: out ? speaks(out, withZeros) : bestOf(ranked.candidates), surface: null });
}

function analyseCurve(
  jars: JarPoint[],
  spec: ResponseSpec,
  at: 0 | 1,
  options: AnalyseOptions,
): ResponseWorking {
  const ranked = candidatesOf(jars, spec, at);
  const { all, points, zeros, distinct, candidates, ranking } = ranked;
  const full = (fit: Fit, rows: DosePoint[]) =>
    fitModel(fit.model, rows, { scale: spec.scale, level: options.level ?? 0.95 });

  const { out: chosenOut, withZeros: chosenIn } = chosenOf(ranked, full);
  const tied = ranking.tied.map((fit) => {
    const out = full(fit, points);
    return speaks(out, zeros > 0 && fit.model.definedAtZero ? full(fit, all) : null);
  });
  const rivals = ranking.rivals.map((fit) => full(fit, points));
  const speaking = chosenOut ? speaks(chosenOut, chosenIn) : null;

  const withZero = (fit: Fit, zeroDose: "in" | "out"): ReportedFit =>
    zeros > 0 ? { ...fit.report, zeroDose } : fit.report;
  const fits: ReportedFit[] = candidates.map((fit) =>
    withZero(fit === ranking.suggested && chosenOut ? chosenOut : fit, "out"),
  );
  if (chosenIn) fits.push(withZero(chosenIn, "in"));

  const verdict =
    points.length === 0
      ? emptyVerdict("too-few-doses", verdictWords.onlyNoPolymer, [])
      : toldTwice(options, (told) =>
          verdictOf({ spec, points, zeros, distinct, ranking, fit: speaking, tied, rivals, options: told }),
        );
  const shown = speaking ?? bestOf(candidates);
  return {
    analysis: {
      name: spec.name,
      scale: spec.scale,
      fits,
      suggested: ranking.suggested?.model.name ?? null,
      verdict,
    },
    fit: shown,
    surface: null,
    tied,
  };
}

/** A valley speaks from the doses above zero (gaussian-valley: all), a saturating or sigmoid shape from all. */
function speaks(out: Fit, withZeros: Fit | null): Fit {
  if (!withZeros || withZeros.report.status !== "converged") return out;
  return out.model.holdsAtZero === true ? withZeros : out;
}

function bestOf(candidates: Fit[]): Fit | null {
  return (
    candidates
      .filter((fit) => fit.report.status === "converged" && fit.report.aicc !== null)
      .sort((a, b) => a.report.aicc! - b.report.aicc!)[0] ?? null
  );
}
