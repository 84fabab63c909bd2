import { costAt, type CostParts } from "../../choice/cost.ts";
import { type ResponseName, responseSpecs } from "../../responses/registry.ts";
import { axisOf, speakingFit } from "../../curve/analyse.ts";
import { responseCurve } from "../../curve/bands.ts";
import { insideHull } from "../../curve/canonical.ts";
import { surfaceBounds, surfaceMean } from "../../curve/surface-bands.ts";
import type { ResponseCurve } from "../../curve/types.ts";
import { writeSignificant } from "../../units/digits.ts";
import { fittedChoice, targetsOf } from "../derive/choice.ts";
import { decisionChain } from "../derive/decision.ts";
import { seriesChain, type SeriesChain } from "../derive/jars.ts";
import { pairCost, type NamedSurface } from "../derive/pair-choice.ts";
import { analyseRows } from "../derive/points.ts";
import type { StudyState } from "../schema/records.ts";
import type { SeriesSummary } from "./row.ts";
import { summaryWords } from "../../words/summaries.ts";

/** The responses a comparison of studies shows; the others are not fitted for it. */
const compared = ["turbidity_ntu", "filtrate_tss_mg_per_l", "cake_ts_pct"] as const satisfies ResponseName[];

const plain = (value: number) => writeSignificant(value, ".", 3);

const finite = (value: number | null | undefined): number | null =>
  value !== null && value !== undefined && Number.isFinite(value) ? value : null;

type Fitted = Pick<
  SeriesSummary,
  | "turbidity"
  | "turbidityLow"
  | "turbidityHigh"
  | "filtrateTssMgPerL"
  | "filtrateTssLow"
  | "filtrateTssHigh"
  | "cakePct"
  | "cakeLow"
  | "cakeHigh"
>;
type Results = Fitted &
  Pick<SeriesSummary, "capturePct" | "polymerCost" | "disposalCost" | "returnCost" | "totalCost" | "why">;

/** What a fitted response says at a dose, with the one-sided 95 % bounds of its mean; null where nothing is fitted. */
type At = (response: ResponseName) => { mean: number; low: number; high: number } | null;

function fittedAt(at: At): Fitted {
  const [turbidity, tss, cake] = compared.map((name) => at(name));
  return {
    turbidity: finite(turbidity?.mean),
    turbidityLow: finite(turbidity?.low),
    turbidityHigh: finite(turbidity?.high),
    filtrateTssMgPerL: finite(tss?.mean),
    filtrateTssLow: finite(tss?.low),
    filtrateTssHigh: finite(tss?.high),
    cakePct: finite(cake?.mean),
    cakeLow: finite(cake?.low),
    cakeHigh: finite(cake?.high),
  };
}

const nothing = (why: string): Results => ({
  ...fittedAt(() => null),
  capturePct: null,
  polymerCost: null,
  disposalCost: null,
  returnCost: null,
  totalCost: null,
  why,
});

function lackOf(results: Omit<Results, "why">): string {
  const noFiltrate = results.turbidity === null && results.filtrateTssMgPerL === null;
  const noCake = results.cakePct === null;
  const lack = noFiltrate && noCake ? "both" : noFiltrate ? "filtrate" : noCake ? "cake" : null;
  const cost =
    results.totalCost === null
      ? summaryWords.noPrice
      : results.disposalCost === null
        ? summaryWords.onlyPolymer
        : "";
  const words = lack === null ? "" : summaryWords.noCurve[lack];
  return [words, cost].filter((part) => part !== "").join("; ");
}

function resultsOnCurve(
  state: StudyState,
  chain: SeriesChain,
  curves: ResponseCurve[],
  dose: number,
): Results {
  const choice = fittedChoice(state, chain, curves, targetsOf(state, chain.series.id));
  if (!choice) return nothing(summaryWords.noFit);
  const rounding = 1e-6 * choice.tested.high;
  if (dose < choice.tested.low - rounding || dose > choice.tested.high + rounding)
    return nothing(summaryWords.doseOutside);
  const curveOf = (response: string) => choice.curves.find((curve) => curve.response === response);
  const fitted = fittedAt((response) => {
    const curve = curveOf(response);
    return curve ? { mean: curve.mean(dose), low: curve.low95(dose), high: curve.high95(dose) } : null;
  });
  return withCost(
    { ...fitted, capturePct: finite(curveOf("capture_pct")?.mean(dose)) },
    costAt(dose, choice.cost),
  );
}

function withCost(found: Fitted & Pick<Results, "capturePct">, cost: CostParts): Results {
  const results = {
    ...found,
    polymerCost: finite(cost.polymer),
    disposalCost: finite(cost.disposal),
    returnCost: finite(cost.returnLoad),
    totalCost: finite(cost.total),
  };
  return { ...results, why: lackOf(results) };
}

