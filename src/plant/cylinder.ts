import { flowAt, type PumpLine } from "./pump-line.ts";

/** What one cylinder check should show. */
export interface CylinderBand {
  expectedMl: number;
  low: number;
  high: number;
  /** half-width over the expected volume, percent */
  relativePct: number;
}

/**
 * The 95 % prediction band of one draw-down at a setting: pump line scatter and line error, joined in quadrature with
 * the cylinder's reading and the stopwatch. null under three draws. Limits are plus or minus and rectangular.
 */
export function cylinderBand(
  line: PumpLine,
  setting: number,
  seconds: number,
  reading: { cylinderLimitMl: number; watchLimitS: number },
): CylinderBand | null {
  const { flow, halfWidth } = flowAt(line, setting);
  if (halfWidth === null) return null;
  const expectedMl = (flow * seconds) / 60;
  const pump = (halfWidth * seconds) / 60;
  const cylinder = (1.96 * reading.cylinderLimitMl) / Math.sqrt(3);
  const watch = (1.96 * ((flow / 60) * reading.watchLimitS)) / Math.sqrt(3);
  const half = Math.hypot(pump, cylinder, watch);
  return {
    expectedMl,
    low: expectedMl - half,
    high: expectedMl + half,
    relativePct: (100 * half) / expectedMl,
  };
}
