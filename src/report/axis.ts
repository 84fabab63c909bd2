/** One axis of a printed chart: where a value falls between two ends, and the round values worth a tick. */
export interface Axis {
  low: number;
  high: number;
  log: boolean;
  /** position of a value in user units */
  at(value: number): number;
  ticks: number[];
}

const usualTicks = 7;

/** An axis from `from` to `to` in user units with `most` ticks at most. On a log axis both ends must be above 0. */
export function axis(
  low: number,
  high: number,
  from: number,
  to: number,
  log: boolean,
  most = usualTicks,
): Axis {
  const scale = log ? Math.log : (value: number) => value;
  const a = scale(low);
  const span = scale(high) - a || 1;
  return {
    low,
    high,
    log,
    at: (value) => from + ((scale(value) - a) / span) * (to - from),
    ticks: roundTicks(low, high, log, most),
  };
}

/**
 * The round values between two ends that are worth a tick, `most` at most: steps of 1, 2 or 5, on a log axis those
 * digits of every power of ten, or the powers alone where that is too many.
 */
export function roundTicks(low: number, high: number, log: boolean, most = usualTicks): number[] {
  return log ? logTicks(low, high, most) : linearTicks(low, high, most);
}

function linearTicks(low: number, high: number, most: number): number[] {
  const rough = (high - low) / Math.max(1, most - 1);
  if (!(rough > 0)) return [low];
  const power = 10 ** Math.floor(Math.log10(rough));
  const step = [1, 2, 5, 10].find((one) => one * power >= rough)! * power;
  const first = Math.ceil(low / step - 1e-9);
  const last = Math.floor(high / step + 1e-9);
  return Array.from({ length: last - first + 1 }, (_, i) => Number(((first + i) * step).toPrecision(12)));
}

function logTicks(low: number, high: number, most: number): number[] {
  const withDigits = (digits: number[]) => {
    const all: number[] = [];
    for (let power = Math.floor(Math.log10(low)); power <= Math.ceil(Math.log10(high)); power++)
      for (const digit of digits) {
        const value = Number((digit * 10 ** power).toPrecision(6));
        if (value >= low && value <= high) all.push(value);
      }
    return all;
  };
  const fine = withDigits([1, 2, 5]);
  if (fine.length < 2) return linearTicks(low, high, most);
  if (fine.length <= most) return fine;
  const powers = withDigits([1]);
  return powers.length >= 2 ? powers : fine.filter((_, i) => i % Math.ceil(fine.length / most) === 0);
}
