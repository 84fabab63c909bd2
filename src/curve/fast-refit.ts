/**
 * Refits of one shape to many resampled responses on the same doses, warm-started from the fit to the real ones:
 * Gauss-Newton with halved steps on storage that is laid out once. The steps come from normal equations, which only
 * steer; where they lead is the same least-squares solution the full solver finds (checked in the tests and the bench).
 */
export interface FastShape {
  parameters: number;
  /** fills fitted values and row-major gradients for all doses */
  fill(x: Float64Array, parameters: Float64Array, fitted: Float64Array, jacobian: Float64Array): void;
}

const maxIterations = 40;
const stepGoal = 1e-9;

/** A refitter for these doses: call it with responses and a start; answers whether it converged, parameters in `out`. */
export function fastRefitter(shape: FastShape, doses: number[]) {
  const n = doses.length;
  const p = shape.parameters;
  const x = Float64Array.from(doses);
  const fitted = new Float64Array(n);
  const jacobian = new Float64Array(n * p);
  const trial = new Float64Array(p);
  const gradient = new Float64Array(p);
  const step = new Float64Array(p);
  const normal = new Float64Array(p * p);

  const sumAt = (y: Float64Array, parameters: Float64Array): number => {
    shape.fill(x, parameters, fitted, jacobian);
    let rss = 0;
    for (let i = 0; i < n; i++) {
      const r = y[i]! - fitted[i]!;
      rss += r * r;
    }
    return rss;
  };

  return (y: Float64Array, start: ArrayLike<number>, out: Float64Array): boolean => {
    out.set(start);
    let rss = sumAt(y, out);
    for (let iteration = 0; iteration < maxIterations; iteration++) {
      normal.fill(0);
      gradient.fill(0);
      for (let i = 0, at = 0; i < n; i++, at += p) {
        const r = y[i]! - fitted[i]!;
        for (let j = 0; j < p; j++) {
          const g = jacobian[at + j]!;
          gradient[j]! += g * r;
          for (let k = 0; k <= j; k++) normal[j * p + k]! += g * jacobian[at + k]!;
        }
      }
      if (!solveCholesky(normal, gradient, step, p)) return false;
      let size = 0;
      for (let j = 0; j < p; j++) size = Math.max(size, Math.abs(step[j]!) / (Math.abs(out[j]!) + 1e-12));
      let shrink = 1;
      let next = Infinity;
      for (let halving = 0; halving < 12; halving++) {
        for (let j = 0; j < p; j++) trial[j] = out[j]! + shrink * step[j]!;
        next = sumAt(y, trial);
        if (next <= rss * (1 + 1e-14)) break;
        shrink /= 2;
      }
      if (!(next <= rss * (1 + 1e-12))) return false;
      out.set(trial);
      rss = next;
      if (size < stepGoal) return true;
    }
    return false;
  };
}

/** Solves a small symmetric positive system given by its lower triangle; false where it is not positive. */
export function solveCholesky(a: Float64Array, b: Float64Array, x: Float64Array, p: number): boolean {
  for (let j = 0; j < p; j++) {
    let diagonal = a[j * p + j]!;
    for (let k = 0; k < j; k++) diagonal -= a[j * p + k]! * a[j * p + k]!;
    if (!(diagonal > 0)) return false;
    const root = Math.sqrt(diagonal);
    a[j * p + j] = root;
    for (let i = j + 1; i < p; i++) {
      let sum = a[i * p + j]!;
      for (let k = 0; k < j; k++) sum -= a[i * p + k]! * a[j * p + k]!;
      a[i * p + j] = sum / root;
    }
  }
  for (let i = 0; i < p; i++) {
    let sum = b[i]!;
    for (let k = 0; k < i; k++) sum -= a[i * p + k]! * x[k]!;
    x[i] = sum / a[i * p + i]!;
  }
  for (let i = p - 1; i >= 0; i--) {
    let sum = x[i]!;
    for (let k = i + 1; k < p; k++) sum -= a[k * p + i]! * x[k]!;
    x[i] = sum / a[i * p + i]!;
  }
  return true;
}
