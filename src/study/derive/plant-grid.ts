import { digitsByHabit } from "../../units/digits.ts";
import type { PumpChain } from "./plant-pump.ts";

/** The axes of a table of settings, alike on the screen and on paper. */
export interface GridFlow {
  flowM3PerH: number;
  /** the feed case that runs at this flow, where one does */
  label: string;
}

const rowCount = 5;

/** The feed cases' own flows, with rounded ones in the widest gaps between them, rising. */
export function gridFlows(cases: { flowM3PerH: number | null; label: string }[]): GridFlow[] {
  const kept = cases
    .flatMap(({ flowM3PerH, label }) => (flowM3PerH === null ? [] : [{ flowM3PerH, label }]))
    .sort((a, b) => a.flowM3PerH - b.flowM3PerH);
  const [only] = kept;
  if (!only) return [];
  if (kept.length === 1) {
    kept.unshift(rounded(only.flowM3PerH * 0.6));
    kept.push(rounded(only.flowM3PerH * 1.3));
  }
  while (kept.length < rowCount) {
    const gaps = kept.slice(1).map((flow, i) => flow.flowM3PerH - kept[i]!.flowM3PerH);
    const widest = gaps.indexOf(Math.max(...gaps));
    const middle = rounded((kept[widest]!.flowM3PerH + kept[widest + 1]!.flowM3PerH) / 2);
    if (kept.some((one) => one.flowM3PerH === middle.flowM3PerH)) break;
    kept.splice(widest + 1, 0, middle);
  }
  return kept;
}

const rounded = (flow: number): GridFlow => ({ flowM3PerH: Number(flow.toPrecision(2)), label: "" });

const solidsShares = [0.8, 0.9, 1, 1.1, 1.2];

/**
 * Total solids of a table's columns around a feed case's own, percent. The middle one is not rounded, so that the
 * table agrees with the setting above it.
 */
export function gridSolids(totalSolidsPct: number): number[] {
  return solidsShares.map((share) =>
    share === 1 ? totalSolidsPct : Number((totalSolidsPct * share).toPrecision(3)),
  );
}

/** Decimals of the settings in a table of them: three significant digits in the middle of the settings tested. */
export function settingDecimals(pump: PumpChain | null): number {
  const line = pump?.line;
  const middle = line?.ok ? (line.value.tested.low + line.value.tested.high) / 2 : 1;
  return middle > 0 ? Math.max(0, digitsByHabit - 1 - Math.floor(Math.log10(middle))) : 0;
}
