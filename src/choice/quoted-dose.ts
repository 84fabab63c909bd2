/**
 * Half-width (95 %, k = 2) of the dose quoted for the plant: the fit's own half-width joined in quadrature with the
 * error shared by all jars, of which only what the plant's conversion does not repeat is left.
 * Check: 5.53644 with 0.1147 and 2.239 % gives 0.2732 (trade formulas, worked 5.1).
 */
export function quotedHalfWidth(dose: number, fitHalfWidth: number, sharedRelative: number): number {
  return Math.hypot(fitHalfWidth, 2 * sharedRelative * dose);
}
