import { tFactor } from "../units/student.ts";
import { drawError, flowAt, freedomOf, type PumpLine } from "./pump-line.ts";

/** What one cylinder check should show. */
export interface CylinderBand {
  expectedMl: number;
  low: number;
  high: number;
  /** half-width over the expected volume, percent */
  relativePct: number;
}

/** A band wider than this, as a half-width in percent, calls for a larger cylinder or a longer time (common practice, no source). */
export const wideBandPct = 5;

/**
 * The 95 % prediction band of one draw-down at a setting: pump line scatter and line error, joined with the cylinder's
 * reading and the stopwatch (limits plus or minus, rectangular). The factor is Student's with the effective degrees of
 * freedom of the sum (JCGM 100, annex G.4). null under three draws. On a balance all volumes are grams.
 */
export function cylinderBand(
  line: PumpLine,
  setting: number,
  seconds: number,
  reading: { cylinderLimitMl: number; watchLimitS: number },
): CylinderBand | null {
  const { flow } = flowAt(line, setting);
  const error = drawError(line, setting);
  if (error === null) return null;
  const expectedMl = (flow * seconds) / 60;
  const pump = (error * seconds) / 60;
  const cylinder = reading.cylinderLimitMl / Math.sqrt(3);
  const watch = ((flow / 60) * reading.watchLimitS) / Math.sqrt(3);
  const combined = Math.hypot(pump, cylinder, watch);
  const half =
    combined === 0 ? 0 : tFactor(pump > 0 ? freedomOf(line) * (combined / pump) ** 4 : 1e6) * combined;
  return {
    expectedMl,
    low: expectedMl - half,
    high: expectedMl + half,
    relativePct: (100 * half) / expectedMl,
  };
}
