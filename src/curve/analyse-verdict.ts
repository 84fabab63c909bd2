import { improves, type Ranking } from "./analyse-candidates.ts";
import type { Reason, ResponseSpec, Verdict, Warning } from "./analyse-types.ts";
import type { Fit } from "./fit.ts";
import type { DoseInterval, DosePoint } from "./types.ts";
import { verdictWords } from "../words/curve.ts";

/** A dose with its interval, by which everything told beside it is rounded. An open end is null. */
export interface DoseAround {
  dose: number;
  low: number | null;
  high: number | null;
}

/** How doses are told: as text under the decimal mark in force, in the unit of `doseUnit` (kg/t where not given). */
interface ToldDoses {
  number(doseKgPerT: number, around?: DoseAround): string;
  doseUnit?: string;
}

export interface WordOptions extends ToldDoses {
  /** the other system of units, where the verdict is told in that one too (`sentenceBeside`) */
  beside?: Required<ToldDoses>;
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

/** A verdict, with its sentence in the other system of units where that was asked for. */
export function toldTwice(options: WordOptions, tell: (options: WordOptions) => Verdict): Verdict {
  const verdict = tell(options);
  return options.beside
    ? { ...verdict, sentenceBeside: tell({ ...options, ...options.beside }).sentence }
    : verdict;
}

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
      return none("not-converged", verdictWords.noCurvedModel);
    return none(
      "too-few-doses",
      distinct < 4 ? verdictWords.fewDoses(distinct) : verdictWords.fewJars(points.length),
    );
  }
  if (!ranking.suggested || !fit)
    return none("no-model-fits", ranking.masked ? verdictWords.masked : verdictWords.noModel);
  const shape = fit.model.parameterNames.length;
  if (shape === 1)
    return none("no-effect", verdictWords.noEffect(spec.label, number(low), number(high), unit));
  if (shape === 2) {
    const better = improves(fit, spec.wanted);
    return none(
      "not-curved",
      better
        ? verdictWords.stillImproving(spec.label, number(high), unit)
        : verdictWords.onlyWorse(spec.label, number(low), unit),
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
  const kind = isKnee ? "knee" : "optimum";
  if (!optimum || (!isKnee && optimum.kind !== spec.wanted))
    return none(
      "not-curved",
      verdictWords.noTurn(spec.label, spec.wanted, number(range.low), number(range.high), unit),
    );
  if (isKnee && !improves(fit, spec.wanted))
    return none("not-curved", verdictWords.onlyWorse(spec.label, number(range.low), unit));

  const own = profileOf(fit);
  const modelInterval =
    own && own.kind !== "complement" ? { low: own.low, high: own.high } : { low: null, high: null };
  if (optimum.dose > range.high || optimum.dose < Math.min(range.low, fit.problem.range.low)) {
    const above = optimum.dose > range.high;
    const ninety = isKnee && above ? ninetyDose(fit) : null;
    const inside = ninety !== null && ninety <= range.high && ninety >= range.low;
    const sentence = above
      ? verdictWords.outside(kind, "above", number(range.high), unit)
      : verdictWords.outside(kind, "below", number(range.low), unit);
    return {
      ...none("outside-range", inside ? verdictWords.ninety(sentence, number(ninety), unit) : sentence),
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
        verdictWords.unbounded(
          kind,
          own?.low === null && own.high !== null
            ? "low"
            : own?.high === null && own.low !== null
              ? "high"
              : "either",
          number(range.low),
          number(range.high),
          unit,
        ),
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
  const around = { dose: optimum.dose, low, high };
  const end = (dose: number | null) => (dose === null ? null : number(dose, around));
  const span = verdictWords.span(end(low), end(high));
  if (disjoint)
    return {
      ...none("ambiguous", verdictWords.ambiguous(kind, span, unit)),
      low,
      high,
      modelInterval,
    };
  if (low === null || high === null || low < range.low || high > range.high) warnings.push("edge");
  const mover = fit.report.influence[0];
  const count = tied.length + 1;
  const words = [
    isKnee
      ? verdictWords.locatedKnee(number(optimum.dose, around), optimum.gainPct, span, unit)
      : verdictWords.located(number(optimum.dose, around), span, unit),
    ...(count > 1 ? [verdictWords.tie(count)] : []),
    ...(mover ? [verdictWords.mover(jar(mover.row))] : []),
    ...(warnings.includes("edge") ? [verdictWords.edge] : []),
  ];
  return {
    kind,
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
export function ninetyDose({ model, estimate }: Fit): number | null {
  return model.ninetyDose?.(estimate.parameters) ?? null;
}
