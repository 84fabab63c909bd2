import { benchMethodWords } from "../words/bench-methods.ts";
import { choiceMethodWords } from "../words/choice-methods.ts";
import { curveMethodWords } from "../words/curve-methods.ts";
import { plantMethodWords } from "../words/plant-methods.ts";
import { benchMethods } from "./bench.ts";
import { choiceMethods } from "./choice.ts";
import { curveMethods } from "./curve.ts";
import type { Method, MethodEntry, MethodTexts } from "./method.ts";
import { plantMethods } from "./plant.ts";

type MethodId =
  | keyof typeof benchMethodWords
  | keyof typeof curveMethodWords
  | keyof typeof choiceMethodWords
  | keyof typeof plantMethodWords;

/** Entries with their texts beside them, each read whenever it is asked for. */
const told = <I extends string>(
  entries: readonly MethodEntry<I>[],
  words: Record<I, MethodTexts>,
): Method[] =>
  entries.map((entry) => ({
    ...entry,
    get what() {
      return words[entry.id].what;
    },
    get formula() {
      return words[entry.id].formula;
    },
    get source() {
      return words[entry.id].source;
    },
  }));

/** Every formula the product uses, in the order of the job. "From memory" and "no source" are said where they hold. */
export const methods: readonly Method[] = [
  ...told(benchMethods, benchMethodWords),
  ...told(curveMethods, curveMethodWords),
  ...told(choiceMethods, choiceMethodWords),
  ...told(plantMethods, plantMethodWords),
];

const byId = new Map(methods.map((method) => [method.id, method]));

/** Where a formula comes from, as the methods page and the report say it. */
export const sourceOf = (id: MethodId): string => byId.get(id)!.source;
