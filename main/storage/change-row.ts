import type { SQLOutputValue } from "node:sqlite";
import { changeSchema, type Change } from "../../src/study/history.ts";

/** A row of the table of changes as an entry of the history. Throws where it does not fit. */
export function changeOf(row: Record<string, SQLOutputValue>): Change {
  return changeSchema.parse({
    seq: row["seq"],
    at: row["at"],
    by: row["by"],
    command: JSON.parse(String(row["command"])),
    inverse: JSON.parse(String(row["inverse"])),
    undoes: row["undoes"],
    redoes: row["redoes"],
    why: row["why"],
  });
}
