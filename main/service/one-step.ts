import { basename } from "node:path";
import { good, type Outcome } from "../../src/outcome.ts";
import { applyCommand, type Command } from "../../src/study/commands.ts";
import type { StudyState } from "../../src/study/schema/records.ts";
import { openStudyFile } from "../storage/study-file.ts";

/** Reads a study file and gives it back; the file is left as it is. */
export function readStudy(path: string, now: string): Outcome<{ state: StudyState; fileName: string }> {
  const file = openStudyFile(path, now);
  if (!file.ok) return file;
  try {
    const state = file.value.readState();
    return state.ok ? good({ state: state.value, fileName: basename(path) }) : state;
  } finally {
    file.value.close();
  }
}

/**
 * Makes one edit of a study file from what it holds: `work` answers the command (null for none) with what to report.
 * The edit is durable when this returns, or nothing was changed and the sentence says why.
 */
export function editStudy<T>(
  path: string,
  now: string,
  work: (state: StudyState) => Outcome<{ command: Command | null; report: T }>,
): Outcome<T> {
  const file = openStudyFile(path, now);
  if (!file.ok) return file;
  let changed = false;
  try {
    const state = file.value.readState();
    if (!state.ok) return state;
    const made = work(state.value);
    if (!made.ok) return made;
    const { command, report } = made.value;
    if (command === null) return good(report);
    const applied = applyCommand(state.value, command);
    if (!applied.ok) return applied;
    const change = {
      seq: (file.value.lastChange()?.seq ?? 0) + 1,
      at: now,
      by: "",
      command,
      inverse: applied.value.inverse,
      undoes: null,
      redoes: null,
      why: "",
    };
    const written = file.value.append(change, applied.value.touched, applied.value.state);
    changed = written.ok;
    return written.ok ? good(report) : written;
  } finally {
    // A changed study is backed up as it is closed, as in the window.
    file.value.close(changed ? now : undefined);
  }
}
