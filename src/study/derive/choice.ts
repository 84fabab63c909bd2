import { capturePct } from "../../bench/capture.ts";
import { responseWords } from "../../responses/registry.ts";
import { allRules, type Located, type RuleResult } from "../../choice/rules.ts";
import type { CostInput } from "../../choice/cost.ts";
import { limitSpans, type Limit, type Span } from "../../choice/limits.ts";
import { workingWindow, type LimitHolding, type WorkingWindow } from "../../choice/window.ts";
import type { ResponseWorking } from "../../curve/analyse-types.ts";
import { responseCurve } from "../../curve/bands.ts";
import type { ResponseCurve } from "../../curve/types.ts";
import { choiceChainWords } from "../../words/choice-chain.ts";
import type { DoseWords } from "../../units/dose-words.ts";
import type { RecordOf, StudyState } from "../schema/records.ts";
import type { SeriesChain } from "./jars.ts";

export interface LimitBar {
  limit: Limit;
  mean: Span[];
  bound: Span[];
}

export interface ChoiceChain {
  tested: Span;
  curves: ResponseCurve[];
  bars: LimitBar[];
  /** limits that cannot be judged, with the reason */
  unjudged: { words: string; why: string }[];
  window: WorkingWindow;
  rules: RuleResult[];
  cost: CostInput;
  /** "over-dose not priced" where capture was not read */
  costNote: string;
}

export type Targets = RecordOf<"targets">;

/** A field of the targets that limits one response. */
export type TargetField =
  | "turbidityAtMost"
  | "filtrateTssAtMostMgPerL"
  | "cstAtMostS"
  | "cakeAtLeastPct"
  | "drainedAtLeastMl"
  | "captureAtLeastPct";

interface LimitField {
  field: TargetField;
  response: string;
  side: Limit["side"];
  words: (value: string, turbidityUnit: string) => string;
}

const limitFields: LimitField[] = [
  {
    field: "turbidityAtMost",
    response: "turbidity_ntu",
    side: "at-most",
    words: (value, unit) => choiceChainWords.limits.turbidity(value, unit),
  },
  {
    field: "filtrateTssAtMostMgPerL",
    response: "filtrate_tss_mg_per_l",
    side: "at-most",
    words: (value) => choiceChainWords.limits.filtrateTss(value),
  },
  {
    field: "cstAtMostS",
    response: "cst_s",
    side: "at-most",
    words: (value) => choiceChainWords.limits.cst(value),
  },
  {
    field: "cakeAtLeastPct",
    response: "cake_ts_pct",
    side: "at-least",
    words: (value) => choiceChainWords.limits.cake(value),
  },
  {
    field: "drainedAtLeastMl",
    response: "drained_ml",
    side: "at-least",
    words: (value) => choiceChainWords.limits.drained(value),
  },
  {
    field: "captureAtLeastPct",
    response: "capture_pct",
    side: "at-least",
    words: (value) => choiceChainWords.limits.capture(value),
  },
];

/** The targets of a series, where any were set. */
export function targetsOf(state: StudyState, seriesId: string): Targets | null {
  return Object.values(state.targets).find((one) => one.seriesId === seriesId) ?? null;
}

/** The limits that these targets set, in words. */
export function limitsOf(
  targets: Targets | null,
  turbidityUnit: string,
  number: (value: number) => string,
): Limit[] {
  if (!targets) return [];
  return limitFields.flatMap(({ field, response, side, words }) => {
    const value = targets[field];
    return typeof value === "number"
      ? [{ response, side, value, words: words(number(value), turbidityUnit) }]
      : [];
  });
}

/** The target that limits a response; null where there is none for it. */
export function targetOfResponse(response: string): TargetField | null {
  return limitFields.find((one) => one.response === response)?.field ?? null;
}

/** The response that a target limits. */
export function responseOfTarget(field: TargetField): string {
  return limitFields.find((one) => one.field === field)!.response;
}

/** A target in words at any value, as it would stand in the list of limits. */
export function targetWords(field: TargetField, turbidityUnit: string, value: string): string {
  return limitFields.find((one) => one.field === field)!.words(value, turbidityUnit);
}

/** The curve of a converged fit for each response that has a shape to offer. */
function curvesOf(workings: ResponseWorking[]): ResponseCurve[] {
  return workings.flatMap(({ fit, analysis }) =>
    fit && fit.report.status === "converged" ? [responseCurve(fit, analysis.name)] : [],
  );
}

/**
 * Capture against dose from the fitted filtrate TSS and cake with the jars' real dilution; null where a part is
 * missing. Its bounds follow the filtrate's.
 */
