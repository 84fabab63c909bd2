import { drySolidsKgPerH } from "../plant/rates.ts";
import { settingAt, type CaseChain, type CasePolymer } from "../study/derive/plant.ts";
import { toShown } from "../units/display.ts";
import type { PaperWords } from "./words.ts";

/** Settings of one pump by feed flow (rows) and total solids (columns), for a machine run at one dose. */
export interface SettingGrid {
  /** total solids of the columns, percent */
  solidsPct: string[];
  rows: {
    /** m³/h with gal/min beside */
    flow: string;
    label: string;
    isThisCase: boolean;
    cells: GridCell[];
  }[];
}

/** A setting, or the side of the proven settings on which it would lie. */
export type GridCell = { kind: "setting"; text: string } | { kind: "above" | "below" | "missing" };

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

/** Shares of the case's own total solids that the columns stand for. */
const solidsShares = [0.8, 0.9, 1, 1.1, 1.2];

/** The table of settings around a feed case; null where the case has no load or the pump no line. */
export function settingGrid(
  base: CaseChain,
  cases: CaseChain[],
  polymer: CasePolymer,
  words: PaperWords,
): SettingGrid | null {
  const { load, densityKgPerL, totalSolidsPct } = base;
  const loadKgPerH = load.value;
  if (loadKgPerH === null || densityKgPerL === null || totalSolidsPct === null || !polymer.setting)
    return null;
  // The middle column is the case's own solids unrounded, so that it agrees with the setting above the table.
  const solidsPct = solidsShares.map((share) =>
    share === 1 ? totalSolidsPct : Number((totalSolidsPct * share).toPrecision(3)),
  );
  const line = polymer.polymer.pump?.line;
  const middle = line?.ok ? (line.value.tested.low + line.value.tested.high) / 2 : 1;
  const decimals = middle > 0 ? Math.max(0, 2 - Math.floor(Math.log10(middle))) : 0;
  return {
    solidsPct: solidsPct.map((ts) => words.number(ts, 3)),
    rows: gridFlows(cases.map((one) => ({ flowM3PerH: one.flowM3PerH, label: one.feedCase.label }))).map(
      ({ flowM3PerH, label }) => ({
        flow: `${words.number(flowM3PerH, 3)} (${words.number(toShown(flowM3PerH, "flowM3PerH", "us"), 3)})`,
        label,
        isThisCase: flowM3PerH === base.flowM3PerH,
        cells: solidsPct.map((ts): GridCell => {
          const setting = settingAt(polymer, loadKgPerH, drySolidsKgPerH(flowM3PerH, densityKgPerL, ts));
          if (!setting.ok) return { kind: "missing" };
          const { pct, status } = setting.value;
          if (pct !== null) return { kind: "setting", text: words.fixed(pct, decimals) };
          return { kind: status === "below" ? "below" : "above" };
        }),
      }),
    ),
  };
}
