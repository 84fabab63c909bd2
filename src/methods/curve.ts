import type { Method } from "./method.ts";

const trade = "test/unit/curve/trade-worked.test.ts";
const property = "test/property/curve.test.ts";
const published = "test/reference/worked.test.ts";
const verdicts = "test/unit/curve/analyse.test.ts";

/** From the jars' responses to curves and what they say. */
export const curveMethods = [
  {
    id: "fits",
    what: "Fits",
    formula:
      "least squares, on the natural log for turbidity, TSS, CST and SRF (values are then medians); readings beyond an instrument's range by maximum likelihood; a jar read again is one point",
    source: "standard statistics; the fitting code reproduces the NIST reference sets",
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
    what: "Models",
    formula:
      "constant; b0 + b1 x; b0 + b1 x + b2 x^2 and with b3 x^3, in dose or ln dose; start + gain (1 - e^(-rate x)); top - slope max(0, knee - x); base - depth e^(-(x - centre)^2 / (2 spread^2)); lower + (upper - lower) / (1 + e^(-steepness (x - mid))); lower + (upper - lower) / (1 + (ed50 / x)^slope)",
    source: "textbook shapes",
    code: ["src/curve/models/registry.ts", "src/curve/models/polynomial.ts"],
    checks: [
      { file: trade, asserts: "parameters of a valley, a saturating cake, a plateau and a drainage curve" },
      { file: property, asserts: "every model's gradient against central differences" },
    ],
  },
  {
    id: "choiceOfModel",
    what: "Choice among models",
    formula:
      "AICc = n ln(rss/n) + 2K + 2K(K + 1)/(n - K - 1), K parameters with the scatter; lack of fit against repeated jars at 5 %; within 2 is a tie; in small series the F test against the flatter model",
    source: "Hurvich and Tsai 1989; Draper and Smith; Box and Draper (all from memory)",
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
    what: "Interval of a best dose",
    formula:
      "profile of the sum of squares at F(1, n - p), 95 %; for a parabola the same as Fieller's; beside it by the delta method, and by resampling residuals or jars; the range covers all tied models",
    source: "Fieller 1954 (from memory); coverage simulated by this project",
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
    what: "Knee",
    formula:
      "dose of 95 % of the gain: ln 20 / rate (exponential), ed50 x 19^(1/slope) (log-logistic), mid + ln 19 / steepness (logistic); the corner of a plateau",
    source: "algebra of the models",
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
    what: "Outliers, influence, drift",
    formula:
      "externally studentised residual beyond t at 5 % over all jars (Bonferroni); shift of the best dose without each jar; a robust refit with Tukey's bisquare beside the fit; residuals against the running order at 1 %",
    source: "standard statistics; Beaton and Tukey 1974 (from memory)",
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
    what: "Two polymers",
    formula:
      "second-order surface in both doses, coded by midrange and half-range; its stationary point, the signs of its curvatures and their bounds",
    source: "Box and Draper; Box and Hunter 1954 (from memory)",
    code: ["src/curve/surface.ts", "src/curve/canonical.ts", "src/curve/surface-bands.ts"],
    checks: [
      { file: trade, asserts: "six coefficients and the stationary point of eleven jars" },
      { file: published, asserts: "published surfaces: a yield, blocks, a reduced model, three factors" },
    ],
  },
] as const satisfies readonly Method[];
