import type { DatabaseSync } from "node:sqlite";
import type { Change } from "../../src/study/history.ts";
import type { Kind, StudyState } from "../../src/study/schema/records.ts";
import { chainHash } from "./chain.ts";
import { atStep } from "./steps.ts";

/**
 * Writes one entry of the history with the records it touched, within a transaction; `before` is the hash of the entry
 * before it. Answers the entry's own hash.
 */
export function putChange(
  database: DatabaseSync,
  change: Change,
  touched: { kind: Kind; id: string }[],
  state: StudyState,
  before: string,
): string {
  const hash = chainHash(before, change);
  database
    .prepare(
      "INSERT INTO change (seq, at, by, command, inverse, undoes, redoes, why, previous_hash, hash) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?)",
    )
    .run(
      change.seq,
      change.at,
      change.by,
      JSON.stringify(change.command),
      JSON.stringify(change.inverse),
      change.undoes,
      change.redoes,
      change.why,
      before,
      hash,
    );
  atStep("edit: entry written");
  const touch = database.prepare("INSERT OR IGNORE INTO touched (kind, id, seq) VALUES (?, ?, ?)");
  for (const { kind, id } of touched) touch.run(kind, id, change.seq);
  const set = database.prepare("INSERT OR REPLACE INTO record (kind, id, data) VALUES (?, ?, ?)");
  const drop = database.prepare("DELETE FROM record WHERE kind = ? AND id = ?");
  for (const { kind, id } of touched) {
    const record = state[kind][id];
    if (record) set.run(kind, id, JSON.stringify(record));
    else drop.run(kind, id);
  }
  atStep("edit: records written");
  return hash;
}
