/** The share of two numbers that their subtraction may leave of nothing: rounding, and far below anything measured. */
const rounding = 1e-9;

/** a - b; nothing where both are the same number but for what the computer's rounding left. */
export function difference(a: number, b: number): number {
  const apart = a - b;
  return Math.abs(apart) <= rounding * Math.max(Math.abs(a), Math.abs(b)) ? 0 : apart;
}
