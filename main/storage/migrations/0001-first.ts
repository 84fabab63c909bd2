import type { DatabaseSync } from "node:sqlite";

/** Version 1: records as JSON by kind and id, the append-only history with its hash chain, drafts outside history. */
export function migrateToFirst(database: DatabaseSync): void {
  database.exec(`
    CREATE TABLE meta (key TEXT PRIMARY KEY, value TEXT NOT NULL) WITHOUT ROWID;
    CREATE TABLE record (kind TEXT NOT NULL, id TEXT NOT NULL, data TEXT NOT NULL, PRIMARY KEY (kind, id)) WITHOUT ROWID;
    CREATE TABLE change (
      seq INTEGER PRIMARY KEY,
      at TEXT NOT NULL,
      by TEXT NOT NULL,
      command TEXT NOT NULL,
      inverse TEXT NOT NULL,
      undoes INTEGER,
      redoes INTEGER,
      why TEXT NOT NULL,
      previous_hash TEXT NOT NULL,
      hash TEXT NOT NULL
    );
    CREATE TABLE draft (place TEXT PRIMARY KEY, text TEXT NOT NULL, reason TEXT NOT NULL, at TEXT NOT NULL) WITHOUT ROWID;
  `);
}
