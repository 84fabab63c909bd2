import type { NextJars } from "../../src/choice/next-jars.ts";
import type { RobustFit } from "../../src/curve/robust.ts";
import type { AnalyseRow, Analysis, ResponseName } from "../../src/curve/analyse-types.ts";
import type { UnitSystem } from "../../src/units/display.ts";
import type { DecimalMark } from "../../src/units/number-entry.ts";
import type { PackedWorking } from "./pack.ts";

/** What is worked out beside the verdict of one response. */
export interface FitExtras {
  name: ResponseName;
  robust: RobustFit | null;
  next: NextJars | null;
}

export interface FitQuestion {
  id: number;
  rows: AnalyseRow[];
  labels: [number, string][];
  mark: DecimalMark;
  /** the units that sentences tell doses in */
  system: UnitSystem;
  name: string;
}

export type FitAnswer =
  | { id: number; ok: true; analysis: Analysis; workings: PackedWorking[]; extras: FitExtras[] }
  | { id: number; ok: false; message: string };
