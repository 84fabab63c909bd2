import { area } from "./language.ts";

/** How the costs, the rules and the comparison of series were made, behind their numbers. */
export const madeChoiceWords = area("madeChoice", {
  cost: "dose x price / active share + capture / cake TS x disposal + (1 - capture) x return; parts without a price are left out",
  inputs: {
    dose: "dose, active",
    price: "price of the neat product",
    activeShare: "active share",
    cake: "cake TS at this dose",
    capture: "capture at this dose",
    disposalOfCake: "disposal of wet cake",
    returnLoad: "return load",
    polymer: "polymer",
    disposal: "disposal",
    return: "return",
    miss: "chance to miss",
    draws: "draws, from seed",
    cheapest: "cheapest dose, active",
  },
  costSource: "mass balance; trade formulas, section 5",
  rules: {
    minimum:
      "the dose where the suggested curve of this response is best; 95 % by profile, widened over tied models",
    knee: "the dose that reaches a share of the gain on the suggested curve; 95 % by profile, widened over tied models",
    "cheapest-in-limits":
      "lowest total cost over the doses where every limit holds at its one-sided 95 % bound, drawn in by the guard band",
    "least-cost": "lowest total cost over the doses tested",
    "near-least-cost": "lowest dose within the limits whose cost is within 1 % of the least",
    desirability: "highest geometric mean of the desirabilities, from worst (0) to best (1)",
  },
  rule: (dose: string, cost: string) =>
    `dose: ${dose}. Cost: ${cost}. Chance: share of simulated curves that miss the likeliest limit there`,
  ruleSource:
    "fitted curves of this series; trade formulas, sections 5 and 6; guard band of 10 %: common practice, no source",
  compared:
    "dose x price / active share + capture / cake TS x disposal + (1 - capture) x return, at the series' own cheapest dose within the limits; chance: share of simulated cake curves in which it is the cheapest",
  comparedSource: "trade formulas, section 5; fitted curves of each series",
});
