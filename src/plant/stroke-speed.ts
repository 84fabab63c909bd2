/**
 * The stroke that at the held speed gives what this stroke gives at this speed: draw-downs at several speeds then make
 * one line. All in percent.
 */
export function strokeAtHeldSpeed(
  strokePct: number,
  speedPct: number,
  heldSpeedPct: number,
  zeroStrokePct: number,
): number {
  return zeroStrokePct + ((strokePct - zeroStrokePct) * speedPct) / heldSpeedPct;
}
