import { overlap, type Limit, type Span } from "./limits.ts";
import { choiceWords } from "../words/choice.ts";

/** One limit with the doses at which it holds (at the bound). */
export interface LimitHolding {
  limit: Limit;
  spans: Span[];
}

/** The doses at which all limits hold, or which two of them shut each other out and where they come nearest. */
export type WorkingWindow =
  | { kind: "window"; spans: Span[] }
  | { kind: "empty"; conflict: [Limit] | [Limit, Limit]; nearest: number | null; sentence: string };

function gapBetween(a: Span[], b: Span[]): { size: number; middle: number } | null {
  let best: { size: number; middle: number } | null = null;
  for (const one of a)
    for (const other of b) {
      const low = Math.min(one.high, other.high);
      const high = Math.max(one.low, other.low);
      const size = high - low;
      if (best === null || size < best.size) best = { size, middle: (low + high) / 2 };
    }
  return best;
}

/** Overlap of all limits within the tested range. Neither limit of a conflict is relaxed. */
export function workingWindow(
  holdings: LimitHolding[],
  tested: Span,
  number: (doseKgPerT: number) => string,
  doseUnit = "kg/t",
): WorkingWindow {
  let spans: Span[] = [tested];
  for (const { spans: own } of holdings) spans = overlap(spans, own);
  if (spans.length > 0) return { kind: "window", spans };
  const alone = holdings.find(({ spans: own }) => own.length === 0);
  if (alone)
    return {
      kind: "empty",
      conflict: [alone.limit],
      nearest: null,
      sentence: choiceWords.neverMet(alone.limit.words),
    };
  let worst: { pair: [Limit, Limit]; size: number; middle: number } | null = null;
  for (const [i, first] of holdings.entries())
    for (const second of holdings.slice(i + 1)) {
      const gap = gapBetween(first.spans, second.spans);
      if (gap && (worst === null || gap.size > worst.size))
        worst = { pair: [first.limit, second.limit], ...gap };
    }
  const [a, b] = worst!.pair;
  return {
    kind: "empty",
    conflict: [a, b],
    nearest: worst!.middle,
    sentence: choiceWords.conflict(a.words, b.words, number(worst!.middle), doseUnit),
  };
}

/**
 * The window drawn in by a share of the dose on each side where a limit (not the end of the tested range) ends it
 * (common practice, no source: 10 %). Spans that vanish are dropped.
 */
export function guarded(spans: Span[], tested: Span, guardPct: number): Span[] {
  const share = guardPct / 100;
  return spans.flatMap(({ low, high }) => {
    const from = low <= tested.low ? low : low * (1 + share);
    const to = high >= tested.high ? high : high * (1 - share);
    return from <= to ? [{ low: from, high: to }] : [];
  });
}

/** The nearest end of the limits' spans from a dose inside them, and which limit fails beyond it. */
export function nearestEdge(
  holdings: LimitHolding[],
  dose: number,
  tested: Span,
): { limit: Limit; distance: number } | null {
  let best: { limit: Limit; distance: number } | null = null;
  for (const { limit, spans } of holdings) {
    const span = spans.find((one) => dose >= one.low - 1e-9 && dose <= one.high + 1e-9);
    if (!span) return { limit, distance: 0 };
    for (const [end, isTestedEnd] of [
      [span.low, span.low <= tested.low],
      [span.high, span.high >= tested.high],
    ] as const) {
      const distance = Math.abs(dose - end);
      if (!isTestedEnd && (best === null || distance < best.distance)) best = { limit, distance };
    }
  }
  return best;
}
