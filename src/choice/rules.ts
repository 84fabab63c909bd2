import type { ResponseCurve } from "../curve/types.ts";
import { costAt, leastCost, lowestNear, type CostInput, type CostParts } from "./cost.ts";
import { writeFixed } from "../units/digits.ts";
import type { DecimalMark } from "../units/number-entry.ts";
import { desirability, overallDesirability, type Wish } from "./desirability.ts";
import type { Span } from "./limits.ts";
import { guarded, nearestEdge, type LimitHolding, type WorkingWindow } from "./window.ts";
import { choiceWords } from "../words/choice.ts";

export type Rule =
  "minimum" | "knee" | "cheapest-in-limits" | "desirability" | "least-cost" | "near-least-cost";

/** A response's own optimum or knee as its verdict gives it. */
export interface Located {
  response: string;
  words: string;
  kind: "optimum" | "knee";
  dose: number;
  low: number | null;
  high: number | null;
}

export interface RuleInput {
  tested: Span;
  curves: ResponseCurve[];
  holdings: LimitHolding[];
  window: WorkingWindow;
  guardPct: number;
  cost: CostInput;
  located: Located[];
  wishes: { response: string; wish: Wish }[];
  /** the decimal mark that sentences are written under */
  mark?: DecimalMark | undefined;
}

/** One rule's answer: a dose, or the sentence that says why it has none. */
export interface RuleResult {
  rule: Rule;
  response: string | null;
  words: string;
  dose: number | null;
  low: number | null;
  high: number | null;
  why: string;
  cost: CostParts | null;
  expected: { response: string; mean: number; low: number; high: number }[];
  edge: { words: string; distance: number } | null;
}

/** All rules side by side, each within the tested range only. */
export function allRules(input: RuleInput): RuleResult[] {
  const { window, tested } = input;
  const results: RuleResult[] = [];
  const finish = (
    rule: Rule,
    words: string,
    dose: number | null,
    why: string,
    more: { response?: string; low?: number | null; high?: number | null } = {},
  ) =>
    results.push({
      rule,
      response: more.response ?? null,
      words,
      dose,
      low: more.low ?? null,
      high: more.high ?? null,
      why,
      cost: dose === null ? null : costAt(dose, input.cost),
      expected: dose === null ? [] : input.curves.map((curve) => expectedAt(curve, dose)),
      edge: dose === null ? null : edgeAt(input, dose),
    });

  for (const place of input.located)
    finish(place.kind === "optimum" ? "minimum" : "knee", place.words, place.dose, "", {
      response: place.response,
      low: place.low,
      high: place.high,
    });

  if (window.kind === "empty") finish("cheapest-in-limits", choiceWords.cheapest, null, window.sentence);
  else {
    const inner = guarded(window.spans, tested, input.guardPct);
    const spans = inner.length > 0 ? inner : window.spans;
    const note = inner.length > 0 ? "" : choiceWords.narrowWindow(input.guardPct);
    const cheapest = leastCost(spans, input.cost);
    const lowest = Math.min(...spans.map((span) => span.low));
    if (input.holdings.length === 0)
      finish("cheapest-in-limits", choiceWords.cheapest, null, choiceWords.noLimit);
    else if (cheapest) finish("cheapest-in-limits", choiceWords.cheapest, cheapest.dose, note);
    else finish("cheapest-in-limits", choiceWords.lowest, lowest, `${note} ${choiceWords.noPrice}`.trim());
  }

  const least = leastCost([tested], input.cost);
  if (!least) {
    finish("least-cost", choiceWords.leastCost, null, choiceWords.enterPrice);
    finish("near-least-cost", choiceWords.nearLeastCost, null, choiceWords.enterPrice);
  } else {
    finish(
      "least-cost",
      choiceWords.leastCost,
      least.dose,
      input.cost.cakePct === null || input.cost.disposalPerWetT === null ? choiceWords.onlyPolymerPriced : "",
    );
    if (window.kind === "empty") finish("near-least-cost", choiceWords.nearLeastCost, null, window.sentence);
    else {
      const near = lowestNear(window.spans, input.cost, least.cost);
      finish("near-least-cost", choiceWords.nearLeastCost, near, near === null ? choiceWords.noneNear : "");
    }
  }

  const wished = mostDesirable(input);
  if (wished) finish("desirability", choiceWords.mostDesirable, wished.dose, wished.why);
  return results;
}

function expectedAt(curve: ResponseCurve, dose: number): RuleResult["expected"][number] {
  return {
    response: curve.response,
    mean: curve.mean(dose),
    low: curve.low95(dose),
    high: curve.high95(dose),
  };
}

function edgeAt(input: RuleInput, dose: number): RuleResult["edge"] {
  const edge = nearestEdge(input.holdings, dose, input.tested);
  return edge ? { words: edge.limit.words, distance: edge.distance } : null;
}

function mostDesirable(input: RuleInput): { dose: number | null; why: string } | null {
  if (input.wishes.length === 0) return null;
  const valueOf = (response: string, dose: number): number | null => {
    if (response === "cost") return costAt(dose, input.cost).total;
    return input.curves.find((curve) => curve.response === response)?.mean(dose) ?? null;
  };
  let best: { dose: number; d: number } | null = null;
  const steps = 500;
  for (let i = 0; i <= steps; i++) {
    const dose = input.tested.low + ((input.tested.high - input.tested.low) * i) / steps;
    const parts = input.wishes.flatMap(({ response, wish }) => {
      const value = valueOf(response, dose);
      return value === null ? [] : [{ desirability: desirability(value, wish), weight: wish.weight }];
    });
    const d = overallDesirability(parts);
    if (d > 0 && (best === null || d > best.d)) best = { dose, d };
  }
  return best
    ? { dose: best.dose, why: choiceWords.desirability(writeFixed(best.d, 2, input.mark ?? ".")) }
    : { dose: null, why: choiceWords.undesirable };
}
