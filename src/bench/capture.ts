import { bad, good, type Outcome } from "../outcome.ts";
import { benchFormulaWords } from "../words/bench-formulas.ts";

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
  if (!(feedPct > 0)) return bad(benchFormulaWords.capture.feed);
  if (!(cakePct > feedPct)) return bad(benchFormulaWords.capture.cake);
  if (!(filtratePct >= 0 && filtratePct < feedPct)) return bad(benchFormulaWords.capture.filtrate);
  if (!(dilution >= 0)) return bad(benchFormulaWords.capture.added);
  const share = (cakePct * (feedPct - (1 + dilution) * filtratePct)) / (feedPct * (cakePct - filtratePct));
  if (share <= 0) return bad(benchFormulaWords.capture.balance);
  return good(100 * share);
}
