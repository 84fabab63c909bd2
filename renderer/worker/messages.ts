import type { AnalyseRow, Analysis } from "../../src/curve/analyse-types.ts";
import type { DecimalMark } from "../../src/units/number-entry.ts";
import type { PackedWorking } from "./pack.ts";

export interface FitQuestion {
  id: number;
  rows: AnalyseRow[];
  labels: [number, string][];
  mark: DecimalMark;
  name: string;
}

export type FitAnswer =
  | { id: number; ok: true; analysis: Analysis; workings: PackedWorking[] }
  | { id: number; ok: false; message: string };
