import { area } from "./language.ts";

/** From the jars' responses to curves and what they say: what each formula is for, the formula in plain signs, and where it comes from. */
export const curveMethodWords = area("curveMethods", {
  fits: {
    what: "Fits",
    formula:
      "least squares, on the natural log for turbidity, TSS, CST and SRF (values are then medians); readings beyond an instrument's range by maximum likelihood; a jar read again is one point",
    source: "standard statistics; the fitting code reproduces the NIST reference sets",
  },
  models: {
    what: "Models",
    formula:
      "constant; b0 + b1 x; b0 + b1 x + b2 x^2 and with b3 x^3, in dose or ln dose; start + gain (1 - e^(-rate x)); top - slope max(0, knee - x); base - depth e^(-(x - centre)^2 / (2 spread^2)); lower + (upper - lower) / (1 + e^(-steepness (x - mid))); lower + (upper - lower) / (1 + (ed50 / x)^slope)",
    source: "textbook shapes",
  },
  band: {
    what: "Fitted value at a dose, its bounds, residuals",
    formula:
      "fitted ± t(n - p) x standard error of the fitted mean (gradient of the curve, covariance of its parameters), on the fit's scale and turned back; each bound one-sided 95 %; residuals over s = sqrt(rss / (n - p))",
    source: "standard statistics, recomputed independently for a straight line",
  },
  choiceOfModel: {
    what: "Choice among models",
    formula:
      "AICc = n ln(rss/n) + 2K + 2K(K + 1)/(n - K - 1), K parameters with the scatter; lack of fit against repeated jars at 5 %; within 2 is a tie; in small series the F test against the flatter model",
    source: "Hurvich and Tsai 1989; Draper and Smith; Box and Draper (all from memory)",
  },
  interval: {
    what: "Interval of a best dose",
    formula:
      "profile of the sum of squares at F(1, n - p), 95 %; for a parabola the same as Fieller's; beside it by the delta method, and by resampling residuals or jars; the range covers all tied models",
    source: "Fieller 1954 (from memory); coverage simulated by this project",
  },
  knee: {
    what: "Knee",
    formula:
      "dose of 95 % of the gain: ln 20 / rate (exponential), ed50 x 19^(1/slope) (log-logistic), mid + ln 19 / steepness (logistic); the corner of a plateau",
    source: "algebra of the models",
  },
  outliers: {
    what: "Outliers, influence, drift",
    formula:
      "externally studentised residual beyond t at 5 % over all jars (Bonferroni); shift of the best dose without each jar; a robust refit with Tukey's bisquare beside the fit; residuals against the running order at 1 %",
    source: "standard statistics; Beaton and Tukey 1974 (from memory)",
  },
  surface: {
    what: "Two polymers",
    formula:
      "second-order surface in both doses, coded by midrange and half-range; its stationary point, the signs of its curvatures and their bounds",
    source: "Box and Draper; Box and Hunter 1954 (from memory)",
  },
});
