import type { SQLOutputValue } from "node:sqlite";
import { bad, good, type Outcome } from "../../src/outcome.ts";
import { readRecord } from "../../src/study/schema/read.ts";
import {
  emptyState,
  kinds,
  type AnyRecord,
  type Kind,
  type StudyState,
} from "../../src/study/schema/records.ts";
import { storageWords } from "../../src/words/storage.ts";
import { lostReference } from "./lost-reference.ts";

/** The rows of the table of records (kind, id, data) as a study, or one sentence for the first that does not fit. */
export function tablesOf(rows: SQLOutputValue[][]): Outcome<StudyState> {
  const tables = emptyState() as Record<Kind, Record<string, AnyRecord>>;
  for (const [kindText, idText, text] of rows) {
    const kind = String(kindText) as Kind;
    if (!kinds.includes(kind)) return bad(storageWords.content.unknownKind(kind));
    let value: unknown;
    try {
      value = JSON.parse(String(text));
    } catch {
      return bad(storageWords.content.badRecord);
    }
    const record = readRecord(kind, value);
    if (!record.ok) return record;
    const id = String(idText);
    if (record.value.id !== id) return bad(storageWords.content.wrongKind(kind));
    tables[kind][id] = record.value;
  }
  const lost = lostReference(tables);
  return lost ? bad(lost) : good(tables as StudyState);
}
