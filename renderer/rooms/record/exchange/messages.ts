import type { ColumnUse } from "../../../../src/exchange/columns.ts";
import type { DecimalMark } from "../../../../src/units/number-entry.ts";
import type { ExportFormat } from "../../../../src/study/exchange/export-file.ts";
import type { ImportPlan } from "../../../../src/study/exchange/import-plan.ts";
import type { NewSeriesChoice } from "../../../../src/study/exchange/series-targets.ts";
import type { StatePart } from "../../../worker/send-state.ts";
import type { Language } from "../../../../src/words/language.ts";

/** A file as it was found: what can be chosen in it. */
export interface FoundFile {
  kind: "separated" | "workbook";
  encoding: "UTF-8" | "UTF-16" | "Western European" | null;
  sheets: { name: string; rows: number; headLine: number }[];
}

/** One sheet under its heads, for the columns to be matched. */
export interface FoundTable {
  heads: string[];
  /** for each column, its first few filled cells */
  examples: string[][];
  rows: number;
  separator: "," | ";" | "\t" | null;
  guesses: ColumnUse[];
}

export interface TableQuestion {
  sheet: number;
  headLine: number;
}

export interface PlanQuestion extends TableQuestion {
  uses: ColumnUse[];
  mark: DecimalMark | null;
  seriesName: string | null;
  fallbackName: string;
  choice: NewSeriesChoice;
  skipBad: boolean;
  readAgain: boolean;
}

/** How far a piece of work is. */
export interface WorkStep {
  step: "jars" | "rows" | "records" | "lines";
  done: number;
  total: number;
}

/** What the screen asks its worker, and what each question is answered with. The study goes before, in parts. */
export interface Questions {
  read: { asked: { bytes: ArrayBuffer; name: string }; answered: FoundFile };
  table: { asked: TableQuestion; answered: FoundTable };
  plan: {
    asked: PlanQuestion;
    /** `parts` are the plan's commands, lists of them as JSON */
    answered: { plan: ImportPlan; mark: DecimalMark | null; parts: string[] };
  };
  export: {
    asked: { format: ExportFormat; seriesId: string | null };
    answered: { bytes: Uint8Array<ArrayBuffer> };
  };
}
export type QuestionName = keyof Questions;
export type Question = {
  [N in QuestionName]: { id: number; name: N; language: Language; asked: Questions[N]["asked"] };
}[QuestionName];
export type ToWorker = Question | StatePart;
export type WorkerAnswer =
  /** said now and then while a question is being worked on */
  | { id: number; at: WorkStep }
  /**
   * some of the commands of a plan as JSON, before the answer itself, which then holds none: text costs the screen's
   * thread next to nothing until somebody adds the jars
   */
  | { id: number; part: string }
  | { id: number; ok: true; value: Questions[QuestionName]["answered"] }
  | { id: number; ok: false; message: string };
