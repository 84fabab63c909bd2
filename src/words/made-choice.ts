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
  compared:
    "dose x price / active share + capture / cake TS x disposal + (1 - capture) x return, at the series' own cheapest dose within the limits; chance: share of simulated cake curves in which it is the cheapest",
  limit:
    "a limit holds at a dose where the one-sided 95 % bound of the mean curve meets it, by itself; the ends are found on 400 steps and narrowed by halving; pale: where the mean meets it",
  window: "overlap of the doses at which each limit holds, within the doses tested",
  edge: "distance to the nearest end of the doses at which a limit holds; the end of the doses tested is none",
  miss: "share of simulated jars at this dose that miss a limit: dose x (1 + shared error) / (1 + drift), curve and one jar's scatter drawn at random; the likeliest limit is told",
  against:
    "cost at the rule's dose - cost at today's dose; range and chance: 2.5 to 97.5 % of the simulated differences, both doses on the same drawn curves, and the share of them below 0; a year: x dry solids a year",
  present:
    "dose = pump flow x its density x active share / (feed flow x sludge density x total solids); flow from the pump's line at this setting",
  pairCost:
    "dose A x price A / active share A + dose B x price B / active share B + capture / cake TS x disposal; the return load is left out",
  cheapestPair:
    "lowest cost (least polymer where nothing is priced) over a grid of 121 by 121 pairs within those tested, where every limit holds at its one-sided 95 % bound",
  limitInputs: {
    limit: (limit: string) => `limit: ${limit}`,
    mean: "fitted there",
    bound: "one-sided 95 % bound there",
    held: "held with confidence",
    atMean: "held at the mean",
    missed: "missed with a chance of",
    testedLow: "lowest dose tested",
    testedHigh: "highest dose tested",
    shared: "error all jars share that the plant does not repeat",
    drift: "drift of the feed's solids (1 sd)",
    today: "today's dose, active",
    drySolids: "dry solids a year",
    setting: "setting",
    flow: "pump flow",
    flowDensity: "density of what the pump moves",
    active: "its active share",
    feed: "feed flow",
    solids: "total solids",
    density: "sludge density",
    half: "half of the fit's interval",
    noInterval: "none for this dose",
    priceA: "price of A, neat",
    priceB: "price of B, neat",
    activeA: "active share of A",
    activeB: "active share of B",
    assumedCapture: "capture, assumed",
    cost: "cost there",
    nowhere: "nowhere",
  },
  titles: {
    limit: (limit: string) => `where ${limit} holds`,
    window: "working window",
    expected: (column: string) => `${column} at the doses of the rules`,
    edge: "distance to the failing edge",
    miss: "chance to miss",
    against: "change against today",
    table: "cost against dose",
    present: "present dose from the pump setting",
    pairCost: "cost at the pair looked at",
    cheapestPair: "cheapest pair within all limits",
  },
});