function captureCurve(
  curves: ResponseCurve[],
  chain: SeriesChain,
  feedTssPct: number | null,
): ResponseCurve | null {
  const tss = curves.find((curve) => curve.response === "filtrate_tss_mg_per_l");
  const cake = curves.find((curve) => curve.response === "cake_ts_pct");
  const volume = chain.series.sampleVolumeMl;
  const density = chain.sample.density.value;
  if (!tss || !cake || feedTssPct === null || volume === null || density === null) return null;
  const added = chain.jars
    .flatMap((jar) =>
      jar.addedMl === null || jar.doseA.value === null ? [] : [[jar.doseA.value, jar.addedMl] as const],
    )
    .sort((a, b) => a[0] - b[0]);
  const dilutionAt = (dose: number) => {
    const above = added.find(([at]) => at >= dose) ?? added.at(-1);
    const below = [...added].reverse().find(([at]) => at <= dose) ?? added[0];
    if (!above || !below) return 0;
    const span = above[0] - below[0];
    const ml = span > 0 ? below[1] + ((above[1] - below[1]) * (dose - below[0])) / span : below[1];
    return ml / (volume * density);
  };
  const capture = (filtrate: number, cakePct: number, dose: number) => {
    const result = capturePct({
      feedPct: feedTssPct,
      cakePct,
      filtratePct: filtrate / 10_000,
      dilution: dilutionAt(dose),
    });
    return result.ok ? result.value : NaN;
  };
  return {
    response: "capture_pct",
    tested: {
      low: Math.max(tss.tested.low, cake.tested.low),
      high: Math.min(tss.tested.high, cake.tested.high),
    },
    mean: (dose) => capture(tss.mean(dose), cake.mean(dose), dose),
    low95: (dose) => capture(tss.high95(dose), cake.mean(dose), dose),
    high95: (dose) => capture(tss.low95(dose), cake.mean(dose), dose),
  };
}

/** The curves of a one-polymer series over its tested doses, with the capture that follows, and what a dose costs on them. */
export interface FittedChoice {
  tested: Span;
  /** every curve judged over the same tested doses */
  curves: ResponseCurve[];
  cost: CostInput;
  /** whether capture follows from the curves; otherwise the assumed constant stands in, where there is one */
  ownCapture: boolean;
}

/** Curves and costs of a one-polymer series from its fitted curves; null where nothing is fitted or dosed. */
export function fittedChoice(
  state: StudyState,
  chain: SeriesChain,
  fitted: ResponseCurve[],
  targets: Targets | null,
): FittedChoice | null {
  const feed = state.sample[chain.series.sampleId]!;
  if (fitted.length === 0) return null;
  const capture = captureCurve(fitted, chain, feed.suspendedSolidsPct);
  const curves = capture ? [...fitted, capture] : fitted;
  // Only doses that every response was tested at, and never the no-polymer jars' zero alone.
  const doses = chain.jars.flatMap((jar) =>
    jar.jar.leftOut === null && (jar.doseA.value ?? 0) > 0 ? [jar.doseA.value!] : [],
  );
  if (doses.length === 0) return null;
  const tested = { low: Math.min(...doses), high: Math.max(...doses) };
  const within = curves.map((curve) => ({ ...curve, tested }));
  const product = chain.stockA?.product ?? null;
  const cake = within.find((curve) => curve.response === "cake_ts_pct");
  const ownCapture = within.find((curve) => curve.response === "capture_pct");
  const assumed = targets?.assumedCapturePct ?? null;
  return {
    tested,
    curves: within,
    cost: {
      pricePerKgNeat: product?.pricePerKgNeat ?? null,
      activePct: product?.activePct ?? null,
      disposalPerWetT: targets?.disposalPerWetT ?? null,
      returnPerT: targets?.returnPerT ?? null,
      cakePct: cake ? cake.mean : null,
      capturePct: ownCapture ? ownCapture.mean : assumed === null ? null : () => assumed,
    },
    ownCapture: ownCapture !== undefined,
  };
}

/** Limits, window, rules and costs of a one-polymer series from its fitted curves; null where nothing is fitted. */
export function choiceChain(
  state: StudyState,
  chain: SeriesChain,
  workings: ResponseWorking[],
  number: (value: number) => string,
  targets: Targets | null = targetsOf(state, chain.series.id),
  doses: DoseWords = { number, given: number, unit: "kg/t" },
): ChoiceChain | null {
  const fitted = fittedChoice(state, chain, curvesOf(workings), targets);
  if (!fitted) return null;
  const { tested, curves: within, cost, ownCapture } = fitted;

  const bars: LimitBar[] = [];
  const unjudged: ChoiceChain["unjudged"] = [];
  for (const limit of limitsOf(targets, chain.series.turbidityUnit, number)) {
    const curve = within.find((one) => one.response === limit.response);
    if (!curve) {
      unjudged.push({
        words: limit.words,
        why: choiceChainWords.noCurve,
      });
      continue;
    }
    bars.push({ limit, ...limitSpans(curve, limit) });
  }
  const holdings: LimitHolding[] = bars.map(({ limit, bound }) => ({ limit, spans: bound }));
  const window = workingWindow(holdings, tested, doses.number, doses.unit);
  const located: Located[] = workings.flatMap(({ analysis }) => {
    const { verdict, name } = analysis;
    if (verdict.kind === "none" || typeof verdict.dose !== "number") return [];
    const label = responseWords[name]?.label ?? name;
    const words = verdict.kind === "knee" ? choiceChainWords.kneeOf(label) : choiceChainWords.bestOf(label);
    return [
      {
        response: name,
        words,
        kind: verdict.kind,
        dose: verdict.dose,
        low: typeof verdict.low === "number" ? verdict.low : null,
        high: typeof verdict.high === "number" ? verdict.high : null,
      },
    ];
  });
  return {
    tested,
    curves: within,
    bars,
    unjudged,
    window,
    rules: allRules({
      tested,
      curves: within,
      holdings,
      window,
      guardPct: targets?.guardPct ?? 10,
      cost,
      located,
      wishes: (targets?.wishes ?? []).map(({ response, worst, best, weight }) => ({
        response,
        wish: { worst, best, weight },
      })),
      mark: state.study["study"]?.decimalMark,
    }),
    cost,
    costNote: ownCapture ? "" : choiceChainWords.overDoseNotPriced,
  };
}
