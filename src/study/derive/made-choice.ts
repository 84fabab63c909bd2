import { costAt, type CostInput } from "../../choice/cost.ts";
import type { RuleResult } from "../../choice/rules.ts";
import type { Made } from "./figure.ts";

/** How the cost of a tonne of dry solids at a dose was made. */
export function costMade(doseKgPerT: number, cost: CostInput, currency: string): Made {
  const parts = costAt(doseKgPerT, cost);
  return {
    formula:
      "dose x price / active share + capture / cake TS x disposal + (1 - capture) x return; parts without a price are left out",
    inputs: [
      { name: "dose, active", value: doseKgPerT, unit: "kg/t" },
      { name: "price of the neat product", value: cost.pricePerKgNeat, unit: `${currency}/kg` },
      { name: "active share", value: cost.activePct, unit: "%" },
      { name: "cake TS at this dose", value: cost.cakePct?.(doseKgPerT) ?? null, unit: "%" },
      { name: "capture at this dose", value: cost.capturePct?.(doseKgPerT) ?? null, unit: "%" },
      { name: "disposal of wet cake", value: cost.disposalPerWetT, unit: `${currency}/t` },
      { name: "return load", value: cost.returnPerT, unit: `${currency}/t` },
      { name: "polymer", value: parts.polymer, unit: currency },
      { name: "disposal", value: parts.disposal, unit: currency },
      { name: "return", value: parts.returnLoad, unit: currency },
    ],
    source: "mass balance; trade formulas, section 5",
  };
}

const ruleFormulas: Record<RuleResult["rule"], string> = {
  minimum:
    "the dose where the suggested curve of this response is best; 95 % by profile, widened over tied models",
  knee: "the dose that reaches a share of the gain on the suggested curve; 95 % by profile, widened over tied models",
  "cheapest-in-limits":
    "lowest total cost over the doses where every limit holds at its one-sided 95 % bound, drawn in by the guard band",
  "least-cost": "lowest total cost over the doses tested",
  "near-least-cost": "lowest dose within the limits whose cost is within 1 % of the least",
  desirability: "highest geometric mean of the desirabilities, from worst (0) to best (1)",
};

/** How the row of a rule was made: its dose, its cost and its chance to miss a limit. */
export function ruleMade(
  rule: RuleResult,
  cost: CostInput,
  currency: string,
  chance: { value: number | null; draws: number; seed: number },
): Made {
  const dose = rule.dose ?? 0;
  return {
    formula: `dose: ${ruleFormulas[rule.rule]}. Cost: ${costMade(dose, cost, currency).formula}. Chance: share of simulated curves that miss the likeliest limit there`,
    inputs: [
      ...costMade(dose, cost, currency).inputs,
      { name: "chance to miss", value: chance.value === null ? null : chance.value * 100, unit: "%" },
      { name: "draws, from seed", value: `${chance.draws}, ${chance.seed}`, unit: "" },
    ],
    source:
      "fitted curves of this series; trade formulas, sections 5 and 6; guard band of 10 %: common practice, no source",
  };
}
