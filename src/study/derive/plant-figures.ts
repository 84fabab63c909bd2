import type { QuantityKind } from "../../units/display.ts";
import { sourceOf } from "../../methods/methods.ts";
import { plantInputWords } from "../../words/plant-inputs.ts";
import { figure, missingFigure, type Figure, type MadeInput } from "./figure.ts";

export interface NamedFigure {
  title: string;
  figure: Figure;
}

/** An input with what to do where it is missing, if that is more than entering it. */
export type Asked = MadeInput & { ask?: string };

/** A figure from named inputs: where one is missing it says which; `value` may answer a reason instead of a number. */
export function made(
  title: string,
  quantity: QuantityKind,
  formula: string,
  inputs: Asked[],
  value: (known: number[]) => number | string,
  source = sourceOf("rates"),
): NamedFigure {
  const lack = inputs.find((input) => input.value === null);
  const how = {
    formula,
    inputs: inputs.map(({ name, value: input, unit }) => ({ name, value: input, unit })),
    source,
  };
  if (lack)
    return { title, figure: missingFigure(quantity, lack.ask ?? plantInputWords.enter(lack.name), how) };
  const result = value(inputs.map((input) => input.value as number));
  return {
    title,
    figure: typeof result === "string" ? missingFigure(quantity, result, how) : figure(quantity, result, how),
  };
}
