import { watched, type DriftChain } from "../study/derive/plant-watch.ts";
import { toShown, unitText, type UnitSystem } from "../units/display.ts";
import type { PrintedDrift } from "./drift-chart.ts";

/** How the limits of a drift chart are made, said under it. */
export const driftMethod =
  "Individuals chart: middle ± 3 x mean moving range / 1.128, from all runs before the latest (Shewhart, from memory); a square is a signal.";

/** What is said where nothing drifted. */
export const noDrift = "No drift: nothing says to run the jars again.";

/** A drift chart in one system of units; null where there are too few runs for limits. */
export function printedDrift(
  { what, chart, runs, reason }: DriftChain,
  system: UnitSystem,
): PrintedDrift | null {
  if (!chart.ok) return null;
  const { words, quantity, log } = watched[what];
  const shown = (value: number) => toShown(log ? Math.exp(value) : value, quantity, system);
  const { low, middle, high, points } = chart.value;
  return {
    title: `Drift of the ${words}`,
    valueLabel: `${words}, ${unitText(quantity, system)}`,
    sentence: reason || noDrift,
    log,
    runs: points.map(({ value, signal }, i) => ({
      label: runs[i]?.run.label ?? "",
      value: shown(value),
      signal: signal !== null,
    })),
    limits: [
      { name: "upper limit", value: shown(high), strong: false },
      { name: "middle", value: shown(middle), strong: true },
      { name: "lower limit", value: shown(low), strong: false },
    ],
  };
}
