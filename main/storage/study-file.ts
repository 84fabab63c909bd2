import { existsSync, statSync } from "node:fs";
import { basename } from "node:path";
import { DatabaseSync, type SQLOutputValue } from "node:sqlite";
import { bad, good, type Outcome } from "../../src/outcome.ts";
import type { Change } from "../../src/study/history.ts";
import {
  emptyState,
  kinds,
  type AnyRecord,
  type Kind,
  type StudyState,
} from "../../src/study/schema/records.ts";
import { keepBytes, makeBackup } from "./backups.ts";
import type { BackupReason } from "./thinning.ts";
import { readRecord } from "../../src/study/schema/read.ts";
import { changeOf } from "./change-row.ts";
import { chainHash, chainStart } from "./chain.ts";
import { copyStudy } from "./copy.ts";
import { applicationId, formatVersion, migrations } from "./format.ts";
import { throwAway } from "./files.ts";
import { takeLock } from "./lock.ts";
import { lostReference } from "./lost-reference.ts";
import { openFault, openFaultWithin, probeFile } from "./probe.ts";
import { strangePart } from "./schema-check.ts";
import { putChange } from "./put-change.ts";
import { atStep } from "./steps.ts";
import { upgradeStudy } from "./upgrade.ts";
import { storageWords } from "../../src/words/storage.ts";

export interface DraftRow {
  place: string;
  text: string;
  reason: string;
}

export interface Place {
  kind: Kind;
  id: string;
}

/** An open study file. Every method that writes is durable when it returns, or changes nothing and says why. */
export interface StudyFile {
  path: string;
  readOnlyBecause: string | null;
  notices: string[];
  readState(): Outcome<StudyState>;
  /** the sentence for a history that cannot be gone on with, or null; the other calls of the history may then throw */
  historyFault(): string | null;
  lastChange(): Change | null;
  /** null where there is no such entry, or none that can be read */
  change(seq: number): Change | null;
  undoRows(): { seq: number; undoes: number | null; redoes: number | null }[];
  history(beforeSeq: number | null, limit: number): Change[];
  since(afterSeq: number): Change[];
  append(change: Change, touched: Place[], state: StudyState): Outcome<null>;
  /** Several entries in one transaction: all of them or none. `state` is the one after the last. */
  appendAll(steps: { change: Change; touched: Place[] }[], state: StudyState): Outcome<null>;
  drafts(): DraftRow[];
  keepDraft(draft: DraftRow, at: string): Outcome<null>;
  dropDraft(place: string): Outcome<null>;
  /** entries that touched one record, newest first */
  historyOf(kind: Kind, id: string, limit: number): Change[];
  copyTo(path: string, now: string): Promise<Outcome<null>>;
  /** a copy among the study's backups, looked over before it counts */
  backUp(reason: BackupReason, now: string): Promise<Outcome<string>>;
  /** SQLite's own check, and the history's chain of hashes */
  inspect(): { integrity: string; chain: "whole" | "broken"; chainHead: string; changes: number };
  /** gives the lock back; with a time, a copy is kept among the backups before that */
  close(backUpAt?: string): void;
}

/** Creates an empty study file; refuses to overwrite. The caller opens it afterwards. */
export function createStudyFile(path: string): Outcome<null> {
  if (existsSync(path)) return bad(storageWords.nameTaken);
  let database: DatabaseSync | null = null;
  try {
    database = new DatabaseSync(path);
    atStep("create: opened");
    database.exec("PRAGMA journal_mode = DELETE; PRAGMA synchronous = FULL;");
    database.exec(`BEGIN; PRAGMA application_id = ${applicationId};`);
    for (const migrate of migrations) migrate(database);
    atStep("create: before commit");
    database.exec(`PRAGMA user_version = ${formatVersion}; COMMIT;`);
    atStep("create: committed");
    database.close();
    return good(null);
  } catch (error) {
    database?.close();
    throwAway(path);
    return bad(openFault(error));
  }
}

interface OpenOptions {
  onlyRead?: boolean;
  /** for tests alone: the file may not grow beyond so many pages, as on a disk that is full */
  mostPages?: number;
}

/**
 * Opens a study. A faulty file is refused in one sentence and left byte for byte as it was. With `onlyRead` no lock is
 * taken and nothing is upgraded: the file is looked at and no more.
 */
