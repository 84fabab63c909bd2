/** One response's wish: worst and best value (either may be the larger), a power r and a weight. */
export interface Wish {
  worst: number;
  best: number;
  power?: number;
  weight: number;
}

/** One-sided desirability from 0 at the worst to 1 at the best value (Derringer & Suich 1980, J. Qual. Technol. 12:214). */
export function desirability(value: number, { worst, best, power = 1 }: Wish): number {
  const share = (value - worst) / (best - worst);
  return Math.min(1, Math.max(0, share)) ** power;
}

/** Two-sided desirability around a target between two ends. */
export function targetDesirability(value: number, low: number, target: number, high: number): number {
  if (value <= low || value >= high) return 0;
  return value <= target ? (value - low) / (target - low) : (high - value) / (high - target);
}

/** Weighted geometric mean of desirabilities: 0 as soon as one of them is 0. */
export function overallDesirability(parts: { desirability: number; weight: number }[]): number {
  const total = parts.reduce((sum, part) => sum + part.weight, 0);
  if (!(total > 0)) return 0;
  if (parts.some((part) => part.weight > 0 && part.desirability <= 0)) return 0;
  return Math.exp(
    parts.reduce((sum, part) => sum + (part.weight > 0 ? part.weight * Math.log(part.desirability) : 0), 0) /
      total,
  );
}
