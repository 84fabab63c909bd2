import type { StudyFile } from "../storage/study-file.ts";
import type { Answer, CallName, InputOf, OutputOf } from "../../src/contract.ts";
import type { UndoLine } from "../../src/study/history.ts";
import type { Library } from "./library.ts";
import type { StudyState } from "../../src/study/schema/records.ts";

/** What a host brings: the clock, where studies lie, and its own file dialogs where it has them. */
export interface HostSupport {
  host: "electron" | "loopback";
  version: string;
  now(): string;
  folder: string;
  /** where the list of studies opened last is kept; without it none is kept */
  recentFile?: string;
  dialogs: {
    chooseOpen(): Promise<string | null>;
    chooseSave(suggestedName: string): Promise<string | null>;
  } | null;
  /** prints what the window shows into a PDF file of the person's choice; false where the choice was cancelled */
  savePdf?(suggestedName: string, paperSize: "A4" | "Letter"): Promise<boolean>;
}

/** The study that is open in this service. */
export interface OpenStudy {
  /** names this opening of the file, so that a window showing an earlier one is told apart */
  opening: string;
  file: StudyFile;
  state: StudyState;
  seq: number;
  line: UndoLine;
  savedAt: string | null;
  /** what has changed since the last backup, when that was, and whether one is being made */
  backup: { changesSince: number; at: string; running: boolean };
}

export interface Context {
  support: HostSupport;
  open: OpenStudy | null;
  /** the host's own tokens for files: a page never names a path */
  refs: Map<string, string>;
  /** the studies of the folder as they are compared; null until somebody looks */
  library: Library | null;
  /** ends when what was asked for last is done */
  last: Promise<unknown>;
}

export type Handler<N extends CallName> = (
  context: Context,
  input: InputOf<N>,
) => Promise<Answer<OutputOf<N>>> | Answer<OutputOf<N>>;
export type Handlers = { [N in CallName]: Handler<N> };

/**
 * Does work once everything asked for before it is done, so that nothing meets a study in the middle of a step that is
 * applied and written in slices.
 */
export function inTurn<T>(context: Context, work: () => Promise<T> | T): Promise<T> {
  const done = context.last.then(work);
  context.last = done.catch(() => undefined);
  return done;
}

/** A value that was had. */
export function ok<T>(value: T): Answer<T> {
  return { ok: true, value };
}

/** A refusal with its sentence. */
export function refused<T>(
  message: string,
  code: Extract<Answer<T>, { ok: false }>["code"] = "refused",
): Answer<T> {
  return { ok: false, code, message };
}
