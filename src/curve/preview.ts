import regression from "regression";

/**
 * The instant preview while jars come in: a polynomial of order 1 to 3 (as many as the distinct doses carry), on the
 * response's own scale, with 12 decimals. Not a result: never used for a verdict. null below three points.
 */
export function previewPolynomial(
  points: { x: number; y: number }[],
  order: 1 | 2 | 3,
): { coefficients: number[]; at(x: number): number } | null {
  const distinct = new Set(points.map((point) => point.x)).size;
  if (points.length < 3 || distinct < order + 1) return null;
  const fitted = regression.polynomial(
    points.map(({ x, y }) => [x, y]),
    { order, precision: 12 },
  );
  // The library lists the highest power first.
  const coefficients = [...fitted.equation].reverse();
  if (!coefficients.every(Number.isFinite)) return null;
  return { coefficients, at: (x) => coefficients.reduceRight((sum, b) => sum * x + b, 0) };
}
