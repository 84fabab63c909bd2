import type { DatabaseSync } from "node:sqlite";
import type { Change } from "../../src/study/history.ts";
import type { Kind, StudyState } from "../../src/study/schema/records.ts";
import { entryInSteps } from "./chain.ts";
import { atStep } from "./steps.ts";

/** Records written between two steps: a millisecond of work. */
const recordsAStep = 200;

/**
 * Writes one entry of the history with the records it touched, within a transaction; `before` is the hash of the entry
 * before it. Answers the entry's own hash. A large one is written in steps, a small one in a single one.
 */
export function* putChange(
  database: DatabaseSync,
  change: Change,
  touched: { kind: Kind; id: string }[],
  state: StudyState,
  before: string,
): Generator<number, string> {
  const { command, inverse, hash } = yield* entryInSteps(before, change);
  database
    .prepare(
      "INSERT INTO change (seq, at, by, command, inverse, undoes, redoes, why, previous_hash, hash) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?)",
    )
    .run(
      change.seq,
      change.at,
      change.by,
      command,
      inverse,
      change.undoes,
      change.redoes,
      change.why,
      before,
      hash,
    );
  atStep("edit: entry written");
  const touch = database.prepare("INSERT OR IGNORE INTO touched (kind, id, seq) VALUES (?, ?, ?)");
  const set = database.prepare("INSERT OR REPLACE INTO record (kind, id, data) VALUES (?, ?, ?)");
  const drop = database.prepare("DELETE FROM record WHERE kind = ? AND id = ?");
  for (const [index, { kind, id }] of touched.entries()) {
    if (index > 0 && index % recordsAStep === 0) {
      atStep("edit: some records written");
      yield index;
    }
    touch.run(kind, id, change.seq);
    const record = state[kind][id];
    if (record) set.run(kind, id, JSON.stringify(record));
    else drop.run(kind, id);
  }
  atStep("edit: records written");
  return hash;
}
