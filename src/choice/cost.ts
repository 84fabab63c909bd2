import type { Span } from "./limits.ts";

/** What a tonne of dry feed solids costs at a dose, split. Parts that have no price are null and not in the total. */
export interface CostParts {
  polymer: number | null;
  disposal: number | null;
  returnLoad: number | null;
  total: number | null;
}

export interface CostInput {
  pricePerKgNeat: number | null;
  activePct: number | null;
  disposalPerWetT: number | null;
  returnPerT: number | null;
  /** cake TS in percent at a dose; null where cake was not read */
  cakePct: ((dose: number) => number) | null;
  /** capture in percent at a dose; null where it is not known */
  capturePct: ((dose: number) => number) | null;
}

/**
 * Total cost per tonne dry feed solids: D p / a + R / C c_disposal + (1 - R) c_return. Source: trade formulas,
 * section 5. The total is null unless the polymer has a price.
 */
export function costAt(dose: number, input: CostInput): CostParts {
  const polymer =
    input.pricePerKgNeat === null || input.activePct === null
      ? null
      : (dose / (input.activePct / 100)) * input.pricePerKgNeat;
  const capture = input.capturePct ? input.capturePct(dose) / 100 : null;
  const cake = input.cakePct ? input.cakePct(dose) / 100 : null;
  const disposal =
    input.disposalPerWetT === null || capture === null || cake === null || !(cake > 0)
      ? null
      : (capture / cake) * input.disposalPerWetT;
  const returnLoad = input.returnPerT === null || capture === null ? null : (1 - capture) * input.returnPerT;
  return {
    polymer,
    disposal,
    returnLoad,
    total: polymer === null ? null : polymer + (disposal ?? 0) + (returnLoad ?? 0),
  };
}

const scanSteps = 600;

/** The dose of least total cost over spans, with that cost; null where there is no total. */
export function leastCost(spans: Span[], input: CostInput): { dose: number; cost: number } | null {
  let best: { dose: number; cost: number } | null = null;
  for (const { low, high } of spans) {
    const step = (high - low) / scanSteps;
    for (let i = 0; i <= scanSteps; i++) {
      const dose = low + step * i;
      const cost = costAt(dose, input).total;
      if (cost !== null && Number.isFinite(cost) && (best === null || cost < best.cost))
        best = { dose, cost };
    }
    if (best && step > 0 && best.dose >= low && best.dose <= high) {
      let from = Math.max(low, best.dose - step);
      let to = Math.min(high, best.dose + step);
      for (let i = 0; i < 60; i++) {
        const a = from + (to - from) / 3;
        const b = to - (to - from) / 3;
        if (costAt(a, input).total! <= costAt(b, input).total!) to = b;
        else from = a;
      }
      const dose = (from + to) / 2;
      const cost = costAt(dose, input).total!;
      if (cost <= best.cost) best = { dose, cost };
    }
  }
  return best;
}

/** The lowest dose over spans whose cost is within a share (1 % unless said) of the least cost given. */
export function lowestNear(spans: Span[], input: CostInput, least: number, share = 0.01): number | null {
  const target = least * (1 + share);
  const near = (dose: number) => {
    const cost = costAt(dose, input).total;
    return cost !== null && cost <= target;
  };
  for (const { low, high } of [...spans].sort((a, b) => a.low - b.low)) {
    const step = (high - low) / scanSteps;
    for (let i = 0; i <= scanSteps; i++) {
      const dose = low + step * i;
      if (!near(dose)) continue;
      if (i === 0) return dose;
      let outside = dose - step;
      let inside = dose;
      for (let k = 0; k < 60; k++) {
        const middle = (outside + inside) / 2;
        if (near(middle)) inside = middle;
        else outside = middle;
      }
      return inside;
    }
  }
  return null;
}
