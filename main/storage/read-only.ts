import { existsSync, statSync } from "node:fs";
import { DatabaseSync } from "node:sqlite";
import { bad, good, type Outcome } from "../../src/outcome.ts";
import { readRecord } from "../../src/study/schema/read.ts";
import { emptyState, type AnyRecord, type Kind, type StudyState } from "../../src/study/schema/records.ts";
import { openFault, probeFile } from "./probe.ts";
import { strangePart } from "./schema-check.ts";
import { storageWords } from "../../src/words/storage.ts";

/** How a file looks from outside: another size or moment of change means another content. */
export interface FileStamp {
  text: string;
  modifiedMs: number;
}

/** Looks at a file without opening it. What is no plain file (a folder, a pipe) is never opened at all. */
export function stampOf(path: string): Outcome<FileStamp> {
  try {
    const stat = statSync(path, { bigint: true });
    if (stat.isDirectory()) return bad(storageWords.folder);
    if (!stat.isFile()) return bad(storageWords.notPlain);
    return good({ text: `${stat.size} ${stat.mtimeNs}`, modifiedMs: Number(stat.mtimeMs) });
  } catch (error) {
    return bad(openFault(error));
  }
}

/** A study opened to look at: no lock is taken, nothing beside it is written, its bytes stay as they are. */
function lookInto<T>(path: string, look: (database: DatabaseSync) => Outcome<T>): Outcome<T> {
  const plain = stampOf(path);
  if (!plain.ok) return plain;
  const probed = probeFile(path);
  if (!probed.ok) return probed;
  // Reading it would first have to put the half-written step back, and that is the business of opening it.
  if (existsSync(`${path}-journal`)) return bad(storageWords.beingSaved);
  let database: DatabaseSync | null = null;
  try {
    database = new DatabaseSync(path, { readOnly: true });
    database.exec("PRAGMA trusted_schema = OFF; PRAGMA cell_size_check = ON; PRAGMA busy_timeout = 200;");
    const strange = strangePart(database, probed.value);
    if (strange) return bad(storageWords.strange(strange));
    return look(database);
  } catch (error) {
    if (error instanceof Error && /malformed JSON/.test(error.message))
      return bad(storageWords.content.badRecord);
    return bad(openFault(error));
  } finally {
    database?.close();
  }
}

/** SQLite's own check of a study, as on opening it. */
export function checkStudy(path: string): Outcome<null> {
  return lookInto(path, (database) =>
    database.prepare("PRAGMA integrity_check(1)").get()?.["integrity_check"] === "ok"
      ? good(null)
      : bad(storageWords.damaged),
  );
}

export interface StudyResults {
  state: StudyState;
  /** jars of every series, also of those whose jars were not read */
  jarCounts: Map<string, number>;
}

/** What every series hangs on; jars and readings are read for chosen series only. */
const smallKinds: Kind[] = [
  "study",
  "stream",
  "product",
  "sample",
  "dish",
  "stock",
  "series",
  "targets",
  "decision",
  "feedCase",
  "makeDown",
];

/**
 * The part of a study that tells its results: everything but people, photos and the plant's pumps, with the jars and
 * readings of those series that `wanted` names, once the rest is known. Every record is judged as on opening.
 */
export function readResults(path: string, wanted: (state: StudyState) => string[]): Outcome<StudyResults> {
  return lookInto(path, (database) => {
    const tables = emptyState() as Record<Kind, Record<string, AnyRecord>>;
    const put = (kind: Kind, id: string, text: string): string | null => {
      let value: unknown;
      try {
        value = JSON.parse(text);
      } catch {
        return storageWords.content.badRecord;
      }
      const record = readRecord(kind, value);
      if (!record.ok) return record.message;
      if (record.value.id !== id) return storageWords.content.wrongKind(kind);
      tables[kind][id] = record.value;
      return null;
    };
    const read = (kind: Kind, sql: string, ...values: string[]): string | null => {
      for (const row of database.prepare(sql).all(kind, ...values)) {
        const fault = put(kind, String(row["id"]), String(row["data"]));
        if (fault) return fault;
      }
      return null;
    };
    for (const kind of smallKinds) {
      const fault = read(kind, "SELECT id, data FROM record WHERE kind = ?");
      if (fault) return bad(fault);
    }
    const within = (field: string) =>
      `SELECT id, data FROM record WHERE kind = ? AND data ->> '$.${field}' IN (SELECT value FROM json_each(?))`;
    const seriesIds = wanted(tables as StudyState);
    if (seriesIds.length > 0) {
      const fault =
        read("jar", within("seriesId"), JSON.stringify(seriesIds)) ??
        read("reading", within("jarId"), JSON.stringify(Object.keys(tables.jar)));
      if (fault) return bad(fault);
    }
    const counts = database
      .prepare(
        "SELECT data ->> '$.seriesId' AS series, count(*) AS jars FROM record WHERE kind = 'jar' GROUP BY 1",
      )
      .all();
    return good({
      state: tables as StudyState,
      jarCounts: new Map(counts.map((row) => [String(row["series"]), Number(row["jars"])])),
    });
  });
}