function resultsOnSurface(
  state: StudyState,
  chain: SeriesChain,
  surfaces: NamedSurface[],
  pair: { a: number; b: number },
): Results {
  if (surfaces.length === 0) return nothing(summaryWords.noSurface);
  const surfaceOf = (response: string) => surfaces.find((one) => one.response === response)?.surface;
  const hull = surfaces[0]?.surface.hull ?? [];
  if (!insideHull(hull, [pair.a, pair.b])) return nothing(summaryWords.pairOutside);
  const fitted = fittedAt((response) => {
    const surface = surfaceOf(response);
    return surface
      ? { mean: surfaceMean(surface, pair.a, pair.b), ...surfaceBounds(surface, pair.a, pair.b) }
      : null;
  });
  const { polymerA, polymerB, disposal, total } = pairCost(
    chain,
    surfaces,
    targetsOf(state, chain.series.id),
  )(pair);
  return withCost(
    { ...fitted, capturePct: null },
    {
      polymer: polymerA === null || polymerB === null ? null : polymerA + polymerB,
      disposal,
      returnLoad: null,
      total,
    },
  );
}

/** What the study's own curves say at the approved dose. Yields between fits, each of which takes a while. */
function* resultsOf(
  state: StudyState,
  chain: SeriesChain,
  dose: { a: number; b: number | null },
): Generator<undefined, Results> {
  const { rows } = analyseRows(chain);
  if (rows.length === 0) return nothing(summaryWords.noReading);
  const curves: ResponseCurve[] = [];
  const surfaces: NamedSurface[] = [];
  for (const name of compared) {
    const found = speakingFit(rows, name, {
      name: chain.series.label,
      responses: responseSpecs,
      number: plain,
      jar: String,
    });
    if (!found.ok) return nothing(found.message);
    const { fit, surface } = found.value;
    if (fit?.report.status === "converged") curves.push(responseCurve(fit, name));
    if (surface) surfaces.push({ response: name, surface });
    yield;
  }
  const axis = axisOf(rows);
  if (axis === "surface")
    return dose.b === null
      ? nothing(summaryWords.oneDoseForTwo)
      : resultsOnSurface(state, chain, surfaces, { a: dose.a, b: dose.b });
  if (axis === "b") return nothing(summaryWords.onlyB);
  return resultsOnCurve(state, chain, curves, dose.a);
}

/** One series of a study for the comparison of studies; a series without an approved dose is only named, not fitted. */
function* summariseSeries(
  state: StudyState,
  seriesId: string,
  jarCounts: ReadonlyMap<string, number>,
): Generator<undefined, SeriesSummary> {
  const chain = seriesChain(state, seriesId);
  const picked = decisionChain(state, seriesId);
  const { series } = chain;
  const sample = state.sample[series.sampleId]!;
  const stream = state.stream[sample.streamId];
  yield;
  const results = picked
    ? yield* resultsOf(state, chain, {
        a: picked.decision.doseAKgPerT,
        b: picked.decision.doseBKgPerT,
      })
    : nothing("");
  return {
    ...studyPart(state),
    seriesId,
    seriesLabel: series.label,
    streamLabel: stream?.label ?? "",
    sludgeClass: stream?.sludgeClass ?? null,
    productA: chain.stockA?.product.label ?? null,
    productB: chain.stockB?.product.label ?? null,
    jars: jarCounts.get(seriesId) ?? chain.jars.length,
    standing: !picked ? "no dose approved" : picked.moved ? "out of date" : "approved",
    moved: picked?.moved ?? null,
    doseAKgPerT: picked?.decision.doseAKgPerT ?? null,
    doseBKgPerT: picked?.decision.doseBKgPerT ?? null,
    lowKgPerT: picked?.decision.lowKgPerT ?? null,
    highKgPerT: picked?.decision.highKgPerT ?? null,
    rule: picked?.decision.rule ?? null,
    reason: picked?.decision.reason ?? "",
    approvedBy: picked?.decision.byName ?? "",
    approvedAt: picked?.decision.at ?? null,
    turbidityUnit: series.turbidityUnit,
    ...results,
  };
}

function studyPart(state: StudyState): Pick<SeriesSummary, "studyName" | "invented" | "currency"> {
  const study = state.study["study"];
  return {
    studyName: study?.name ?? "",
    invented: study?.invented ?? false,
    currency: study?.currency ?? "",
  };
}

/**
 * Every series of a study as the comparison of studies shows it, by the study's own chain. Yields between steps of
 * some ten milliseconds, so that whoever drives it can do something else in between. `jarCounts` tells the jars of
 * series whose jars are not in the state, because they have no approved dose to be worked out.
 */
export function* summariseStudy(
  state: StudyState,
  jarCounts: ReadonlyMap<string, number> = new Map(),
): Generator<undefined, SeriesSummary[]> {
  const rows: SeriesSummary[] = [];
  for (const id of Object.keys(state.series).sort()) rows.push(yield* summariseSeries(state, id, jarCounts));
  if (rows.length > 0) return rows;
  const [stream] = Object.values(state.stream);
  return [
    {
      ...studyPart(state),
      seriesId: null,
      seriesLabel: "",
      streamLabel: stream?.label ?? "",
      sludgeClass: stream?.sludgeClass ?? null,
      productA: Object.values(state.product)[0]?.label ?? null,
      productB: null,
      jars: 0,
      standing: "no dose approved",
      moved: null,
      doseAKgPerT: null,
      doseBKgPerT: null,
      lowKgPerT: null,
      highKgPerT: null,
      rule: null,
      reason: "",
      approvedBy: "",
      approvedAt: null,
      turbidityUnit: "NTU",
      ...nothing(""),
    },
  ];
}
