import type { curveMethodWords } from "../words/curve-methods.ts";
import type { MethodEntry } from "./method.ts";

const trade = "test/unit/curve/trade-worked.test.ts";
const property = "test/property/curve.test.ts";
const published = "test/reference/worked.test.ts";
const verdicts = "test/unit/curve/analyse.test.ts";

/** From the jars' responses to curves and what they say. */
export const curveMethods = [
  {
    id: "fits",
    code: [
      "src/curve/estimate.ts",
      "src/curve/levenberg-marquardt.ts",
      "src/curve/likelihood.ts",
      "src/curve/jars.ts",
    ],
    checks: [
      { file: "test/reference/nist-linear.test.ts", asserts: "certified digits of the linear sets" },
      { file: "test/reference/nist-nonlinear.test.ts", asserts: "certified digits of the nonlinear sets" },
      {
        file: property,
        asserts: "a bound far from the curve changes nothing: likelihood meets least squares",
      },
    ],
  },
  {
    id: "models",
    code: ["src/curve/models/registry.ts", "src/curve/models/polynomial.ts"],
    checks: [
      { file: trade, asserts: "parameters of a valley, a saturating cake, a plateau and a drainage curve" },
      { file: property, asserts: "every model's gradient against central differences" },
    ],
  },
  {
    id: "band",
    code: ["src/curve/bands.ts", "src/curve/surface-bands.ts", "src/study/derive/made-fit.ts"],
    checks: [
      {
        file: "test/unit/study/made-fit.test.ts",
        asserts:
          "bounds of a straight line by its closed formula; every fitted value again from its own inputs",
      },
    ],
  },
  {
    id: "choiceOfModel",
    code: ["src/curve/aicc.ts", "src/curve/lack-of-fit.ts", "src/curve/analyse-candidates.ts"],
    checks: [
      { file: trade, asserts: "AICc on both scales; the cubic in ln dose has the lowest" },
      { file: published, asserts: "lack of fit of published lines" },
      {
        file: verdicts,
        asserts: "six single jars of a clear valley are enough; tied models apart are ambiguous",
      },
    ],
  },
  {
    id: "interval",
    code: ["src/curve/profile.ts", "src/curve/intervals.ts", "src/curve/bootstrap.ts"],
    checks: [
      { file: trade, asserts: "4.5055 to 5.2343 by delta, 4.5510 to 5.3267 by Fieller and by profile" },
      { file: published, asserts: "Fieller's three kinds of interval, and the profile agrees" },
      {
        file: "test/bench/coverage.ts",
        asserts: "counts, in the bench, how often the intervals hold the truth",
      },
    ],
  },
  {
    id: "knee",
    code: [
      "src/curve/models/saturating-exponential.ts",
      "src/curve/models/log-logistic.ts",
      "src/curve/models/logistic.ts",
      "src/curve/models/plateau.ts",
    ],
    checks: [{ file: trade, asserts: "90 % and 95 % of the gain of the cake and of the drainage curve" }],
  },
  {
    id: "outliers",
    code: ["src/curve/diagnostics.ts", "src/curve/robust.ts"],
    checks: [
      { file: verdicts, asserts: "which jar moves the dose most, and what an outlier hides" },
      {
        file: "test/unit/choice/next-jars.test.ts",
        asserts: "a bisquare refit sets a wild jar aside and stays put where there is none",
      },
    ],
  },
  {
    id: "surface",
    code: ["src/curve/surface.ts", "src/curve/canonical.ts", "src/curve/surface-bands.ts"],
    checks: [
      { file: trade, asserts: "six coefficients and the stationary point of eleven jars" },
      { file: published, asserts: "published surfaces: a yield, blocks, a reduced model, three factors" },
    ],
  },
] as const satisfies readonly MethodEntry<keyof typeof curveMethodWords>[];
