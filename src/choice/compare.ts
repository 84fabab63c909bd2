/** One way of conditioning (a product, or two polymers) at its own cheapest dose within the same limits. */
export interface Alternative {
  name: string;
  /** cost per tonne dry solids */
  cost: number;
  /** one simulated cost, its curves' error drawn anew */
  simulate(normal: () => number): number | null;
}

export interface Ranked {
  name: string;
  cost: number;
  /** the chance that it is the cheapest of all compared */
  chanceBest: number;
}

/** Ranks alternatives by cost at equal limits, with the chance that each is the cheapest (seeded simulation). */
export function compareAlternatives(
  alternatives: Alternative[],
  normal: () => number,
  draws: number,
): Ranked[] {
  const wins = alternatives.map(() => 0);
  for (let draw = 0; draw < draws; draw++) {
    const costs = alternatives.map((one) => one.simulate(normal) ?? Infinity);
    const least = Math.min(...costs);
    if (Number.isFinite(least)) wins[costs.indexOf(least)]! += 1;
  }
  return alternatives
    .map(({ name, cost }, i) => ({ name, cost, chanceBest: wins[i]! / draws }))
    .sort((a, b) => a.cost - b.cost);
}
