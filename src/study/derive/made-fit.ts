import { meanOnScale } from "../../curve/bands.ts";
import { tQuantile } from "../../curve/distributions.ts";
import { meanShift, type Fit } from "../../curve/fit.ts";
import { offScale } from "../../curve/problem.ts";
import type { CurveModel } from "../../curve/models/model.ts";
import { sourceOf } from "../../methods/methods.ts";
import type { DoseWords } from "../../units/dose-words.ts";
import { modelTitle } from "../../words/dose-report.ts";
import { madeFitWords as words } from "../../words/made-fit.ts";
import type { Made, MadeInput } from "./figure.ts";

/** How numbers and doses are written within an input that holds more than one of them. */
export interface MadeNumbers {
  number(value: number): string;
  doses: DoseWords;
}

/** A model's formula in plain signs; one without a text of its own goes by its name. */
export function shapeOf(model: CurveModel): string {
  const shapes: Record<string, string> = words.shapes;
  return shapes[model.name] ?? words.otherShape(modelTitle(model.name));
}

/** The model and its fitted parameters, with what its jars say of the scatter. */
export function fitInputs({ model, problem, estimate, report }: Fit): MadeInput[] {
  const names: Record<string, string> = words.parameters;
  const shift = meanShift(problem, estimate);
  return [
    { name: words.inputs.model, value: modelTitle(model.name), unit: "" },
    ...model.parameterNames.map((name, k) => ({
      name: names[name] ?? name,
      value: estimate.parameters[k] ?? null,
      unit: "",
    })),
    ...(problem.blockNames.length > 0 ? [{ name: words.inputs.blockShift, value: shift, unit: "" }] : []),
    { name: words.inputs.jars, value: report.n, unit: words.jarsCounted },
    {
      name: report.scale === "log" ? words.inputs.scatterOfLog : words.inputs.scatter,
      value: estimate.residualSd,
      unit: "",
    },
  ];
}

/** How a fitted response at a dose and its one-sided bounds were made. */
export function fittedMade(fit: Fit, doseKgPerT: number, unit: string): Made {
  const { mean, se } = meanOnScale(fit, doseKgPerT);
  const log = fit.report.scale === "log";
  const t = tQuantile(0.95, fit.estimate.df);
  const { inputs: names } = words;
  return {
    formula: log ? words.fittedOnLog(shapeOf(fit.model)) : words.fitted(shapeOf(fit.model)),
    inputs: [
      { name: names.dose, value: doseKgPerT, unit: "kg/t" },
      ...fitInputs(fit),
      { name: log ? names.errorOfLog : names.error, value: se, unit: log ? "" : unit },
      { name: names.freedom, value: fit.estimate.df, unit: "" },
      { name: names.t, value: t, unit: "" },
      { name: names.low, value: offScale(mean - t * se, fit.report.scale), unit },
      { name: names.high, value: offScale(mean + t * se, fit.report.scale), unit },
    ],
    source: sourceOf("band"),
  };
}

/** How the residuals of a fit were made. */
export function residualMade(fit: Fit): Made {
  const { estimate, report } = fit;
  return {
    formula: report.scale === "log" ? words.residualOnLog : words.residual,
    inputs: [
      ...fitInputs(fit),
      { name: words.inputs.coefficients, value: report.n - estimate.df, unit: "" },
      { name: words.inputs.rss, value: estimate.rss, unit: "" },
    ],
    source: sourceOf("band"),
  };
}

/** How a jar came to be called an outlier. */
export function outlierMade(fit: Fit, { t, cut }: { t: number; cut: number }): Made {
  return {
    formula: words.outlier,
    inputs: [
      ...fitInputs(fit),
      { name: words.inputs.freedom, value: fit.estimate.df, unit: "" },
      { name: "t", value: t, unit: "" },
      { name: words.inputs.cut, value: cut, unit: "" },
    ],
    source: sourceOf("outliers"),
  };
}

/** How the jar that moves the best dose most was found. */
export function moverMade(fit: Fit, shiftKgPerT: number): Made {
  const dose = fit.report.optimum?.dose ?? null;
  return {
    formula: words.mover,
    inputs: [
      ...fitInputs(fit),
      { name: words.inputs.best, value: dose, unit: "kg/t" },
      { name: words.inputs.moved, value: dose === null ? null : dose + shiftKgPerT, unit: "kg/t" },
    ],
    source: sourceOf("outliers"),
  };
}

/** How the dose of the robust refit was made. */
export function robustMade(fit: Fit, robust: { dose: number | null; jars: string }): Made {
  return {
    formula: words.robust,
    inputs: [
      ...fitInputs(fit),
      { name: words.inputs.best, value: fit.report.optimum?.dose ?? null, unit: "kg/t" },
      { name: words.inputs.robust, value: robust.dose, unit: "kg/t" },
      { name: words.inputs.held, value: robust.jars, unit: "" },
    ],
    source: sourceOf("outliers"),
  };
}

/** How the doses of the next jars and what they would bring were made. */
export function nextMade(
  fit: Fit | null,
  next: { doses: number[]; shrinkPct: number },
  { doses }: MadeNumbers,
): Made {
  return {
    formula: words.next,
    inputs: [
      ...(fit ? fitInputs(fit) : []),
      { name: words.inputs.best, value: fit?.report.optimum?.dose ?? null, unit: "kg/t" },
      {
        name: words.inputs.next,
        value: next.doses.map((dose) => doses.number(dose)).join(", "),
        unit: doses.unit,
      },
      { name: words.inputs.shrink, value: next.shrinkPct, unit: "%" },
    ],
    source: sourceOf("nextJars"),
  };
}
