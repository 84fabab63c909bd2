import { closeSync, existsSync, lstatSync, openSync, readSync, rmSync } from "node:fs";
import { join } from "node:path";
import { DatabaseSync } from "node:sqlite";

/** The file in the folder of studies that the index is kept in. It holds nothing that is not in the studies. */
export const indexFileName = "flocwright-studies.index";

/** Marks an index among SQLite files: the letters "Flid" as a 32-bit number. */
const applicationId = 0x466c6964;
/** Raised whenever what is kept of a study, or how it is worked out, changes: an older index is thrown away. */
const indexVersion = 2;

/** What is kept of one study file. Losing the index costs time, never a word: it is thrown away at the first sign of damage. */
export interface IndexedFile {
  fileName: string;
  /** how the file looked from outside when it was read */
  stamp: string;
  /** null where it was read; otherwise the sentence that says why it was not */
  trouble: string | null;
  /** the summaries of its series as JSON */
  data: string;
}

/** Whether the file is an index of this version, by its first bytes alone. */
function isOurs(path: string): boolean {
  const descriptor = openSync(path, "r");
  try {
    const head = Buffer.alloc(100);
    return (
      readSync(descriptor, head, 0, 100, 0) === 100 &&
      head.toString("latin1", 0, 16) === "SQLite format 3\u0000" &&
      head.readUInt32BE(68) === applicationId &&
      head.readUInt32BE(60) === indexVersion
    );
  } finally {
    closeSync(descriptor);
  }
}

/** Removes the index and what SQLite may have left beside it. A link is removed, never what it leads to. */
function throwAway(path: string): void {
  for (const end of ["", "-journal", "-wal", "-shm"]) rmSync(`${path}${end}`, { force: true });
}

function openDatabase(path: string): DatabaseSync {
  const database = new DatabaseSync(path);
  try {
    // Nothing here needs to survive a power cut, and no journal file is to lie beside the studies.
    database.exec(
      "PRAGMA trusted_schema = OFF; PRAGMA cell_size_check = ON; PRAGMA busy_timeout = 200; PRAGMA journal_mode = MEMORY; PRAGMA synchronous = OFF;",
    );
    database.exec(
      `BEGIN IMMEDIATE;
       CREATE TABLE IF NOT EXISTS file (name TEXT PRIMARY KEY, stamp TEXT NOT NULL, trouble TEXT, data TEXT NOT NULL) STRICT, WITHOUT ROWID;
       PRAGMA application_id = ${applicationId};
       PRAGMA user_version = ${indexVersion};
       COMMIT;`,
    );
    const strange = database
      .prepare("SELECT count(*) AS n FROM sqlite_schema WHERE type <> 'table' OR name <> 'file'")
      .get()?.["n"];
    const sound = database.prepare("PRAGMA integrity_check(1)").get()?.["integrity_check"];
    if (strange !== 0 || sound !== "ok") throw new Error("the index is damaged");
    return database;
  } catch (error) {
    database.close();
    throw error;
  }
}

/**
 * Works on the index's database, made anew where it is missing, damaged, of another version or no index at all; null
 * where it cannot be had. Damage that shows only while working counts as well: the work is done again on a new one.
 */
function onIndex<T>(path: string, work: (database: DatabaseSync) => T): T | null {
  try {
    // Only a plain file of our own is opened: a link of this name could lead to a study.
    if (!lstatSync(path).isFile() || !isOurs(path)) throwAway(path);
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code !== "ENOENT") return null;
  }
  for (const last of [false, true]) {
    let database: DatabaseSync | null = null;
    try {
      database = openDatabase(path);
      return work(database);
    } catch (error) {
      // Another Flocwright writes it just now: its index is as good as ours, and not ours to remove.
      if (last || (error as { errcode?: number }).errcode === 5) return null;
    } finally {
      database?.close();
    }
    try {
      throwAway(path);
    } catch {
      return null;
    }
  }
  return null;
}

/** What the folder's index holds; nothing where there is none or it is damaged. A folder without an index gets none. */
export function readIndexFile(folder: string): IndexedFile[] {
  const path = join(folder, indexFileName);
  if (!existsSync(path)) return [];
  const rows = onIndex(path, (database) =>
    database.prepare("SELECT name, stamp, trouble, data FROM file").all(),
  );
  return (rows ?? []).map((row) => ({
    fileName: String(row["name"]),
    stamp: String(row["stamp"]),
    trouble: row["trouble"] === null ? null : String(row["trouble"]),
    data: String(row["data"]),
  }));
}

/** Writes the whole index of a folder, all or nothing. False where it cannot be kept there: it is then only not kept. */
export function writeIndexFile(folder: string, entries: readonly IndexedFile[]): boolean {
  const written = onIndex(join(folder, indexFileName), (database) => {
    database.exec("BEGIN IMMEDIATE; DELETE FROM file;");
    const put = database.prepare("INSERT INTO file (name, stamp, trouble, data) VALUES (?, ?, ?, ?)");
    for (const { fileName, stamp, trouble, data } of entries) put.run(fileName, stamp, trouble, data);
    database.exec("COMMIT");
    return true;
  });
  return written ?? false;
}

/** Throws a folder's index away; it is made anew from the studies. */
export function removeIndexFile(folder: string): void {
  throwAway(join(folder, indexFileName));
}
