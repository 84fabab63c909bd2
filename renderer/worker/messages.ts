import type { NextJars } from "../../src/choice/next-jars.ts";
import type { RobustFit } from "../../src/curve/robust.ts";
import type { AnalyseRow, Analysis } from "../../src/curve/analyse-types.ts";
import type { UnitSystem } from "../../src/units/display.ts";
import type { DecimalMark } from "../../src/units/number-entry.ts";
import type { Language } from "../../src/words/language.ts";
import type { PackedWorking } from "./pack.ts";

/** What is worked out beside the verdict of one response. */
export interface FitExtras {
  name: string;
  robust: RobustFit | null;
  next: NextJars | null;
}

/** Rows that come before the rest of their question. */
export interface FitPart extends Pick<FitQuestion, "id" | "rows" | "labels"> {
  more: true;
}

export interface FitQuestion {
  id: number;
  rows: AnalyseRow[];
  labels: [number, string][];
  mark: DecimalMark;
  language: Language;
  /** the units that sentences tell doses in */
  system: UnitSystem;
  name: string;
}

export type FitAnswer =
  | { id: number; ok: true; analysis: Analysis; workings: PackedWorking[]; extras: FitExtras[] }
  | { id: number; ok: false; message: string };
