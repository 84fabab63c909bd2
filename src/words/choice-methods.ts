import { area } from "./language.ts";

/** From curves to a dose that somebody approves: what each formula is for, the formula in plain signs, and where it comes from. */
export const choiceMethodWords = area("choiceMethods", {
  limits: {
    what: "Limits and working window",
    formula:
      "a limit holds where the one-sided 95 % bound of the mean curve meets it, each limit by itself; the window is their overlap within the doses tested; guard band on the failing side",
    source: "standard statistics; the guard band of 10 % is common practice, no source",
  },
  cost: {
    what: "Cost per tonne of dry solids",
    formula: "D x price / active share + capture / cake TS x disposal + (1 - capture) x return",
    source: "mass balance, recomputed independently",
  },
  desirability: {
    what: "Most desirable dose",
    formula: "geometric mean of desirabilities from worst (0) to best (1)",
    source: "Derringer and Suich 1980 (from memory)",
  },
  chanceToMiss: {
    what: "Chance to miss a limit",
    formula:
      "share of simulated new jars beyond the limit: parameters from their joint distribution, the jars' scatter, the scale error shared by all jars, the drift entered",
    source: "simulation from a fixed seed",
  },
  compare: {
    what: "Comparison at equal limits, and the saving on today's dose",
    formula:
      "each at its own cheapest dose within the same limits; share of simulated costs in which it is the cheapest; a saving is read off the same simulated curves at both doses",
    source: "simulation from a fixed seed",
  },
  nextJars: {
    what: "Next jars",
    formula:
      "doses added one after another that shrink the variance of the best dose most (c-optimal), at least two, further ones while each shrinks the interval by 6 %; enough once the range costs less than the jars",
    source: "standard theory of designs; the 6 % is our own",
  },
  quotedDose: {
    what: "Range of the dose quoted to the plant",
    formula:
      "the fit's half-width and twice the shared relative error times the dose, in quadrature; of the shared error only what the plant does not repeat",
    source: "JCGM 100 for the sum (clause from memory), recomputed independently",
  },
});