export function openStudyFile(path: string, now: string, options: OpenOptions = {}): Outcome<StudyFile> {
  const probed = probeFile(path);
  if (!probed.ok) return probed;
  let release: () => void = () => undefined;
  let readOnlyBecause: string | null = options.onlyRead ? storageWords.open.onlyLookedAt : null;
  const notices: string[] = [];
  try {
    const lock = options.onlyRead ? null : takeLock(path, now);
    if (lock?.kind === "busy") readOnlyBecause = lock.sentence;
    else if (lock) {
      release = () => lock.release();
      if (lock.notice) notices.push(lock.notice);
    }
  } catch (error) {
    readOnlyBecause = storageWords.open.readOnly(openFaultWithin(error));
  }
  let database: DatabaseSync | null = null;
  try {
    database = new DatabaseSync(path, { readOnly: readOnlyBecause !== null });
    database.exec(
      "PRAGMA trusted_schema = OFF; PRAGMA synchronous = FULL; PRAGMA cell_size_check = ON; PRAGMA busy_timeout = 2000;",
    );
    // The head may tell of an upgrade that its journal has just taken back: SQLite knows the version that holds.
    const version = Number(database.prepare("PRAGMA user_version").get()?.["user_version"]);
    const strange = strangePart(database, version);
    const sound = strange
      ? ""
      : String(database.prepare("PRAGMA integrity_check(1)").get()?.["integrity_check"]);
    if (strange || sound !== "ok") {
      database.close();
      release();
      return bad(strange ? storageWords.strange(strange) : storageWords.damaged);
    }
    if (version < formatVersion && readOnlyBecause === null) {
      const upgraded = upgradeStudy(database, path, version, now);
      if (!upgraded.ok) {
        database.close();
        release();
        return upgraded;
      }
      notices.push(upgraded.value);
    }
    if (options.mostPages !== undefined) database.exec(`PRAGMA max_page_count = ${options.mostPages}`);
    return good(studyFileOn(database, path, readOnlyBecause, notices, release));
  } catch (error) {
    database?.close();
    release();
    return bad(openFault(error));
  }
}

// More than any study comes to: what goes beyond was not written by us.
const mostChanges = 1e9;
const mostDrafts = 5000;

