import type { DoseWords } from "../../units/dose-words.ts";
import type { Alternative } from "../../choice/compare.ts";
import { costAt } from "../../choice/cost.ts";
import type { ResponseWorking } from "../../curve/analyse-types.ts";
import { simulateSurface } from "../../curve/surface-bands.ts";
import { bad, good, type Outcome } from "../../outcome.ts";
import { choiceChainWords } from "../../words/choice-chain.ts";
import type { StudyState } from "../schema/records.ts";
import { choiceChain, type Targets } from "./choice.ts";
import type { SeriesChain } from "./jars.ts";
import { pairChain } from "./pair-choice.ts";

/** A series as an alternative on cost: its cheapest dose or pair within the limits of `targets`, or why it has none. */
export function alternativeOf(
  state: StudyState,
  chain: SeriesChain,
  workings: ResponseWorking[],
  targets: Targets,
  number: (value: number) => string,
  doses: DoseWords = { number, given: number, unit: "kg/t" },
): Outcome<Alternative & { doseWords: string }> {
  const name = chain.series.label;
  const own = { ...targets, assumedCapturePct: targets.assumedCapturePct ?? null };
  if (workings.some(({ surface }) => surface)) {
    const pair = pairChain(state, chain, workings, number, own, doses);
    if (!pair?.cheapest) return bad(choiceChainWords.noLimitJudged(name));
    if (pair.cheapest.kind === "empty") return bad(choiceChainWords.ofSeries(name, pair.cheapest.sentence));
    const at = pair.cheapest.pair;
    const parts = pair.costAt(at);
    if (parts.total === null) return bad(choiceChainWords.noPolymerPrice(name));
    // A series whose disposal cannot be priced would win every comparison.
    if (parts.disposal === null && targets.disposalPerWetT !== null)
      return bad(choiceChainWords.noDisposal(name));
    const cake = pair.surfaces.find(({ response }) => response === "cake_ts_pct")?.surface;
    const polymer = (parts.polymerA ?? 0) + (parts.polymerB ?? 0);
    return good({
      name,
      doseWords: `A ${doses.number(at.a)}, B ${doses.number(at.b)} ${doses.unit}`,
      cost: parts.total,
      simulate: (normal) => {
        if (parts.disposal === null || !cake) return polymer;
        const mean = simulateSurface(cake, normal)(at.a, at.b);
        const fitted = pair.costAt(at).disposal ?? 0;
        const dryness = pair.cakeAt(at);
        return mean > 0 && dryness !== null ? polymer + (fitted * dryness) / mean : null;
      },
    });
  }
  const choice = choiceChain(state, chain, workings, number, own, doses);
  const rule = choice?.rules.find((one) => one.rule === "cheapest-in-limits");
  if (!choice || !rule) return bad(choiceChainWords.nothingFitted(name));
  if (rule.dose === null) return bad(choiceChainWords.ofSeries(name, rule.why));
  if (rule.cost?.total == null) return bad(choiceChainWords.noPrice(name));
  if (rule.cost.disposal === null && targets.disposalPerWetT !== null)
    return bad(choiceChainWords.noDisposal(name));
  const dose = rule.dose;
  const curve = (response: string) => choice.curves.find((one) => one.response === response);
  return good({
    name,
    doseWords: `${doses.number(dose)} ${doses.unit}`,
    cost: rule.cost.total,
    simulate: (normal) => {
      const cake = curve("cake_ts_pct")?.simulate?.(normal) ?? choice.cost.cakePct;
      return costAt(dose, { ...choice.cost, cakePct: cake }).total;
    },
  });
}
