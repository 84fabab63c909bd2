import type { choiceMethodWords } from "../words/choice-methods.ts";
import type { MethodEntry } from "./method.ts";

const worked = "test/unit/choice/worked.test.ts";
const nextJars = "test/unit/choice/next-jars.test.ts";

/** From curves to a dose that somebody approves. */
export const choiceMethods = [
  {
    id: "limits",
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
    code: ["src/choice/miss.ts"],
    checks: [{ file: worked, asserts: "the simulated chance agrees with the normal chance it must be" }],
  },
  {
    id: "compare",
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
    code: ["src/choice/next-jars.ts"],
    checks: [{ file: nextJars, asserts: "what is promised comes true on average when the jars are run" }],
  },
  {
    id: "quotedDose",
    code: ["src/choice/quoted-dose.ts", "src/study/derive/plant-polymer.ts"],
    checks: [
      { file: "test/unit/bench/worked.test.ts", asserts: "5.53644 with 0.1147 and 2.239 % gives 0.2732" },
      { file: "test/unit/plant/chain.test.ts", asserts: "the same from a study, by what the lots share" },
    ],
  },
] as const satisfies readonly MethodEntry<keyof typeof choiceMethodWords>[];
