import type { ResponseCurve } from "../curve/types.ts";

export interface Span {
  low: number;
  high: number;
}

/** What is asked of one response: at most, or at least, a value on its natural scale. */
export interface Limit {
  response: string;
  /** the words for it, for example "turbidity at most 80 NTU" */
  words: string;
  side: "at-most" | "at-least";
  value: number;
}

const scanSteps = 400;

/**
 * The doses of a range where a function is at most 0: a set of spans, found on a fine scan with its crossings narrowed
 * by bisection. A span narrower than the scan (1/400 of the range) can be missed.
 */
export function holdingSpans(f: (dose: number) => number, range: Span): Span[] {
  const at = (i: number) => range.low + ((range.high - range.low) * i) / scanSteps;
  const holds = (dose: number) => {
    const value = f(dose);
    return Number.isFinite(value) && value <= 0;
  };
  const cross = (inside: number, outside: number) => {
    let good = inside;
    let bad = outside;
    for (let i = 0; i < 60; i++) {
      const middle = (good + bad) / 2;
      if (holds(middle)) good = middle;
      else bad = middle;
    }
    return good;
  };
  const spans: Span[] = [];
  let start: number | null = null;
  for (let i = 0; i <= scanSteps; i++) {
    const inside = holds(at(i));
    if (inside && start === null) start = i === 0 ? at(0) : cross(at(i), at(i - 1));
    if (!inside && start !== null) {
      spans.push({ low: start, high: cross(at(i - 1), at(i)) });
      start = null;
    }
  }
  if (start !== null) spans.push({ low: start, high: range.high });
  return spans;
}

/** Where a limit holds, at the mean and at the one-sided 95 % bound of the mean curve (that limit by itself). */
export function limitSpans(curve: ResponseCurve, limit: Limit): { mean: Span[]; bound: Span[] } {
  const sign = limit.side === "at-most" ? 1 : -1;
  const bound = limit.side === "at-most" ? curve.high95 : curve.low95;
  return {
    mean: holdingSpans((dose) => sign * (curve.mean(dose) - limit.value), curve.tested),
    bound: holdingSpans((dose) => sign * (bound(dose) - limit.value), curve.tested),
  };
}

/** What two sets of spans share. */
export function overlap(a: Span[], b: Span[]): Span[] {
  return a.flatMap((one) =>
    b.flatMap((other) => {
      const low = Math.max(one.low, other.low);
      const high = Math.min(one.high, other.high);
      return low <= high ? [{ low, high }] : [];
    }),
  );
}
