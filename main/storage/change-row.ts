import type { SQLOutputValue } from "node:sqlite";
import { toTheEnd } from "../../src/steps.ts";
import { parseInSteps } from "../../src/study/command-parts.ts";
import { changeSchema, type Change } from "../../src/study/history.ts";

/** A row of the table of changes as an entry of the history. Throws where it does not fit. */
export function changeOf(row: Record<string, SQLOutputValue>): Change {
  return toTheEnd(changeInSteps(row));
}

/** The same in steps, so that a large entry need not be parsed in one go. */
export function* changeInSteps(row: Record<string, SQLOutputValue>): Generator<number, Change> {
  const command: unknown = JSON.parse(String(row["command"]));
  yield 1;
  const inverse: unknown = JSON.parse(String(row["inverse"]));
  yield 2;
  const change = {
    seq: row["seq"],
    at: row["at"],
    by: row["by"],
    command,
    inverse,
    undoes: row["undoes"],
    redoes: row["redoes"],
    why: row["why"],
  };
  const parsed = yield* parseInSteps(changeSchema, change, ["command", "inverse"]);
  if (!parsed.success) throw parsed.error;
  return parsed.data;
}
