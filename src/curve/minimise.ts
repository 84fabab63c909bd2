const golden = (Math.sqrt(5) - 1) / 2;

/** The lowest point of a function on [low, high] by golden section; `f` may answer Infinity where it has no value. */
export function goldenMinimum(
  f: (at: number) => number,
  low: number,
  high: number,
  rounds = 40,
): { at: number; value: number } {
  let a = low;
  let b = high;
  let c = b - golden * (b - a);
  let d = a + golden * (b - a);
  let fc = f(c);
  let fd = f(d);
  for (let i = 0; i < rounds; i++) {
    if (fc <= fd) {
      b = d;
      d = c;
      fd = fc;
      c = b - golden * (b - a);
      fc = f(c);
    } else {
      a = c;
      c = d;
      fc = fd;
      d = a + golden * (b - a);
      fd = f(d);
    }
  }
  return fc <= fd ? { at: c, value: fc } : { at: d, value: fd };
}

/** The lowest point near `start` of a function of a few variables (Nelder & Mead), with the given first step sizes. */
export function simplexMinimum(
  f: (at: number[]) => number,
  start: number[],
  stepSizes: number[],
  rounds = 600,
): { at: number[]; value: number; spread: number } {
  const points = [
    start,
    ...start.map((_, k) => start.map((value, j) => value + (j === k ? stepSizes[k]! : 0))),
  ].map((at) => ({ at, value: f(at) }));
  const blend = (from: number[], to: number[], share: number) =>
    from.map((value, k) => value + share * (to[k]! - value));
  for (let round = 0; round < rounds; round++) {
    points.sort((a, b) => a.value - b.value);
    const best = points[0]!;
    const worst = points.at(-1)!;
    if (Math.abs(worst.value - best.value) < 1e-12 * (1 + Math.abs(best.value))) break;
    const others = points.slice(0, -1);
    const centre = start.map((_, k) => others.reduce((sum, point) => sum + point.at[k]!, 0) / others.length);
    const tried = (share: number) => {
      const at = blend(centre, worst.at, share);
      return { at, value: f(at) };
    };
    const reflected = tried(-1);
    const second = points[points.length - 2]!;
    let next = reflected;
    if (reflected.value < best.value) {
      const expanded = tried(-2);
      next = expanded.value < reflected.value ? expanded : reflected;
    } else if (reflected.value >= second.value) {
      next = reflected.value < worst.value ? tried(-0.5) : tried(0.5);
      if (next.value >= Math.min(worst.value, reflected.value)) {
        for (let i = 1; i < points.length; i++) {
          const at = blend(best.at, points[i]!.at, 0.5);
          points[i] = { at, value: f(at) };
        }
        continue;
      }
    }
    points[points.length - 1] = next;
  }
  points.sort((a, b) => a.value - b.value);
  return { at: points[0]!.at, value: points[0]!.value, spread: points.at(-1)!.value - points[0]!.value };
}
