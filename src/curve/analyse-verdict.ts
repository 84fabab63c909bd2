import { improves, type Ranking } from "./analyse-candidates.ts";
import type { Reason, ResponseSpec, Verdict, Warning } from "./analyse-types.ts";
import type { Fit } from "./fit.ts";
import type { DoseInterval, DosePoint } from "./types.ts";

export interface WordOptions {
  /** a dose as text: under the decimal mark in force, in the unit of `doseUnit` */
  number(doseKgPerT: number): string;
  /** the unit that `number` writes doses in; kg/t where not given */
  doseUnit?: string;
  /** what the jar of a row is called */
  jar(row: number): string;
}

export interface VerdictInput {
  spec: ResponseSpec;
  points: DosePoint[];
  zeros: number;
  distinct: number;
  ranking: Ranking;
  fit: Fit | null;
  tied: Fit[];
  /** see Ranking.rivals, with their intervals */
  rivals: Fit[];
  options: WordOptions;
}

/** A verdict of none. */
export function emptyVerdict(reason: Reason, sentence: string, warnings: Warning[]): Verdict {
  return { kind: "none", reason, dose: null, low: null, high: null, modelInterval: null, sentence, warnings };
}

const enoughDoses = 5;

function warningsOf(input: VerdictInput): Warning[] {
  const { points, distinct, ranking, fit, zeros, tied } = input;
  const warnings: Warning[] = [];
  if (distinct < enoughDoses) warnings.push("few-doses");
  if (tied.length > 0) warnings.push("tie");
  if (ranking.lackOfFit || (ranking.suggested === null && ranking.curvedRanked)) warnings.push("lack-of-fit");
  if (fit && fit.report.outliers.length > 0) warnings.push("outlier");
  if (ranking.masked) warnings.push("outlier-masks-lack-of-fit");
  if (points.some((point) => point.censored)) warnings.push("censored");
  if (distinct === points.length) warnings.push("single-jars");
  if (zeros > 0) warnings.push("zero-dose");
  return warnings;
}

const profileOf = (fit: Fit): DoseInterval | null =>
  fit.report.optimum?.intervals.find((interval) => interval.method === "profile") ?? null;

/** The verdict on one response: an optimum, a knee, or none with the reason and what to do about it. */
export function verdictOf(input: VerdictInput): Verdict {
  const { spec, points, distinct, ranking, fit, options } = input;
  const { number, doseUnit: unit = "kg/t" } = options;
  const warnings = warningsOf(input);
  const low = Math.min(...points.map((point) => point.x));
  const high = Math.max(...points.map((point) => point.x));
  const none = (reason: Reason, sentence: string) => emptyVerdict(reason, sentence, warnings);

  if (distinct < 4 || !ranking.curvedRanked) {
    if (distinct >= 4 && !ranking.anyConverged && points.length >= 6)
      return none(
        "not-converged",
        "No curved model could be fitted to these jars: check the readings, or add doses between them.",
      );
    const need =
      distinct < 4
        ? `${distinct} distinct ${distinct === 1 ? "dose is" : "doses are"}`
        : `${points.length} jars are`;
    return none(
      "too-few-doses",
      `${need} too few to tell a curve from scatter: run at least six doses, some of them twice.`,
    );
  }
  if (!ranking.suggested || !fit)
    return none(
      "no-model-fits",
      ranking.masked
        ? "An outlying jar hides that no model passes through the doses: repeat that jar, then look again."
        : "No model passes through the doses within the scatter of the replicates: check the jars furthest from the curve.",
    );
  const name = fit.model.name;
  if (name === "constant")
    return none(
      "no-effect",
      `${spec.label} does not change with dose beyond its scatter between ${number(low)} and ${number(high)} ${unit}.`,
    );
  if (name === "linear") {
    const slope = fit.estimate.parameters[1] ?? 0;
    const better = spec.wanted === "minimum" ? slope < 0 : slope > 0;
    return none(
      "not-curved",
      better
        ? `${spec.label} is still improving at the highest dose: add jars above ${number(high)} ${unit}.`
        : `${spec.label} only gets worse with dose: add jars below ${number(low)} ${unit}.`,
    );
  }
  return curvedVerdict(input, fit, warnings, { low, high });
}

