const stepsAcross = 100;

/** The round step, 1, 2 or 5, in which a target is moved: about a hundredth of the axis, on a log axis of the value. */
export function targetStep(low: number, high: number, log: boolean, at: number): number {
  const rough = Math.abs((log ? at / 2 : high - low) / stepsAcross) || 1;
  const power = 10 ** Math.floor(Math.log10(rough));
  return [1, 2, 5, 10].find((one) => one * power >= rough * (1 - 1e-9))! * power;
}

/** A target moved by some steps from where it stands, on the step's own round values and within the axis. */
export function movedTarget(
  at: number,
  steps: number,
  axis: { low: number; high: number; log: boolean },
): number {
  const step = targetStep(axis.low, axis.high, axis.log, at);
  const rounded = (Math.round(at / step) + steps) * step;
  const least = Math.ceil(axis.low / step - 1e-9) * step;
  const most = Math.floor(axis.high / step + 1e-9) * step;
  return Number(Math.min(most, Math.max(least, rounded)).toPrecision(12));
}
