import type { ResponseCurve } from "../curve/types.ts";
import { costAt, type CostInput } from "./cost.ts";

export interface Saving {
  /** change in cost per tonne dry solids, new minus today's: negative saves */
  perTDs: number;
  low: number;
  high: number;
  /** the chance that the new dose really costs less */
  chanceReal: number;
}

/**
 * What moving from today's dose to another changes in cost, by simulation of the cake and capture curves' error: both
 * doses are read off the same simulated curves, so that what they share cancels. null where nothing is priced, or
 * today's dose lies outside what was tested.
 */
export function savingAgainst(
  dose: number,
  today: number,
  cost: CostInput,
  curves: { cake: ResponseCurve | null; capture: ResponseCurve | null },
  tested: { low: number; high: number },
  normal: () => number,
  draws: number,
): Saving | null {
  if (today < tested.low || today > tested.high) return null;
  const now = costAt(today, cost).total;
  const next = costAt(dose, cost).total;
  if (now === null || next === null) return null;
  const changes: number[] = [];
  for (let draw = 0; draw < draws; draw++) {
    const cake = curves.cake?.simulate?.(normal) ?? cost.cakePct;
    const capture = curves.capture?.simulate?.(normal) ?? cost.capturePct;
    const simulated = { ...cost, cakePct: cake, capturePct: capture };
    const a = costAt(dose, simulated).total;
    const b = costAt(today, simulated).total;
    if (a !== null && b !== null && Number.isFinite(a - b)) changes.push(a - b);
  }
  if (changes.length < draws / 2) return null;
  changes.sort((a, b) => a - b);
  const at = (p: number) => changes[Math.min(changes.length - 1, Math.floor(p * changes.length))]!;
  return {
    perTDs: next - now,
    low: at(0.025),
    high: at(0.975),
    chanceReal: changes.filter((change) => change < 0).length / changes.length,
  };
}
