import { plantWatchWords } from "../words/plant-watch.ts";
import { watched, type DriftChain } from "../study/derive/plant-watch.ts";
import { toShown, unitText, type UnitSystem } from "../units/display.ts";
import type { PrintedDrift } from "./drift-chart.ts";

/** A drift chart in one system of units; null where there are too few runs for limits. */
export function printedDrift(
  { what, chart, runs, reason }: DriftChain,
  system: UnitSystem,
): PrintedDrift | null {
  if (!chart.ok) return null;
  const { quantity, log } = watched[what];
  const words = plantWatchWords.watched[what];
  const shown = (value: number) => toShown(log ? Math.exp(value) : value, quantity, system);
  const { low, middle, high, points } = chart.value;
  return {
    title: plantWatchWords.drift(words),
    valueLabel: plantWatchWords.inUnit(words, unitText(quantity, system)),
    sentence: reason || plantWatchWords.noDrift,
    log,
    runs: points.map(({ value, signal }, i) => ({
      label: runs[i]?.run.label ?? "",
      value: shown(value),
      signal: signal !== null,
    })),
    limits: [
      { name: plantWatchWords.limits.upper, value: shown(high), strong: false },
      { name: plantWatchWords.limits.middle, value: shown(middle), strong: true },
      { name: plantWatchWords.limits.lower, value: shown(low), strong: false },
    ],
  };
}
