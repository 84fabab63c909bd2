import { savingAgainst, type Saving } from "../choice/against-today.ts";
import { chanceToMiss } from "../choice/miss.ts";
import { normalFrom, seededRandom } from "../curve/random.ts";
import type { SeriesReport } from "./series-report.ts";

/** As many draws from the same seed as the screens take, so that paper and screen say the same. */
export const draws = 1000;
export const seed = 1;

/** The chance that a dose misses its likeliest limit, simulated; null where no limit can be judged. */
export function missChance(one: SeriesReport, dose: number): number | null {
  const { choice, targets, chain } = one;
  const limits = (choice?.bars ?? []).flatMap(({ limit }) => {
    const curve = choice?.curves.find(({ response }) => response === limit.response);
    return curve ? [{ limit, curve }] : [];
  });
  if (limits.length === 0) return null;
  const chances = chanceToMiss({
    dose,
    limits,
    sharedRelative: chain.uncertaintyA?.sharedLeft ?? 0,
    driftRelative: (targets?.feedDriftPct ?? 0) / 100,
    normal: normalFrom(seededRandom(seed)),
    draws,
  });
  return Math.max(...chances.map(({ chance }) => chance));
}

/** What a dose changes in cost against the plant's present one; null where either cannot be priced. */
export function savingOf({ choice, targets }: SeriesReport, dose: number): Saving | null {
  const today = targets?.presentDoseKgPerT ?? null;
  if (!choice || today === null) return null;
  const cake = choice.curves.find(({ response }) => response === "cake_ts_pct") ?? null;
  return savingAgainst(
    dose,
    today,
    choice.cost,
    { cake, capture: null },
    choice.tested,
    normalFrom(seededRandom(seed)),
    draws,
  );
}
