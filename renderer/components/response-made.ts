import { responseWords, unitOf } from "../../src/responses/registry.ts";
import { sourceOf } from "../../src/methods/methods.ts";
import type { Made, MadeInput } from "../../src/study/derive/figure.ts";
import { fittedMade, shapeOf, type MadeNumbers } from "../../src/study/derive/made-fit.ts";
import { captureMade } from "../../src/study/derive/made-limits.ts";
import { madeFitWords } from "../../src/words/made-fit.ts";
import type { useChain } from "../stores/chain.ts";
import type { useFormat } from "../stores/format.ts";
import { useStudy } from "../stores/study.ts";

type Chain = ReturnType<typeof useChain>;
type Format = ReturnType<typeof useFormat>;

/** How several numbers within one input of "How was this made" are written. */
export const madeNumbers = (format: Format): MadeNumbers => ({
  number: (value) => format.inputNumber(value),
  doses: format.doses,
});

/** The unit of a response as this series reads it. */
export const responseUnit = (chain: Chain, response: string): string =>
  chain.series ? unitOf(response, chain.series.series) : "";

const fitOf = (chain: Chain, response: string) =>
  chain.workings.find(({ analysis }) => analysis.name === response)?.fit ?? null;

/** How what a response's curve says at a dose was made. */
export function responseMade(chain: Chain, response: string, doseKgPerT: number): Made {
  const fit = fitOf(chain, response);
  if (fit) return fittedMade(fit, doseKgPerT, responseUnit(chain, response));
  const sample = useStudy().state?.sample[chain.series?.series.sampleId ?? ""];
  return captureMade(chain.choice!, doseKgPerT, sample?.suspendedSolidsPct ?? null);
}

/** How all that the curves say at a dose was made: each response's curve, and then what went into it. */
export function allMade(chain: Chain, doseKgPerT: number, format: Format): Made {
  const text = ({ name, value, unit }: MadeInput) =>
    `${name} ${typeof value === "number" ? format.inputNumber(value) : value} ${unit}`.trim();
  // What the fitted value itself does not take is told beside each curve.
  const left = new Set<string>(
    (["jars", "scatter", "scatterOfLog", "freedom"] as const).map((name) => madeFitWords.inputs[name]),
  );
  const inputs = (chain.choice?.curves ?? []).map(({ response }): MadeInput => {
    const label = responseWords[response]?.label ?? response;
    const made = responseMade(chain, response, doseKgPerT);
    const fit = fitOf(chain, response);
    const shape = fit && shapeOf(fit.model);
    const curve = shape && fit.report.scale === "log" ? madeFitWords.curveOnLog(shape) : shape;
    return {
      name: label,
      value: [
        curve ?? made.formula,
        ...made.inputs
          .slice(1)
          .filter(({ name }) => !left.has(name))
          .map(text),
      ].join("; "),
      unit: "",
    };
  });
  return {
    formula: madeFitWords.allAtDose,
    inputs: [{ name: madeFitWords.inputs.dose, value: doseKgPerT, unit: "kg/t" }, ...inputs],
    source: `${sourceOf("band")}; ${sourceOf("capture")}`,
  };
}
