/** Machine loading: dry solids per hour over the effective width, kg/(h·m). */
export function loadingKgPerHPerM(dsKgPerH: number, effectiveWidthM: number): number {
  return dsKgPerH / effectiveWidthM;
}

/** The dose that fixed pumps really give when the feed's solids drift: D TS0 / TS. */
export function driftedDose(doseKgPerT: number, setAtPct: number, actualPct: number): number {
  return (doseKgPerT * setAtPct) / actualPct;
}

/** Length and volume of pipe between two injection points for a delay: L = 4 Q tau / (pi d^2). */
export function pipeForDelay(
  flowM3PerH: number,
  delayS: number,
  diameterMm: number,
): { lengthM: number; volumeL: number; velocityMPerS: number } {
  const area = (Math.PI * (diameterMm / 1000) ** 2) / 4;
  const velocityMPerS = flowM3PerH / 3600 / area;
  return { lengthM: velocityMPerS * delayS, volumeL: (flowM3PerH / 3.6) * delayS, velocityMPerS };
}
