import { drySolidsKgPerH } from "../plant/rates.ts";
import { settingAt, type CaseChain, type CasePolymer } from "../study/derive/plant.ts";
import { gridFlows, gridSolids, settingDecimals } from "../study/derive/plant-grid.ts";
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
  const solidsPct = gridSolids(totalSolidsPct);
  const decimals = settingDecimals(polymer.polymer.pump);
  return {
    solidsPct: solidsPct.map((ts) => words.givenBare(ts, "percent")),
    rows: gridFlows(cases.map((one) => ({ flowM3PerH: one.flowM3PerH, label: one.feedCase.label }))).map(
      ({ flowM3PerH, label }) => ({
        flow: words.givenBare(flowM3PerH, "flowM3PerH"),
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
