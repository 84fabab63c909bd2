import type { DoseOrPair, ReportedFit, ResponseWorking } from "../../curve/analyse-types.ts";
import { cellsOf } from "../../curve/fit.ts";
import { pureError } from "../../curve/lack-of-fit.ts";
import type { FitReport } from "../../curve/types.ts";
import { sourceOf } from "../../methods/methods.ts";
import { doseReportWords, modelTitle } from "../../words/dose-report.ts";
import { stripWords } from "../../words/strip.ts";
import { madeFitWords as words } from "../../words/made-fit.ts";
import type { Made, MadeInput } from "./figure.ts";
import { fitInputs, type MadeNumbers } from "./made-fit.ts";
import { surfaceInputs } from "./made-pair.ts";

type CurveFit = FitReport & { zeroDose?: "in" | "out" };

const titleOf = ({ model, zeroDose }: CurveFit) =>
  zeroDose === "in" ? doseReportWords.withNoPolymer(modelTitle(model)) : modelTitle(model);

/** The models of a response that were fitted over one dose, best first. */
export function rankedFits(fits: readonly ReportedFit[]): CurveFit[] {
  return fits
    .filter((fit): fit is CurveFit => fit.model !== "surface")
    .sort((a, b) => (a.aicc ?? Infinity) - (b.aicc ?? Infinity));
}

/** How the AICc of every model was made: with its own jars, parameters and sum of squares. */
export function aiccMade(fits: readonly ReportedFit[], { number }: MadeNumbers): Made {
  return {
    formula: words.aicc.formula,
    inputs: rankedFits(fits).flatMap((fit) =>
      fit.aicc === null
        ? []
        : [
            {
              name: titleOf(fit),
              value:
                fit.rss === null
                  ? words.aicc.byLikelihood(fit.n, fit.covariance.length + 1)
                  : words.aicc.input(fit.n, fit.covariance.length + 1, number(fit.rss)),
              unit: "",
            },
          ],
    ),
    source: sourceOf("choiceOfModel"),
  };
}

/** How the lack of fit of every model was made. */
export function lackOfFitMade(working: ResponseWorking, { number }: MadeNumbers): Made {
  const { analysis, fit } = working;
  const repeats = fit ? pureError(fit.problem.y, cellsOf(fit.problem)) : null;
  return {
    formula: words.lackOfFit.formula,
    inputs: [
      { name: words.inputs.pureError, value: repeats?.ss ?? null, unit: "" },
      { name: words.inputs.pureErrorFreedom, value: repeats?.df ?? null, unit: "" },
      ...rankedFits(analysis.fits).flatMap((one) =>
        one.lackOfFit && one.rss !== null
          ? [
              {
                name: titleOf(one),
                value: words.lackOfFit.input(
                  number(one.rss),
                  number(one.lackOfFit.f),
                  one.lackOfFit.df1,
                  one.lackOfFit.df2,
                ),
                unit: "",
              },
            ]
          : [],
      ),
    ],
    source: sourceOf("choiceOfModel"),
  };
}

/** How the best dose of every model was made. */
export function modelDosesMade(fits: readonly ReportedFit[]): Made {
  return {
    formula: words.modelDose,
    inputs: rankedFits(fits).flatMap((fit) =>
      fit.optimum ? [{ name: titleOf(fit), value: fit.optimum.dose, unit: "kg/t" }] : [],
    ),
    source: sourceOf("interval"),
  };
}

function rangeInput(
  name: string,
  span: { low: DoseOrPair | null; high: DoseOrPair | null },
  { doses }: MadeNumbers,
): MadeInput {
  const end = (value: DoseOrPair | null) =>
    value === null
      ? stripWords.openEnd
      : typeof value === "number"
        ? doses.number(value)
        : `A ${doses.number(value.a)}, B ${doses.number(value.b)}`;
  return {
    name,
    value: span.low === null && span.high === null ? null : words.span(end(span.low), end(span.high)),
    unit: doses.unit,
  };
}

/** How the best dose or pair of a response and its range were made, or why it has none. */
export function bestDoseMade(working: ResponseWorking, numbers: MadeNumbers): Made {
  const { fit, surface, analysis, tied } = working;
  const { verdict } = analysis;
  const { inputs: names } = words;
  const optimum = fit?.report.optimum ?? null;
  const ninety =
    fit && optimum?.kind === "knee" ? fit.model.ninetyDose?.(fit.estimate.parameters) : undefined;
  return {
    formula: surface
      ? words.bestDose.surface
      : verdict.kind === "none"
        ? words.bestDose.none
        : words.bestDose[verdict.kind],
    inputs: [
      ...(surface ? surfaceInputs(surface) : []),
      ...(fit ? fitInputs(fit) : []),
      ...(fit ? [{ name: names.freedom, value: fit.estimate.df, unit: "" }] : []),
      ...(optimum ? [{ name: names.best, value: optimum.dose, unit: "kg/t" }] : []),
      ...(optimum?.gainPct === undefined ? [] : [{ name: names.gain, value: optimum.gainPct, unit: "%" }]),
      ...(ninety === undefined ? [] : [{ name: names.reached, value: ninety, unit: "kg/t" }]),
      ...(verdict.modelInterval ? [rangeInput(names.modelInterval, verdict.modelInterval, numbers)] : []),
      ...(fit
        ? [
            {
              name: names.tied,
              value: tied.map((one) => modelTitle(one.model.name)).join(", ") || names.none,
              unit: "",
            },
          ]
        : []),
      rangeInput(names.range, verdict, numbers),
    ],
    source: sourceOf(surface ? "surface" : verdict.kind === "knee" ? "knee" : "interval"),
  };
}