function curvedVerdict(
  input: VerdictInput,
  fit: Fit,
  warnings: Warning[],
  range: { low: number; high: number },
): Verdict {
  const { spec, tied, rivals, options } = input;
  const { number, jar, doseUnit: unit = "kg/t" } = options;
  const none = (reason: Reason, sentence: string) => emptyVerdict(reason, sentence, warnings);
  const optimum = fit.report.optimum;
  const isKnee = optimum?.kind === "knee";
  if (!optimum || (!isKnee && optimum.kind !== spec.wanted))
    return none(
      "not-curved",
      `${spec.label} has no ${spec.wanted === "minimum" ? "valley" : "top"} between ${number(range.low)} and ${number(range.high)} ${unit}.`,
    );
  if (isKnee && !improves(fit, spec.wanted))
    return none(
      "not-curved",
      `${spec.label} only gets worse with dose: add jars below ${number(range.low)} ${unit}.`,
    );

  const own = profileOf(fit);
  const modelInterval =
    own && own.kind !== "complement" ? { low: own.low, high: own.high } : { low: null, high: null };
  if (optimum.dose > range.high || optimum.dose < Math.min(range.low, fit.problem.range.low)) {
    const above = optimum.dose > range.high;
    const ninety = isKnee && above ? ninetyDose(fit) : null;
    const inside = ninety !== null && ninety <= range.high && ninety >= range.low;
    return {
      ...none(
        "outside-range",
        `${isKnee ? "The knee" : "The optimum"} lies ${above ? "above" : "below"} the doses tested: add jars ${above ? `above ${number(range.high)}` : `below ${number(range.low)}`} ${unit}.${
          inside ? ` 90 % of the gain is reached at ${number(ninety)} ${unit}.` : ""
        }`,
      ),
      dose: optimum.dose,
      low: modelInterval.low,
      high: modelInterval.high,
      modelInterval,
    };
  }
  if (!own || own.kind !== "interval" || own.low === null || own.high === null)
    return {
      ...none(
        "unbounded",
        `The jars do not say where the ${isKnee ? "knee" : "optimum"} ends on ${own?.low === null && own.high !== null ? "its low side" : own?.high === null && own.low !== null ? "its high side" : "either side"}: add jars beyond ${number(range.low)} and ${number(range.high)} ${unit}, or repeat jars.`,
      ),
      modelInterval,
    };

  let low: number | null = own.low;
  let high: number | null = own.high;
  let disjoint = false;
  for (const other of [...tied, ...rivals]) {
    const interval = profileOf(other);
    const found = other.report.optimum;
    if (!interval || !found || (found.kind !== "knee" && found.kind !== spec.wanted)) continue;
    if (interval.kind === "complement" || interval.kind === "all") continue;
    // A plateau's corner, a 95 % knee and a shallow top measure different things: they widen the range, they do not
    // contradict each other. Two optima, or two knees of one kind, do.
    const sameMeasure = found.kind === optimum.kind && found.gainPct === optimum.gainPct;
    const apart = interval.kind === "interval" && (interval.low! > own.high || interval.high! < own.low);
    if (sameMeasure && apart) disjoint = true;
    low = low === null || interval.low === null ? null : Math.min(low, interval.low);
    high = high === null || interval.high === null ? null : Math.max(high, interval.high);
  }
  const span = `${low === null ? "below the doses tested" : number(low)} to ${high === null ? "above the doses tested" : number(high)}`;
  if (disjoint)
    return {
      ...none(
        "ambiguous",
        `Models that fit equally well put the ${isKnee ? "knee" : "optimum"} in different places (${span} ${unit}): add jars there to part them.`,
      ),
      low,
      high,
      modelInterval,
    };
  if (low === null || high === null || low < range.low || high > range.high) warnings.push("edge");
  const mover = fit.report.influence[0];
  const count = tied.length + 1;
  const words = [
    `${number(optimum.dose)} ${unit}${isKnee ? ` (${optimum.gainPct} % of the gain)` : ""}, ${span}`,
    ...(count > 1 ? [`${["two", "three", "four", "five"][count - 2] ?? String(count)} models tie`] : []),
    ...(mover ? [`jar ${jar(mover.row)} moves it most`] : []),
    ...(warnings.includes("edge") ? ["the interval leaves the doses tested, so add jars there"] : []),
  ];
  return {
    kind: isKnee ? "knee" : "optimum",
    reason: null,
    dose: optimum.dose,
    low,
    high,
    modelInterval,
    sentence: `${words.join("; ")}.`,
    warnings,
  };
}

/** The dose that reaches 90 % of the gain, for saturating and sigmoid shapes. */
export function ninetyDose(fit: Fit): number | null {
  const [, , third = 0, fourth = 0] = fit.estimate.parameters;
  switch (fit.model.name) {
    case "saturating-exponential":
      return Math.log(10) / third;
    case "log-logistic":
      return third * 9 ** (1 / Math.abs(fourth));
    case "logistic":
      return third + Math.log(9) / Math.abs(fourth);
    default:
      return null;
  }
}
