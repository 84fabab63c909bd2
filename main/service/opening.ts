import { randomUUID } from "node:crypto";
import { existsSync } from "node:fs";
import { basename, dirname } from "node:path";
import type { Opened } from "../../src/contract.ts";
import { bad, good, type Outcome } from "../../src/outcome.ts";
import { applyCommand, type Command } from "../../src/study/commands.ts";
import { undoLineOf } from "../../src/study/history.ts";
import type { StudyState } from "../../src/study/schema/records.ts";
import { sweepCopies } from "../storage/copy.ts";
import { takeName, throwAway } from "../storage/files.ts";
import { openFault } from "../storage/probe.ts";
import { createStudyFile, openStudyFile, type StudyFile } from "../storage/study-file.ts";
import type { Context, OpenStudy } from "./context.ts";
import { storageWords } from "../../src/words/storage.ts";
import { withoutLarge } from "./in-parts.ts";
import { nextMoves } from "./next-moves.ts";
import { noteClosing, noteOpened } from "./recent.ts";

/** What a page is told about the study that is open. */
export function openedOf(open: OpenStudy): Opened {
  return {
    opening: open.opening,
    fileName: basename(open.file.path),
    readOnlyBecause: open.file.readOnlyBecause,
    notices: open.file.notices,
    ...withoutLarge(open.state),
    seq: open.seq,
    savedAt: open.savedAt,
    ...nextMoves(open),
  };
}

export function closeOpen(context: Context): void {
  const { open } = context;
  noteClosing(context);
  open?.file.close(open.backup.changesSince > 0 ? context.support.now() : undefined);
  context.open = null;
}

/** The state, where it and the history can be gone on with. Never throws: the lock must be given back. */
function readWhole(file: StudyFile): Outcome<StudyState> {
  try {
    const fault = file.historyFault();
    return fault === null ? file.readState() : bad(fault);
  } catch (error) {
    return bad(openFault(error));
  }
}

/** Opens a file as the service's study; the one before it is closed only once the new one is safely open. */
export function openPath(context: Context, path: string): Outcome<OpenStudy> {
  if (context.open?.file.path === path) return good(context.open);
  const file = openStudyFile(path, context.support.now());
  if (!file.ok) return file;
  const state = readWhole(file.value);
  if (!state.ok) {
    file.value.close();
    return state;
  }
  const last = file.value.lastChange();
  sweepCopies(dirname(path), context.support.now());
  closeOpen(context);
  context.open = {
    opening: randomUUID(),
    file: file.value,
    state: state.value,
    seq: last?.seq ?? 0,
    line: undoLineOf(file.value.undoRows()),
    savedAt: last?.at ?? null,
    backup: { changesSince: 0, at: context.support.now(), running: false },
  };
  noteOpened(context);
  return good(context.open);
}

/**
 * Makes a new study file holding these edits, each its own entry of the history, and gives it its name only when it is
 * whole. Nothing that is there is overwritten; the file is left closed.
 */
export function writeNewStudy(path: string, commands: Command[], by: string, now: string): Outcome<null> {
  if (existsSync(path)) return bad(storageWords.nameTaken);
  const part = `${path}.part`;
  try {
    throwAway(part);
    const written = fillNewStudy(part, commands, by, now);
    if (written.ok) takeName(part, path);
    else throwAway(part);
    return written;
  } catch (error) {
    return bad(openFault(error));
  }
}

function fillNewStudy(path: string, commands: Command[], by: string, now: string): Outcome<null> {
  const created = createStudyFile(path);
  if (!created.ok) return created;
  const file = openStudyFile(path, now);
  if (!file.ok) return file;
  try {
    const start = file.value.readState();
    if (!start.ok) return start;
    let state = start.value;
    const steps: Parameters<StudyFile["appendAll"]>[0] = [];
    for (const [index, command] of commands.entries()) {
      const applied = applyCommand(state, command);
      if (!applied.ok) return bad(applied.message);
      state = applied.value.state;
      const change = {
        seq: index + 1,
        at: now,
        by,
        command,
        inverse: applied.value.inverse,
        undoes: null,
        redoes: null,
        why: "",
      };
      steps.push({ change, touched: applied.value.touched });
    }
    return file.value.appendAll(steps, state);
  } finally {
    file.value.close();
  }
}
