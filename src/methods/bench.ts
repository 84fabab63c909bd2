import type { Method } from "./method.ts";

const worked = "test/unit/bench/worked.test.ts";

/** From the sample to what is read of a jar. */
export const benchMethods = [
  {
    id: "solids",
    what: "Total and volatile solids",
    formula:
      "TS = 100 (dry - tare) / (wet - tare); VS = 100 (dry - ash) / (dry - tare); mean of the dishes, spread t(n - 1) s / sqrt(n) at 95 %",
    source: "Standard Methods 2540 G; EN 15934 and EN 15935 (numbers from memory)",
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
    what: "Sludge density, where not measured",
    formula:
      "1/rho = TS/rho_solids + (1 - TS)/rho_water; 1/rho_solids = VS/1.00 + (1 - VS)/2.50; VS 75 % assumed until the dishes are ashed",
    source: "textbook two-part density, from memory; the assumed VS is common practice, no source",
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
    what: "Strength of a stock solution",
    formula: "active = active share x neat mass / whole mass; as supplied = neat mass / whole mass",
    source: "mass balance",
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
    what: "Usable-from and discard-after of a solution",
    formula: "by form and strength, unless the study has the supplier's own",
    source: "common practice, no source",
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
    what: "Dose of a jar",
    formula:
      "D = 1000 x syringe x solution density x strength / (sample volume x sludge density x TS), kg active per t dry solids; as supplied = D / active share; 1 kg/t = 2 lb per short ton exactly",
    source: "mass balance, recomputed independently (25.00 mL of 0.2 % on 500 mL at 2.5 % gives 3.988 kg/t)",
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
    what: "Uncertainty of a dose",
    formula:
      "relative parts in quadrature; a limit of plus or minus L counts L / sqrt(3); parts shared by all jars are kept apart and cancel only where the plant uses the very same record",
    source: "JCGM 100:2008 (clause numbers from memory); the whole recomputed by Monte Carlo",
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
    what: "Turbidity and suspended solids of the filtrate",
    formula: "turbidity = reading x dilution; TSS = (dry - tare) / volume",
    source: "Standard Methods 2130 B and 2540 D (from memory)",
    code: ["src/bench/measurements.ts", "src/sample/solids.ts", "src/responses/turbidity.ts"],
    checks: [{ file: "test/unit/sample/worked.test.ts", asserts: "643.0 mg/L from 0.0643 g on 100 mL" }],
  },
  {
    id: "suctionTime",
    what: "Capillary suction time",
    formula:
      "normalised = (CST - CST of water) / TS in g/L; at 20 °C = CST x viscosity at 20 °C / viscosity at the test's temperature",
    source:
      "Standard Methods 2710 G (number from memory); EN 14701-1; the correction by viscosity is from memory",
    code: ["src/bench/measurements.ts", "src/study/derive/measurements.ts"],
    checks: [
      { file: worked, asserts: "0.2480 s L/g, and 18.0 s at 15 °C is 15.85 s at 20 °C" },
      { file: "test/unit/study/measurements.test.ts", asserts: "both from a study's readings" },
    ],
  },
  {
    id: "drainage",
    what: "Drained share, press pressure and cake, time to filter",
    formula:
      "drained share = volume / (sample + added liquid); pressure = force / piston area; cake TS as for dishes; normalised time = time / TS in g/L",
    source:
      "EN 14701-4:2018 for the drainage; Standard Methods 2710 H for the filter (conditions from memory); the press is common practice, no source",
    code: ["src/bench/measurements.ts", "src/study/derive/measurements.ts"],
    checks: [
      { file: worked, asserts: "196 of 525 mL is 37.33 %; 300 N on 50 mm is 152.79 kPa; cake 19.932 %" },
    ],
  },
  {
    id: "resistance",
    what: "Specific resistance to filtration",
    formula:
      "t/V = b V + c over the straight part; SRF = 2 x pressure x area^2 x b / (viscosity x dry cake per volume of filtrate), water's viscosity at the test's temperature",
    source: "textbook cake filtration, from memory; recomputed independently (2.335e11 m/kg)",
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
    what: "Viscosity of water",
    formula: "280.68 x^-1.9 + 511.45 x^-7.7 + 61.131 x^-19.6 + 0.45903 x^-40 µPa s, x = T / 300 K",
    source: "Pátek et al. 2009 (coefficients from memory, checked against 1.0016 mPa s at 20 °C)",
    code: ["src/bench/water.ts"],
    checks: [{ file: worked, asserts: "seven values from 5 to 35 °C" }],
  },
  {
    id: "flocStrength",
    what: "Floc broken and regrown",
    formula: "strength = broken / first size; recovery = (regrown - broken) / (first - broken)",
    source: "common practice, from memory",
    code: ["src/bench/measurements.ts", "src/study/derive/measurements.ts"],
    checks: [
      { file: "test/unit/study/measurements.test.ts", asserts: "strength and recovery from three sizes" },
    ],
  },
  {
    id: "mixing",
    what: "Mixing energy",
    formula:
      "P = power number x density x n^3 x diameter^5; G = sqrt(P / (viscosity x volume)); pouring, at most: G = sqrt(pours x density x g x height / (viscosity x time)); in line: G = sqrt(pressure drop / (viscosity x residence time)); Camp number G t; water's viscosity stands for the sludge's",
    source: "textbook definitions, from memory; nominal, since sludge is thicker than water",
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
    what: "Capture",
    formula:
      "R = C (F - (1 + d) E) / (F (C - E)), with feed F and filtrate E as TSS, cake C as TS, d added liquid over feed",
    source: "three-stream mass balance, recomputed independently",
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
    what: "Doses of a plan",
    formula:
      "bracketing, a geometric ladder in duplicate, factorial or central composite corners at 1 / sqrt 2; every jar is filled up with blank water to one volume; the order is shuffled from a seed",
    source: "usual designs, from memory; the usual doses it starts from are common practice, no source",
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
    what: "Quality flags",
    formula:
      "re-reads apart by more than 10 % (TSS, CST), 3 % (cake) or 20 % (SRF) of their mean; dishes by more than 5 %; the standard jar moved by more than 15 %; a sample older than a day; a dose outside the usual ones whose product with, or quotient by, the active share lies inside",
    source: "common practice, no source",
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
] as const satisfies readonly Method[];
