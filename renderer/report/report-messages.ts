import type { Paper } from "../../src/report/paper.ts";
import type { PaperInput } from "../../src/report/paper-input.ts";
import type { Language } from "../../src/words/language.ts";
import type { StatePart } from "../worker/send-state.ts";

/** What the screen tells the worker that makes reports. The study goes before, in parts, where it is another one. */
export type ReportQuestion =
  StatePart | { do: "make"; id: number; language: Language; base: Omit<PaperInput, "state"> };

export type ReportAnswer =
  | { id: number; say: "fitting"; done: number; total: number }
  | { id: number; say: "made"; paper: Paper }
  | { id: number; say: "failed" };
