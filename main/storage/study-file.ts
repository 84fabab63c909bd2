import { existsSync, statSync } from "node:fs";
import { basename } from "node:path";
import { DatabaseSync, type SQLOutputValue } from "node:sqlite";
import { bad, good, type Outcome } from "../../src/outcome.ts";
import { inSlices, toTheEnd } from "../../src/steps.ts";
import type { Change } from "../../src/study/history.ts";
import type { Kind, StudyState } from "../../src/study/schema/records.ts";
import { keepBytes, makeBackup } from "./backups.ts";
import type { BackupReason } from "./thinning.ts";
import { changeInSteps, changeOf } from "./change-row.ts";
import { chainHash, chainStart, isWrittenInSteps } from "./chain.ts";
import { copiesUnderWay } from "./copies-under-way.ts";
import { copyStudy } from "./copy.ts";
import { applicationId, formatVersion, migrations } from "./format.ts";
import { throwAway } from "./files.ts";
import { takeLock } from "./lock.ts";
import { openFault, openFaultWithin, probeFile } from "./probe.ts";
import { tablesOf } from "./read-tables.ts";
import { strangePart } from "./schema-check.ts";
import { putChange } from "./put-change.ts";
import { atStep } from "./steps.ts";
import { takeBack, transaction, type Work } from "./transaction.ts";
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

/** An entry of the history with the records it touched. */
export interface Entry {
  change: Change;
  touched: Place[];
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
  /** the same, giving way between the slices of a large one */
  changeInSlices(seq: number, rest: () => Promise<void>): Promise<Change | null>;
  undoRows(): { seq: number; undoes: number | null; redoes: number | null }[];
  history(beforeSeq: number | null, limit: number): Change[];
  since(afterSeq: number): Change[];
  append(change: Change, touched: Place[], state: StudyState): Outcome<null>;
  /**
   * The same, giving way by `rest` between the slices of a large entry; it is one transaction all the same. Until this
   * answers nothing else may be asked of the file but to close it: then nothing of the entry stays, and it answers null.
   */
  appendInSlices(
    change: Change,
    touched: Place[],
    state: StudyState,
    rest: () => Promise<void>,
  ): Promise<Outcome<null> | null>;
  /** Several entries in one transaction: all of them or none. `state` is the one after the last. */
  appendAll(steps: Entry[], state: StudyState): Outcome<null>;
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
  /**
   * Gives the lock back; with a time, a copy is kept among the backups before that. An entry that is being written in
   * slices is taken back.
   */
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
  // The one connection sees what it has not yet made durable: nobody reads in the middle of a step. Calls wait their turn
  // until it is whole, so this is never asked of in use.
  const prepared = (sql: string) => {
    if (database.isTransaction) throw new Error("A step is being written.");
    return database.prepare(sql);
  };
  const one = (sql: string, ...values: (string | number)[]) => prepared(sql).get(...values) ?? null;
  const all = (sql: string, ...values: (string | number)[]) => prepared(sql).all(...values);
  // An older study that is only read keeps its older tables.
  const hasTouched = one("SELECT 1 AS yes FROM sqlite_schema WHERE name = 'touched'") !== null;
  // Rows as lists: a hundred thousand of them are read at once, and an object for each costs more than the reading.
  const rowsOf = (sql: string): SQLOutputValue[][] => {
    const statement = prepared(sql);
    statement.setReturnArrays(true);
    return statement.all() as unknown as SQLOutputValue[][];
  };
  const born = readOnlyBecause === null ? statSync(path).ino : null;

  const headHash = () => {
    const hash = database.prepare("SELECT hash FROM change ORDER BY seq DESC LIMIT 1").get()?.["hash"];
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

  let closed = false;
  const ended = Promise.withResolvers<void>();

  const copies = copiesUnderWay();

  // What the history ended with when this file was last read or written here.
  let lastHash = headHash();

  function* writing(work: Work): Generator<number, Outcome<null>> {
    if (readOnlyBecause) return bad(readOnlyBecause);
    if (vanished()) return bad(storageWords.open.vanished(basename(path)));
    return yield* transaction(database, work);
  }

  const write = (sql: string, ...values: string[]): Outcome<null> =>
    toTheEnd(writing(() => void database.prepare(sql).run(...values)));

  function* appending(steps: Entry[], state: StudyState): Generator<number, Outcome<null>> {
    let hash = lastHash;
    const written = yield* writing(function* () {
      if (headHash() !== lastHash) return storageWords.open.changedUnder(basename(path));
      for (const { change, touched } of steps)
        hash = yield* putChange(database, change, touched, state, hash);
      // While others were let in the file may have gone.
      return vanished() ? storageWords.open.vanished(basename(path)) : undefined;
    });
    if (written.ok) lastHash = hash;
    return written;
  }

  const lastChange = () => {
    const row = one("SELECT * FROM change ORDER BY seq DESC LIMIT 1");
    return row ? changeOf(row) : null;
  };
  function* reading(seq: number): Generator<number, Change | null> {
    try {
      const row = one("SELECT * FROM change WHERE seq = ?", seq);
      return row ? yield* changeInSteps(row) : null;
    } catch {
      return null;
    }
  }
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
    readState: () => tablesOf(rowsOf("SELECT kind, id, data FROM record")),
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
    change: (seq) => toTheEnd(reading(seq)),
    changeInSlices: (seq, rest) => inSlices(reading(seq), rest),
    undoRows,
    history: (beforeSeq, limit) =>
      all(
        "SELECT * FROM change WHERE seq < ? ORDER BY seq DESC LIMIT ?",
        beforeSeq ?? Number.MAX_SAFE_INTEGER,
        limit,
      ).map(changeOf),
    since: (afterSeq) => all("SELECT * FROM change WHERE seq > ? ORDER BY seq", afterSeq).map(changeOf),
    append: (change, touched, state) => toTheEnd(appending([{ change, touched }], state)),
    async appendInSlices(change, touched, state, rest) {
      if (copies.any() && isWrittenInSteps(change)) await Promise.race([copies.ended(), ended.promise]);
      return closed
        ? null
        : inSlices(appending([{ change, touched }], state), rest, { cancelled: () => closed });
    },
    appendAll: (steps, state) => toTheEnd(appending(steps, state)),
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
      write(
        "INSERT OR REPLACE INTO draft (place, text, reason, at) VALUES (?, ?, ?, ?)",
        draft.place,
        draft.text,
        draft.reason,
        at,
      ),
    dropDraft: (place) => write("DELETE FROM draft WHERE place = ?", place),
    copyTo: (target, now) => copies.count(copyStudy(database, target, now)),
    backUp: (reason, now) =>
      readOnlyBecause
        ? Promise.resolve(bad(readOnlyBecause))
        : copies.count(makeBackup(database, path, reason, now)),
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
      closed = true;
      ended.resolve();
      // Before the closing, so that it is known: half of a step is nothing to keep among the backups.
      const whole = takeBack(database);
      database.close();
      if (whole && backUpAt !== undefined && readOnlyBecause === null && !vanished())
        keepBytes(path, "auto", backUpAt);
      release();
    },
  };
}
