/** Stroke-times-speed flow of a reciprocating pump, with the stroke at which it stops delivering (percent, ideal 0). */
export function strokeSpeedFlow(
  rated: number,
  strokePct: number,
  speedPct: number,
  zeroStrokePct = 0,
): number {
  return (rated * (strokePct - zeroStrokePct) * speedPct) / (100 - zeroStrokePct) / 100;
}

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
