import { costAt, type CostInput } from "../../choice/cost.ts";
import type { RuleResult } from "../../choice/rules.ts";
import { sourceOf } from "../../methods/methods.ts";
import { madeChoiceWords } from "../../words/made-choice.ts";
import type { Made } from "./figure.ts";

/** How the cost of a tonne of dry solids at a dose was made. */
export function costMade(doseKgPerT: number, cost: CostInput, currency: string): Made {
  const parts = costAt(doseKgPerT, cost);
  const names = madeChoiceWords.inputs;
  return {
    formula: madeChoiceWords.cost,
    inputs: [
      { name: names.dose, value: doseKgPerT, unit: "kg/t" },
      { name: names.price, value: cost.pricePerKgNeat, unit: `${currency}/kg` },
      { name: names.activeShare, value: cost.activePct, unit: "%" },
      { name: names.cake, value: cost.cakePct?.(doseKgPerT) ?? null, unit: "%" },
      { name: names.capture, value: cost.capturePct?.(doseKgPerT) ?? null, unit: "%" },
      { name: names.disposalOfCake, value: cost.disposalPerWetT, unit: `${currency}/t` },
      { name: names.returnLoad, value: cost.returnPerT, unit: `${currency}/t` },
      { name: names.polymer, value: parts.polymer, unit: currency },
      { name: names.disposal, value: parts.disposal, unit: currency },
      { name: names.return, value: parts.returnLoad, unit: currency },
    ],
    source: sourceOf("cost"),
  };
}

const methodOfRule = {
  minimum: "interval",
  knee: "knee",
  "cheapest-in-limits": "limits",
  "least-cost": "cost",
  "near-least-cost": "cost",
  desirability: "desirability",
} as const;

/** How the row of a rule was made: its dose, its cost and its chance to miss a limit. */
export function ruleMade(
  rule: RuleResult,
  cost: CostInput,
  currency: string,
  chance: { value: number | null; draws: number; seed: number },
): Made {
  const costOf = costMade(rule.dose ?? 0, cost, currency);
  const sources = [sourceOf(methodOfRule[rule.rule]), costOf.source, sourceOf("chanceToMiss")];
  return {
    formula: madeChoiceWords.rule(madeChoiceWords.rules[rule.rule], costOf.formula),
    inputs: [
      ...costOf.inputs,
      {
        name: madeChoiceWords.inputs.miss,
        value: chance.value === null ? null : chance.value * 100,
        unit: "%",
      },
      { name: madeChoiceWords.inputs.draws, value: `${chance.draws}, ${chance.seed}`, unit: "" },
    ],
    source: [...new Set(sources)].join("; "),
  };
}
