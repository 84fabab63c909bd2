/**
 * Least squares on flat row-major storage, for inner loops that run thousands of times on a handful of rows.
 * Overwrites `a` (n x p) and `b` (n); checked in the tests against the full solver.
 */
export interface SmallSolution {
  /** null where a column adds nothing that can be told apart */
  x: Float64Array | null;
  /** sum of squares that is left */
  rss: number;
  /** length of the part of b that the columns explain */
  explained: number;
}

export function smallLeastSquares(a: Float64Array, b: Float64Array, n: number, p: number): SmallSolution {
  let singular = n < p;
  const diagonal = new Float64Array(p);
  for (let k = 0; k < p && !singular; k++) {
    let norm = 0;
    for (let i = k; i < n; i++) norm += a[i * p + k]! * a[i * p + k]!;
    norm = Math.sqrt(norm);
    if (!(norm > 0) || !Number.isFinite(norm)) {
      singular = true;
      break;
    }
    const pivot = a[k * p + k]!;
    const alpha = pivot > 0 ? -norm : norm;
    const head = pivot - alpha;
    diagonal[k] = alpha;
    const scale = -1 / (alpha * head);
    a[k * p + k] = head;
    for (let j = k + 1; j < p; j++) {
      let dot = 0;
      for (let i = k; i < n; i++) dot += a[i * p + k]! * a[i * p + j]!;
      dot *= scale;
      for (let i = k; i < n; i++) a[i * p + j]! -= dot * a[i * p + k]!;
    }
    let dot = 0;
    for (let i = k; i < n; i++) dot += a[i * p + k]! * b[i]!;
    dot *= scale;
    for (let i = k; i < n; i++) b[i]! -= dot * a[i * p + k]!;
  }
  let rss = 0;
  for (let i = p; i < n; i++) rss += b[i]! * b[i]!;
  let explained = 0;
  for (let i = 0; i < Math.min(n, p); i++) explained += b[i]! * b[i]!;
  let largest = 0;
  for (let k = 0; k < p; k++) largest = Math.max(largest, Math.abs(diagonal[k]!));
  for (let k = 0; k < p; k++) if (!(Math.abs(diagonal[k]!) > 1e-13 * largest)) singular = true;
  if (singular) return { x: null, rss, explained: Math.sqrt(explained) };
  const x = new Float64Array(p);
  for (let k = p - 1; k >= 0; k--) {
    let sum = b[k]!;
    for (let j = k + 1; j < p; j++) sum -= a[k * p + j]! * x[j]!;
    x[k] = sum / diagonal[k]!;
  }
  return { x, rss, explained: Math.sqrt(explained) };
}
