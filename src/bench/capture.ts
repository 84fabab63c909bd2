import { bad, good, type Outcome } from "../outcome.ts";

/** Solids of the three streams, percent by mass, on one basis; dilution = added liquid over feed, by mass. */
export interface CaptureInput {
  feedPct: number;
  cakePct: number;
  filtratePct: number;
  dilution: number;
}

/**
 * Solids capture in percent by the three-stream balance with added water: C (F - (1 + d) E) / (F (C - E)).
 * Exact with d = 0 only where no liquid joins between feed and sample.
 */
export function capturePct({ feedPct, cakePct, filtratePct, dilution }: CaptureInput): Outcome<number> {
  if (!(feedPct > 0)) return bad("the feed solids must be above 0");
  if (!(cakePct > feedPct)) return bad("the cake must be drier than the feed");
  if (!(filtratePct >= 0 && filtratePct < feedPct))
    return bad("the filtrate must hold less solids than the feed");
  if (!(dilution >= 0)) return bad("the added liquid must not be negative");
  const share = (cakePct * (feedPct - (1 + dilution) * filtratePct)) / (feedPct * (cakePct - filtratePct));
  if (share <= 0)
    return bad("more solids leave with the filtrate than came with the feed: check the readings");
  return good(100 * share);
}
