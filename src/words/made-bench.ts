import { area } from "./language.ts";

/** How the recipe of a stock, a plan's jars, the error of a dose and the flags were made. */
export const madeBenchWords = area("madeBench", {
  recipe:
    "neat = wanted strength x whole solution / active share; its volume = neat / density; water = whole solution - neat; as supplied = wanted strength / active share",
  life: "usable from = mixing started + ageing; discard after = mixing started + life",
  designs: {
    geometric: "dose i = lowest x (highest / lowest)^((i - 1) / (steps - 1))",
    bracketing: "dose i = guess x (1 + (i - middle) x step)",
    "fix-one":
      "A in even steps from lowest to highest, B in equal ratios (even steps from 0) at each of them",
    factorial: "lowest, middle and highest of A with each of B, and the middle of both again",
    "central-composite":
      "middle ± half-range of each, corners at half-range / sqrt 2 of both, and the middle of both again",
  },
  syringe:
    "syringe = dose x sample volume x sludge density x total solids / (1000 x solution density x strength)",
  blankWater: "blank water = most that is added to any jar - what this jar's syringes hold",
  doseError:
    "twice (k = 2) the square root of the sum of squared relative standard errors; a limit ± L counts L / sqrt 3; shared: masses and active share of the solution, total solids; each jar's own: syringe, sample volume",
  inputs: {
    wanted: "wanted strength",
    whole: "whole solution",
    activeShare: "active share",
    density: "density of the neat product",
    mixed: "mixing started",
    ageing: "ageing",
    life: "life",
    low: "lowest dose",
    high: "highest dose",
    steps: "steps",
    guess: "guess",
    step: "step",
    lowB: "lowest dose B",
    highB: "highest dose B",
    stepsB: "steps of B",
    seed: "seed of the order",
    sample: "sample volume",
    sludgeDensity: "sludge density",
    solids: "total solids",
    strengthA: "strength of solution A",
    strengthB: "strength of solution B",
    solutionDensity: "density of solution A",
    most: "most that is added",
    neatMass: "standard error of the neat mass",
    shareError: "standard error of the active share",
    wholeMass: "standard error of the whole mass",
    solidsError: "standard error of the total solids",
    syringeLimit: "syringe good to ±",
    sampleLimit: "sample volume good to ±",
    shared: "shared by all jars, k = 1",
    own: "each jar's own, k = 1",
  },
  titles: {
    planDose: "doses of the plan",
    planDoseB: "doses B of the plan",
    planSyringe: (letter: string) => `syringe volumes of ${letter} in the plan`,
    planWater: "blank water of the plan",
    doseError: "how well a dose is known",
    flag: (word: string) => `the flag "${word}"`,
  },
});
