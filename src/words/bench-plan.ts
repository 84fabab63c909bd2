import { area } from "./language.ts";

/** The plan of a trial on the Bench: its designs and entries, why nothing can be planned, and the jars it would lay out. */
export const benchPlanWords = area("benchPlan", {
  title: "Plan a trial",
  design: "Design",
  designs: {
    factorial: "three by three, with centres",
    composite: "central composite",
    ladders: "ladders: hold A, vary B",
    ladder: "ladder, equal ratios",
    bracket: "bracket around a guess",
  },
  entries: {
    low: "Lowest dose",
    high: "Highest dose",
    lowA: "Lowest dose A",
    highA: "Highest dose A",
    lowB: "Lowest dose B",
    highB: "Highest dose B",
    steps: "Steps",
    stepsA: "Steps of A",
    stepsB: "Steps of B",
    guess: "Guess",
    step: "Step, % of the guess",
    replicates: "Jars for each dose",
    seed: "Seed of the running order",
  },
  /** a label of an entry as it stands within a sentence */
  within: (label: string) => label.toLowerCase(),
  enterFirst: (entry: string) => `Enter this first: ${entry}.`,
  belowHighest: (label: string) => `${label} must be below the highest: lower the one or raise the other.`,
  notNegative: (label: string) => `${label} must not be negative.`,
  aboveZero: (label: string) => `${label} must be above 0: a jar without polymer is added apart.`,
  wholeNumber: (label: string, least: number, most: number) =>
    `${label} must be a whole number from ${least} to ${most}.`,
  stockFirst: "Pick a stock solution with a known strength first.",
  stockBUnknown: "The strength of polymer B's stock solution is not known yet.",
  check: (entry: string) => `Check ${entry}: it cannot be planned with.`,
  laidOut: (count: number) => `laid out ${count} planned jars`,
  usual: (low: string, high: string, unit: string, source: string) =>
    `The range starts from the usual ${low} to ${high} ${unit} active for this kind of sludge (${source}); a range-finder of four jars narrows it.`,
  noUsual: "Say what kind of sludge it is in the Sample room, and the range starts from its usual doses.",
  terms: {
    before: "A",
    replicate: "replicate",
    between: "shows how far jars differ by themselves; a",
    noPolymer: "no-polymer jar",
    after: "shows where the sludge stands without help.",
  },
  table: {
    name: "The planned jars",
    order: "order",
    doseA: (unit: string) => `dose A, ${unit}`,
    doseB: "dose B",
    syringe: (letter: string) => `syringe ${letter}, mL`,
    blankWater: "blank water,",
    jar: "jar",
  },
  layOut: (count: number) => `Lay out these ${count} jars`,
});
