/**
 * Corrected Akaike criterion from a deviance (n ln(rss/n) for least squares, -2 ln L with all constants for maximum
 * likelihood) and K = free parameters + 1. null where n - K - 1 <= 0: too few jars to rank.
 * Source: Hurvich & Tsai 1989.
 */
export function aiccFrom(deviance: number, n: number, freeParameters: number): number | null {
  const k = freeParameters + 1;
  const room = n - k - 1;
  if (room <= 0 || !Number.isFinite(deviance)) return null;
  return deviance + 2 * k + (2 * k * (k + 1)) / room;
}