function studyFileOn(
  database: DatabaseSync,
  path: string,
  readOnlyBecause: string | null,
  notices: string[],
  release: () => void,
): StudyFile {
  const one = (sql: string, ...values: (string | number)[]) => database.prepare(sql).get(...values) ?? null;
  const all = (sql: string, ...values: (string | number)[]) => database.prepare(sql).all(...values);
  // An older study that is only read keeps its older tables.
  const hasTouched = one("SELECT 1 AS yes FROM sqlite_schema WHERE name = 'touched'") !== null;
  // Rows as lists: a hundred thousand of them are read at once, and an object for each costs more than the reading.
  const rowsOf = (sql: string): SQLOutputValue[][] => {
    const statement = database.prepare(sql);
    statement.setReturnArrays(true);
    return statement.all() as unknown as SQLOutputValue[][];
  };
  const born = readOnlyBecause === null ? statSync(path).ino : null;

  const headHash = () => {
    const hash = one("SELECT hash FROM change ORDER BY seq DESC LIMIT 1")?.["hash"];
    return typeof hash === "string" ? hash : chainStart;
  };

  // SQLite would go on writing into a file that was deleted or replaced under it, and call it saved.
  const vanished = () => {
    try {
      return born !== null && statSync(path).ino !== born;
    } catch {
      return true;
    }
  };

  // What the history ended with when this file was last read or written here.
  let lastHash = headHash();

  const write = (work: () => string | void): Outcome<null> => {
    if (readOnlyBecause) return bad(readOnlyBecause);
    if (vanished()) return bad(storageWords.open.vanished(basename(path)));
    try {
      database.exec("BEGIN IMMEDIATE");
      try {
        atStep("write: begun");
        const refusal = work();
        if (typeof refusal === "string") {
          database.exec("ROLLBACK");
          return bad(refusal);
        }
        atStep("write: before commit");
        database.exec("COMMIT");
        atStep("write: committed");
      } catch (error) {
        if (database.isTransaction) database.exec("ROLLBACK");
        throw error;
      }
      return good(null);
    } catch (error) {
      return bad(openFault(error));
    }
  };

  const appendAll = (steps: { change: Change; touched: Place[] }[], state: StudyState): Outcome<null> => {
    let hash = lastHash;
    const written = write(() => {
      if (headHash() !== lastHash) return storageWords.open.changedUnder(basename(path));
      for (const { change, touched } of steps) hash = putChange(database, change, touched, state, hash);
      return undefined;
    });
    if (written.ok) lastHash = hash;
    return written;
  };

  const lastChange = () => {
    const row = one("SELECT * FROM change ORDER BY seq DESC LIMIT 1");
    return row ? changeOf(row) : null;
  };
  const undoRows = () =>
    rowsOf("SELECT seq, undoes, redoes FROM change ORDER BY seq").map(([seq, undoes, redoes]) => ({
      seq: Number(seq),
      undoes: undoes == null ? null : Number(undoes),
      redoes: redoes == null ? null : Number(redoes),
    }));

  return {
    path,
    readOnlyBecause,
    notices,
    readState() {
      const tables = emptyState() as Record<Kind, Record<string, AnyRecord>>;
      for (const [kindText, idText, text] of rowsOf("SELECT kind, id, data FROM record")) {
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
    },
    historyFault() {
      try {
        const row = one("SELECT min(seq) AS low, max(seq) AS high FROM change");
        const unreal =
          row?.["low"] !== null && (Number(row?.["low"]) < 1 || Number(row?.["high"]) > mostChanges);
        if (!unreal) {
          lastChange();
          undoRows();
          return null;
        }
      } catch {
        // said below
      }
      return storageWords.content.badHistory;
    },
    lastChange,
    change(seq) {
      try {
        const row = one("SELECT * FROM change WHERE seq = ?", seq);
        return row ? changeOf(row) : null;
      } catch {
        return null;
      }
    },
    undoRows,
    history: (beforeSeq, limit) =>
      all(
        "SELECT * FROM change WHERE seq < ? ORDER BY seq DESC LIMIT ?",
        beforeSeq ?? Number.MAX_SAFE_INTEGER,
        limit,
      ).map(changeOf),
    since: (afterSeq) => all("SELECT * FROM change WHERE seq > ? ORDER BY seq", afterSeq).map(changeOf),
    append: (change, touched, state) => appendAll([{ change, touched }], state),
    appendAll,
    historyOf: (kind, id, limit) =>
      hasTouched
        ? all(
            "SELECT change.* FROM touched JOIN change USING (seq) WHERE kind = ? AND id = ? ORDER BY seq DESC LIMIT ?",
            kind,
            id,
            limit,
          ).map(changeOf)
        : [],
    drafts: () =>
      all(
        "SELECT place, text, reason FROM draft WHERE length(place) BETWEEN 1 AND 200 AND length(text) <= 2000 AND length(reason) <= 1000 ORDER BY at DESC LIMIT ?",
        mostDrafts,
      )
        .map((row) => ({
          place: String(row["place"]),
          text: String(row["text"]),
          reason: String(row["reason"]),
        }))
        .reverse(),
    keepDraft: (draft, at) =>
      write(() => {
        database
          .prepare("INSERT OR REPLACE INTO draft (place, text, reason, at) VALUES (?, ?, ?, ?)")
          .run(draft.place, draft.text, draft.reason, at);
      }),
    dropDraft: (place) =>
      write(() => {
        database.prepare("DELETE FROM draft WHERE place = ?").run(place);
      }),
    copyTo: (target, now) => copyStudy(database, target, now),
    backUp: (reason, now) =>
      readOnlyBecause ? Promise.resolve(bad(readOnlyBecause)) : makeBackup(database, path, reason, now),
    inspect() {
      const integrity = String(database.prepare("PRAGMA integrity_check").get()?.["integrity_check"]);
      let head = chainStart;
      let whole = true;
      let changes = 0;
      for (const row of all("SELECT * FROM change ORDER BY seq")) {
        changes += 1;
        const change = changeOf(row);
        const hash = chainHash(head, change);
        whole &&= row["previous_hash"] === head && row["hash"] === hash && change.seq === changes;
        head = String(row["hash"]);
      }
      return { integrity, chain: whole ? "whole" : "broken", chainHead: head, changes };
    },
    close(backUpAt) {
      database.close();
      if (backUpAt !== undefined && readOnlyBecause === null && !vanished())
        keepBytes(path, "auto", backUpAt);
      release();
    },
  };
}
