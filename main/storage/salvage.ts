import {
  closeSync,
  copyFileSync,
  mkdtempSync,
  openSync,
  readSync,
  rmSync,
  statSync,
  truncateSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { DatabaseSync } from "node:sqlite";
import { bad, good, type Outcome } from "../../src/outcome.ts";
import { applyCommand, commandSchema } from "../../src/study/commands.ts";
import { references } from "../../src/study/references.ts";
import {
  emptyState,
  kinds,
  recordSchemas,
  type AnyRecord,
  type Kind,
  type StudyState,
} from "../../src/study/schema/records.ts";
import { openFault } from "./probe.ts";
import { isOurTable } from "./schema-check.ts";
import { storageWords } from "../../src/words/storage.ts";

export interface Salvaged {
  state: StudyState;
  /** records read from their table, and those brought back from the history alone */
  fromRecords: number;
  fromHistory: number;
  /** records that were found but named something that is lost, or did not fit their kind */
  dropped: number;
}

/** Rows of a query until the first page that cannot be read. */
function rowsOf(database: DatabaseSync, sql: string): Record<string, unknown>[] {
  const rows: Record<string, unknown>[] = [];
  try {
    for (const row of database.prepare(sql).iterate()) rows.push(row);
  } catch {
    // What was read before the damage is what there is.
  }
  return rows;
}

const mostMissing = 2000;

/** The history entry by entry: one lost page of it does not hide what comes after. */
function* entriesOf(database: DatabaseSync): Generator<unknown> {
  let statement;
  try {
    statement = database.prepare("SELECT command FROM change WHERE seq = ?");
  } catch {
    return;
  }
  for (let seq = 1, missing = 0; missing < mostMissing; seq++)
    try {
      const row = statement.get(seq);
      missing = row ? 0 : missing + 1;
      if (row) yield row["command"];
    } catch {
      missing += 1;
    }
}

function historyState(database: DatabaseSync): StudyState {
  let state = emptyState();
  for (const entry of entriesOf(database)) {
    try {
      const command = commandSchema.safeParse(JSON.parse(String(entry)));
      const applied = command.success ? applyCommand(state, command.data) : null;
      if (applied?.ok) state = applied.value.state;
    } catch {
      // One entry that cannot be read does not keep the others from being tried.
    }
  }
  return state;
}

/**
 * Whatever can still be read of a damaged study: records from their table, read from both ends, and for what is missing
 * there the history played from its start. A record that names a lost one is dropped. The file is only read.
 */
export function salvage(path: string): Outcome<Salvaged> {
  const folder = mkdtempSync(join(tmpdir(), "flocwright-salvage-"));
  try {
    const copy = join(folder, "copy");
    copyFileSync(path, copy);
    fillUp(copy);
    const database = new DatabaseSync(copy, { readOnly: true });
    try {
      database.exec("PRAGMA trusted_schema = OFF; PRAGMA cell_size_check = ON;");
      return collect(database);
    } finally {
      database.close();
    }
  } catch (error) {
    return bad(openFault(error));
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

/** SQLite reads nothing of a file that is shorter than its head says: empty pages stand in for those that are lost. */
function fillUp(path: string): void {
  const head = Buffer.alloc(100);
  const descriptor = openSync(path, "r");
  try {
    readSync(descriptor, head, 0, 100, 0);
  } finally {
    closeSync(descriptor);
  }
  const pageSize = head.readUInt16BE(16) === 1 ? 65536 : head.readUInt16BE(16);
  const wanted = pageSize * head.readUInt32BE(28);
  if (statSync(path).size < wanted && wanted < largestBytes) truncateSync(path, wanted);
}

const largestBytes = 4 * 1024 ** 3;

function collect(database: DatabaseSync): Outcome<Salvaged> {
  // A view or virtual table in a table's place could do anything when it is read, or never end.
  const hasRecords = isOurTable(database, "record");
  const tables = emptyState() as Record<Kind, Record<string, AnyRecord>>;
  let fromRecords = 0;
  let dropped = 0;
  const seen = new Set<string>();
  // From both ends, and each kind from both its ends: a lost page hides only what lies between.
  const parts = hasRecords ? ["", ...kinds.map((kind) => `WHERE kind = '${kind}'`)] : [];
  for (const part of parts)
    for (const row of ["ASC", "DESC"].flatMap((direction) =>
      rowsOf(
        database,
        `SELECT kind, id, data FROM record ${part} ORDER BY kind ${direction}, id ${direction}`,
      ),
    )) {
      const kind = String(row["kind"]) as Kind;
      const key = `${kind} ${String(row["id"])}`;
      if (seen.has(key) || !kinds.includes(kind)) continue;
      seen.add(key);
      const record = parsed(kind, row["data"]);
      if (!record) dropped += 1;
      else {
        tables[kind][record.id] = record;
        fromRecords += 1;
      }
    }
  let fromHistory = 0;
  const old = isOurTable(database, "change") ? historyState(database) : emptyState();
  for (const kind of kinds)
    for (const record of Object.values(old[kind]) as AnyRecord[])
      if (!seen.has(`${kind} ${record.id}`)) {
        tables[kind][record.id] = record;
        fromHistory += 1;
      }
  dropped += dropOrphans(tables);
  return fromRecords + fromHistory === 0
    ? bad(storageWords.content.nothingReadable)
    : good({ state: tables as StudyState, fromRecords, fromHistory, dropped });
}

function parsed(kind: Kind, data: unknown): AnyRecord | null {
  try {
    const result = recordSchemas[kind].safeParse(JSON.parse(String(data)));
    return result.success ? (result.data as AnyRecord) : null;
  } catch {
    return null;
  }
}

/** Takes out what names a record that is lost, until nothing does. */
function dropOrphans(tables: Record<Kind, Record<string, AnyRecord>>): number {
  let dropped = 0;
  for (let changed = true; changed;) {
    changed = false;
    for (const link of references)
      for (const record of Object.values(tables[link.from])) {
        const aim = (record as Record<string, unknown>)[link.field];
        if (typeof aim === "string" && !Object.hasOwn(tables[link.to], aim)) {
          delete tables[link.from][record.id];
          dropped += 1;
          changed = true;
        }
      }
  }
  return dropped;
}
