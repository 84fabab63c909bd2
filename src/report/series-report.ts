import { choiceChain, targetsOf, type ChoiceChain, type Targets } from "../study/derive/choice.ts";
import { decisionChain, type DecisionChain } from "../study/derive/decision.ts";
import { seriesChain, type SeriesChain } from "../study/derive/jars.ts";
import { pairChain, type PairChain } from "../study/derive/pair-choice.ts";
import { runsOf, type RunChain } from "../study/derive/plant-runs.ts";
import { plantChain, type PlantChain } from "../study/derive/plant.ts";
import type { StudyState } from "../study/schema/records.ts";
import { unitText } from "../units/display.ts";
import type { DoseWords } from "../units/dose-words.ts";
import type { SeriesFits } from "./series-fits.ts";
import type { PaperWords } from "./words.ts";

/** One series with everything that follows from it, from its jars to the plant. */
export interface SeriesReport extends SeriesFits {
  chain: SeriesChain;
  targets: Targets | null;
  choice: ChoiceChain | null;
  pair: PairChain | null;
  decision: DecisionChain | null;
  plant: PlantChain;
  runs: RunChain[];
}

/** The polymer whose dose varies, where only one does. */
export const letterOf = ({ analysis }: SeriesFits): "A" | "B" => (analysis?.axis === "b" ? "B" : "A");

/** The approved dose of that polymer, kg/t; null without one. */
export function approvedDoseOf(one: SeriesReport): number | null {
  const picked = one.decision?.decision;
  return (letterOf(one) === "B" ? picked?.doseBKgPerT : picked?.doseAKgPerT) ?? null;
}

/** Follows a series to the plant by the same functions as the screens. The series must exist. */
export function seriesReport(state: StudyState, fits: SeriesFits, words: PaperWords): SeriesReport {
  const { seriesId, analysis, workings } = fits;
  const chain = seriesChain(state, seriesId);
  const number = (value: number) => words.entered(value);
  const doses: DoseWords = {
    number: (dose) => words.bare(dose, "doseKgPerT"),
    given: (dose) => words.givenBare(dose, "doseKgPerT"),
    unit: `${unitText("doseKgPerT", "metric")} (${unitText("doseKgPerT", "us")})`,
  };
  const surface = analysis?.axis === "surface";
  const choice =
    workings.length > 0 && !surface ? choiceChain(state, chain, workings, number, undefined, doses) : null;
  const decision = decisionChain(state, seriesId);
  const dose = decision ? { a: decision.decision.doseAKgPerT, b: decision.decision.doseBKgPerT } : null;
  return {
    ...fits,
    chain,
    targets: targetsOf(state, seriesId),
    choice,
    pair: surface ? pairChain(state, chain, workings, number, undefined, doses) : null,
    decision,
    runs: runsOf(state, seriesId),
    plant: plantChain(state, seriesId, dose, dose ? expectedAt(choice, dose.a) : undefined),
  };
}

/** Cake and capture that the curves promise at a dose. */
function expectedAt(
  choice: ChoiceChain | null,
  dose: number,
): { cakePct: number | null; capturePct: number | null } {
  const at = (response: string) => {
    const value = choice?.curves.find((curve) => curve.response === response)?.mean(dose);
    return value !== undefined && Number.isFinite(value) ? value : null;
  };
  return {
    cakePct: at("cake_ts_pct"),
    capturePct: at("capture_pct") ?? choice?.cost.capturePct?.(dose) ?? null,
  };
}
