import type { Span } from "../../choice/limits.ts";
import { sourceOf } from "../../methods/methods.ts";
import { benchMethodWords } from "../../words/bench-methods.ts";
import { madeChoiceWords } from "../../words/made-choice.ts";
import { madeFitWords } from "../../words/made-fit.ts";
import type { ChoiceChain, LimitBar } from "./choice.ts";
import type { Made, MadeInput } from "./figure.ts";
import type { MadeNumbers } from "./made-fit.ts";

const names = () => madeChoiceWords.limitInputs;

/** The doses at which something holds, as one input. */
function spansInput(name: string, spans: Span[], { doses }: MadeNumbers): MadeInput {
  const text = spans.map(({ low, high }) => madeFitWords.span(doses.number(low), doses.number(high)));
  return spans.length === 0
    ? { name, value: names().nowhere, unit: "" }
    : { name, value: text.join(", "), unit: doses.unit };
}

const testedInputs = ({ low, high }: Span): MadeInput[] => [
  { name: names().testedLow, value: low, unit: "kg/t" },
  { name: names().testedHigh, value: high, unit: "kg/t" },
];

/** How the bar of a limit was made, with what its curve says at the dose looked at. */
export function limitMade(
  choice: ChoiceChain,
  { limit, mean, bound }: LimitBar,
  at: { doseKgPerT: number | null; unit: string; miss: number | null },
  numbers: MadeNumbers,
): Made {
  const curve = choice.curves.find(({ response }) => response === limit.response);
  const atMost = limit.side === "at-most";
  const there = (value: ((dose: number) => number) | undefined) =>
    at.doseKgPerT === null ? null : (value?.(at.doseKgPerT) ?? null);
  return {
    formula: madeChoiceWords.limit,
    inputs: [
      { name: names().limit(limit.words), value: limit.value, unit: at.unit },
      { name: madeFitWords.inputs.dose, value: at.doseKgPerT, unit: "kg/t" },
      { name: names().mean, value: there(curve?.mean), unit: at.unit },
      { name: names().bound, value: there(atMost ? curve?.high95 : curve?.low95), unit: at.unit },
      ...(at.miss === null ? [] : [{ name: names().missed, value: at.miss * 100, unit: "%" }]),
      spansInput(names().held, bound, numbers),
      spansInput(names().atMean, mean, numbers),
      ...testedInputs(choice.tested),
    ],
    source: sourceOf("limits"),
  };
}

/** How the working window was made. */
export function windowMade(choice: ChoiceChain, numbers: MadeNumbers): Made {
  return {
    formula: madeChoiceWords.window,
    inputs: [
      ...choice.bars.map(({ limit, bound }) => spansInput(limit.words, bound, numbers)),
      ...testedInputs(choice.tested),
    ],
    source: sourceOf("limits"),
  };
}

/** How the distance of each rule's dose to the nearest failing edge was made. */
export function edgeMade(choice: ChoiceChain, numbers: MadeNumbers): Made {
  return { ...windowMade(choice, numbers), formula: madeChoiceWords.edge };
}

/** How the chance to miss a limit was made. */
export function missMade(input: {
  sharedRelative: number;
  driftPct: number;
  draws: number;
  seed: number;
  limits: string[];
}): Made {
  return {
    formula: madeChoiceWords.miss,
    inputs: [
      ...input.limits.map((limit, index) => ({ name: `${index + 1}`, value: limit, unit: "" })),
      { name: names().shared, value: input.sharedRelative * 100, unit: "%" },
      { name: names().drift, value: input.driftPct, unit: "%" },
      { name: madeChoiceWords.inputs.draws, value: `${input.draws}, ${input.seed}`, unit: "" },
    ],
    source: sourceOf("chanceToMiss"),
  };
}

/** How the change against today's dose was made. */
export function againstMade(input: {
  todayKgPerT: number;
  costToday: number | null;
  currency: string;
  tonnesPerYear: number | null;
  draws: number;
  seed: number;
}): Made {
  return {
    formula: madeChoiceWords.against,
    inputs: [
      { name: names().today, value: input.todayKgPerT, unit: "kg/t" },
      { name: names().cost, value: input.costToday, unit: `${input.currency}/t` },
      { name: names().drySolids, value: input.tonnesPerYear, unit: "t" },
      { name: madeChoiceWords.inputs.draws, value: `${input.draws}, ${input.seed}`, unit: "" },
    ],
    source: sourceOf("compare"),
  };
}

/** How capture at a dose was made from the fitted filtrate and cake. */
export function captureMade(choice: ChoiceChain, doseKgPerT: number, feedTssPct: number | null): Made {
  const curveOf = (name: string) => choice.curves.find(({ response }) => response === name);
  const capture = curveOf("capture_pct");
  return {
    formula: madeFitWords.captureBounds(benchMethodWords.capture.formula),
    inputs: [
      { name: madeFitWords.inputs.dose, value: doseKgPerT, unit: "kg/t" },
      { name: madeFitWords.captureInputs.feed, value: feedTssPct, unit: "%" },
      {
        name: madeFitWords.captureInputs.filtrate,
        value: curveOf("filtrate_tss_mg_per_l")?.mean(doseKgPerT) ?? null,
        unit: "mg/L",
      },
      {
        name: madeFitWords.captureInputs.cake,
        value: curveOf("cake_ts_pct")?.mean(doseKgPerT) ?? null,
        unit: "%",
      },
      { name: madeFitWords.inputs.low, value: capture?.low95(doseKgPerT) ?? null, unit: "%" },
      { name: madeFitWords.inputs.high, value: capture?.high95(doseKgPerT) ?? null, unit: "%" },
    ],
    source: sourceOf("capture"),
  };
}
