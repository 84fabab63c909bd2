import type { Method } from "./method.ts";

const worked = "test/unit/choice/worked.test.ts";
const nextJars = "test/unit/choice/next-jars.test.ts";

/** From curves to a dose that somebody approves. */
export const choiceMethods = [
  {
    id: "limits",
    what: "Limits and working window",
    formula:
      "a limit holds where the one-sided 95 % bound of the mean curve meets it, each limit by itself; the window is their overlap within the doses tested; guard band on the failing side",
    source: "standard statistics; the guard band of 10 % is common practice, no source",
    code: ["src/choice/limits.ts", "src/choice/window.ts"],
    checks: [
      {
        file: worked,
        asserts:
          "windows of a valley under two limits; a tighter one never widens; an empty one names both limits",
      },
    ],
  },
  {
    id: "cost",
    what: "Cost per tonne of dry solids",
    formula: "D x price / active share + capture / cake TS x disposal + (1 - capture) x return",
    source: "mass balance, recomputed independently",
    code: ["src/choice/cost.ts"],
    checks: [
      { file: worked, asserts: "six doses, the least at 6.832 kg/t, and the lowest dose within 1 % of it" },
      {
        file: "test/unit/plant/supply.test.ts",
        asserts: "water and cost of the worked plant",
      },
    ],
  },
  {
    id: "desirability",
    what: "Most desirable dose",
    formula: "geometric mean of desirabilities from worst (0) to best (1)",
    source: "Derringer and Suich 1980 (from memory)",
    code: ["src/choice/desirability.ts", "src/choice/rules.ts"],
    checks: [
      { file: worked, asserts: "three wishes give 0.74487, with weights 0.73834" },
      {
        file: "test/reference/worked.test.ts",
        asserts: "the published tyre tread, refitted (data from memory)",
      },
    ],
  },
  {
    id: "chanceToMiss",
    what: "Chance to miss a limit",
    formula:
      "share of simulated new jars beyond the limit: parameters from their joint distribution, the jars' scatter, the scale error shared by all jars, the drift entered",
    source: "simulation from a fixed seed",
    code: ["src/choice/miss.ts"],
    checks: [{ file: worked, asserts: "the simulated chance agrees with the normal chance it must be" }],
  },
  {
    id: "compare",
    what: "Comparison at equal limits, and the saving on today's dose",
    formula:
      "each at its own cheapest dose within the same limits; share of simulated costs in which it is the cheapest; a saving is read off the same simulated curves at both doses",
    source: "simulation from a fixed seed",
    code: ["src/choice/compare.ts", "src/choice/against-today.ts", "src/choice/pair.ts"],
    checks: [
      {
        file: nextJars,
        asserts: "two alternatives a standard deviation apart are ranked with the chance that theory gives",
      },
    ],
  },
  {
    id: "nextJars",
    what: "Next jars",
    formula:
      "doses added one after another that shrink the variance of the best dose most (c-optimal), at least two, further ones while each shrinks the interval by 6 %; enough once the range costs less than the jars",
    source: "standard theory of designs; the 6 % is our own",
    code: ["src/choice/next-jars.ts"],
    checks: [{ file: nextJars, asserts: "what is promised comes true on average when the jars are run" }],
  },
  {
    id: "quotedDose",
    what: "Range of the dose quoted to the plant",
    formula:
      "the fit's half-width and twice the shared relative error times the dose, in quadrature; of the shared error only what the plant does not repeat",
    source: "JCGM 100 for the sum (clause from memory), recomputed independently",
    code: ["src/choice/quoted-dose.ts", "src/study/derive/plant-polymer.ts"],
    checks: [
      { file: "test/unit/bench/worked.test.ts", asserts: "5.53644 with 0.1147 and 2.239 % gives 0.2732" },
      { file: "test/unit/plant/chain.test.ts", asserts: "the same from a study, by what the lots share" },
    ],
  },
] as const satisfies readonly Method[];
