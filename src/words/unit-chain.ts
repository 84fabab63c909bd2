import { area } from "./language.ts";

/** The make-down unit and the polymer that goes to land: figures, how they were made, and the verdicts. */
export const unitChainWords = area("unitChain", {
  solutionDrawn: "solution drawn",
  ageingTime: "ageing time",
  deadVolume: "dead volume",
  fillingTime: "filling time",
  wettingTime: "wetting time",
  transferTime: "transfer time",
  batch: "batch",
  neatProduct: "neat product",
  containerOf: (product: string) => `container of ${product}`,
  containersInStock: "containers in stock",
  ageingVolume: { title: "Ageing volume needed", formula: "solution x ageing time x (1 + dead volume)" },
  batchLasts: { title: "One batch lasts", formula: "60 x batch / solution drawn" },
  nextTakes: { title: "The next one takes", formula: "fill + wet + age + transfer" },
  leastBatch: {
    title: "Batch that just keeps up",
    formula: "solution drawn x (fill + wet + age + transfer)",
  },
  neatPerDay: { title: "Neat product a day", formula: "neat x hours" },
  neatPerMonth: { title: "Neat product a month", formula: "a twelfth of the year" },
  neatPerYear: { title: "Neat product a year", formula: "neat x hours x days" },
  containersPerYear: { title: "Containers a year", formula: "use a year / container" },
  stockDays: { title: "Running days in stock", formula: "containers x container / use a day" },
  nothingDrawn: "Nothing is drawn at a dose of 0.",
  toTell: (lack: string) => `To tell whether the unit keeps up: ${lack}.`,
  enterTank: "To tell whether the unit keeps up: enter the ageing tank that is there.",
  batchKeepsUp: "The unit keeps up: a batch lasts longer than the next one takes.",
  batchTooSlow:
    "The unit does not keep up: a batch is used before the next is ready. Larger batches, a second tank, a stronger solution, or a shorter day of feed.",
  tankKeepsUp: "The unit keeps up: the ageing tank is large enough for this draw.",
  tankTooSmall:
    "The ageing tank is too small for this draw: polymer leaves it before it has aged. A larger tank, a stronger solution or less feed.",
  land: {
    limitTitle: "Highest dose",
    limitFormula: "limit per hectare / dry solids spread in the same years",
    limit: "limit",
    limitUnit: "kg active/ha",
    drySolidsSpread: "dry solids spread",
    totalTitle: "Dose, all together",
    totalFormula: "doses here + dosed elsewhere",
    totalSource: "sum",
    doseHere: "dose here",
    doseElsewhere: "dose elsewhere on the same solids (0 for none)",
    lacking: (lack: string) => `To have this check: ${lack}.`,
    within: "Within the limit entered. Local rules govern, and this is no legal advice.",
    above:
      "Above the limit entered: less polymer, another way of disposal, or spread on more land. Local rules govern, and this is no legal advice.",
  },
});
