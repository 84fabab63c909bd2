import { surfaceBounds, surfaceMean } from "../../src/curve/surface-bands.ts";
import type { SurfaceFit } from "../../src/curve/surface.ts";
import type { ResponseCurve } from "../../src/curve/types.ts";
import type { useFormat } from "../stores/format.ts";

type Format = ReturnType<typeof useFormat>;

/** A fitted value and its bounds as text, all to one place, without the unit. */
export interface FittedText {
  mean: string;
  low: string;
  high: string;
}

function textOf(format: Format, mean: number, low: number, high: number): FittedText {
  const write = format.interval(mean, low, high);
  return { mean: write(mean), low: write(low), high: write(high) };
}

/** What a curve says at a dose, with its one-sided bounds. */
export const textAtDose = (format: Format, curve: ResponseCurve, doseKgPerT: number): FittedText =>
  textOf(format, curve.mean(doseKgPerT), curve.low95(doseKgPerT), curve.high95(doseKgPerT));

/** What a surface says at a pair of doses, with its bounds. */
export function textAtPair(
  format: Format,
  surface: SurfaceFit,
  { a, b }: { a: number; b: number },
): FittedText {
  const { low, high } = surfaceBounds(surface, a, b);
  return textOf(format, surfaceMean(surface, a, b), low, high);
}
