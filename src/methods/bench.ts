import type { benchMethodWords } from "../words/bench-methods.ts";
import type { MethodEntry } from "./method.ts";

const worked = "test/unit/bench/worked.test.ts";

/** From the sample to what is read of a jar. */
export const benchMethods = [
  {
    id: "solids",
    code: ["src/sample/solids.ts", "src/study/derive/sample.ts"],
    checks: [
      {
        file: "test/unit/sample/worked.test.ts",
        asserts: "three dishes, their mean, spread and relative difference; masses out of order are refused",
      },
    ],
  },
  {
    id: "density",
    code: ["src/sample/density.ts", "src/study/derive/sample.ts"],
    checks: [
      {
        file: "test/unit/sample/worked.test.ts",
        asserts: "1.0020, 1.0073 and 1.0326 kg/L at three pairs of TS and VS, recomputed independently",
      },
    ],
  },
  {
    id: "strength",
    code: ["src/product/make-down.ts", "src/study/derive/stock.ts"],
    checks: [
      {
        file: "test/unit/sample/worked.test.ts",
        asserts: "make-down of 500 g at 0.2 % both ways: recipe from strength, strength from masses",
      },
    ],
  },
  {
    id: "life",
    code: ["src/product/life.ts", "src/study/derive/stock.ts"],
    checks: [
      {
        file: "test/unit/study/derive.test.ts",
        asserts: "a solution's clock in words at several moments of its life",
      },
    ],
  },
  {
    id: "dose",
    code: ["src/bench/dose.ts", "src/study/derive/jars.ts", "src/units/constants.ts"],
    checks: [
      {
        file: worked,
        asserts:
          "3.98804 kg/t and the same dose on every other basis; the volumes for six doses, turned round",
      },
      { file: "test/property/numbers.test.ts", asserts: "dose to volume to dose is the same dose" },
    ],
  },
  {
    id: "doseUncertainty",
    code: ["src/bench/dose-uncertainty.ts", "src/study/derive/jar-uncertainty.ts"],
    checks: [
      {
        file: worked,
        asserts: "2.239 % shared and 1.519 % of each jar, 2.7056 % together, and what cancels",
      },
      { file: "test/unit/study/measurements.test.ts", asserts: "the same split from a study's own records" },
    ],
  },
  {
    id: "clarity",
    code: ["src/bench/measurements.ts", "src/sample/solids.ts", "src/responses/turbidity.ts"],
    checks: [{ file: "test/unit/sample/worked.test.ts", asserts: "643.0 mg/L from 0.0643 g on 100 mL" }],
  },
  {
    id: "suctionTime",
    code: ["src/bench/measurements.ts", "src/study/derive/measurements.ts"],
    checks: [
      { file: worked, asserts: "0.2480 s L/g, and 18.0 s at 15 °C is 15.85 s at 20 °C" },
      { file: "test/unit/study/measurements.test.ts", asserts: "both from a study's readings" },
    ],
  },
  {
    id: "drainage",
    code: ["src/bench/measurements.ts", "src/study/derive/measurements.ts"],
    checks: [
      { file: worked, asserts: "196 of 525 mL is 37.33 %; 300 N on 50 mm is 152.79 kPa; cake 19.932 %" },
    ],
  },
  {
    id: "resistance",
    code: ["src/bench/measurements.ts", "src/responses/srf.ts"],
    checks: [
      {
        file: worked,
        asserts: "2.33467e11 m/kg from six volumes",
      },
    ],
  },
  {
    id: "viscosity",
    code: ["src/bench/water.ts"],
    checks: [{ file: worked, asserts: "seven values from 5 to 35 °C" }],
  },
  {
    id: "flocStrength",
    code: ["src/bench/measurements.ts", "src/study/derive/measurements.ts"],
    checks: [
      { file: "test/unit/study/measurements.test.ts", asserts: "strength and recovery from three sizes" },
    ],
  },
  {
    id: "mixing",
    code: ["src/bench/mixing.ts", "src/study/derive/measurements.ts", "src/study/derive/plant-mixing.ts"],
    checks: [
      { file: worked, asserts: "G at several speeds of one paddle, by pouring and in line" },
      {
        file: "test/unit/plant/supply.test.ts",
        asserts: "bench against plant: alike, too much, too little, and the jar time that would match",
      },
    ],
  },
  {
    id: "capture",
    code: ["src/bench/capture.ts", "src/study/derive/jars.ts", "src/study/derive/choice.ts"],
    checks: [
      {
        file: worked,
        asserts: "97.8937, 97.7733 and 97.0512 % with more and more added liquid",
      },
    ],
  },
  {
    id: "plan",
    code: ["src/bench/plan.ts", "src/bench/usual-doses.ts"],
    checks: [
      {
        file: "test/unit/bench/plan.test.ts",
        asserts: "roles, repeats, volumes and corners of each design, and its warnings",
      },
    ],
  },
  {
    id: "quality",
    code: [
      "src/study/derive/quality/jar-checks.ts",
      "src/study/derive/quality/sample-checks.ts",
      "src/sample/solids.ts",
    ],
    checks: [
      {
        file: "test/unit/study/quality.test.ts",
        asserts: "each slip is seen beyond its band, and not within it",
      },
    ],
  },
] as const satisfies readonly MethodEntry<keyof typeof benchMethodWords>[];
