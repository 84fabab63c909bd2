import { copyFileSync, existsSync, mkdirSync, readdirSync, renameSync, rmSync, statSync } from "node:fs";
import { dirname, join } from "node:path";
import { backup, DatabaseSync } from "node:sqlite";
import { bad, good, type Outcome } from "../../src/outcome.ts";
import { extension } from "./format.ts";
import { syncPath, takeName, throwAway } from "./files.ts";
import { openFaultWithin, probeFile } from "./probe.ts";
import { strangePart } from "./schema-check.ts";
import { atStep } from "./steps.ts";
import { backupReasons, thinned, type BackupName, type BackupReason } from "./thinning.ts";
import { storageWords } from "../../src/words/storage.ts";

export interface Backup extends BackupName {
  path: string;
  bytes: number;
  /** null where it opens */
  trouble: string | null;
}

/** Where a study's backups lie: a folder beside it that bears its name. */
export function backupFolder(studyPath: string): string {
  return `${studyPath}.backups`;
}

/** Whether a file is one of a study's backups: those are put back, never worked on, or they would be backups no more. */
export function isBackup(path: string): boolean {
  return dirname(path).endsWith(`${extension}.backups`);
}

const namePattern = new RegExp(
  `^(\\d{4}-\\d\\d-\\d\\dT\\d\\d-\\d\\d-\\d\\d-\\d{3}Z) (${backupReasons.join("|")})\\${extension}$`,
);

function fileName(now: string, reason: BackupReason): string {
  return `${new Date(now).toISOString().replace(/[:.]/g, "-")} ${reason}${extension}`;
}

function named(name: string): BackupName | null {
  const match = namePattern.exec(name);
  if (!match) return null;
  const at = match[1]!.replace(/T(\d\d)-(\d\d)-(\d\d)-(\d{3})Z$/, "T$1:$2:$3.$4Z");
  return { name, at, reason: match[2] as BackupReason };
}

/** A study's backups, newest first; a file in the folder that is not one of ours is passed over. */
export function listBackups(studyPath: string): Backup[] {
  const folder = backupFolder(studyPath);
  if (!existsSync(folder)) return [];
  return readdirSync(folder)
    .flatMap((name): Backup[] => {
      const one = named(name);
      if (!one) return [];
      const path = join(folder, name);
      const probed = probeFile(path);
      return [{ ...one, path, bytes: statSync(path).size, trouble: probed.ok ? null : probed.message }];
    })
    .sort((a, b) => (a.at < b.at ? 1 : -1));
}

/** Whether a file is a whole study: SQLite's own check, and as many entries of history as it should have. */
function checkCopy(path: string, changes: number | null): Outcome<null> {
  const probed = probeFile(path);
  if (!probed.ok) return probed;
  const database = new DatabaseSync(path, { readOnly: true });
  try {
    database.exec("PRAGMA trusted_schema = OFF;");
    const version = Number(database.prepare("PRAGMA user_version").get()?.["user_version"]);
    if (strangePart(database, version)) return bad(storageWords.copy.strange);
    if (database.prepare("PRAGMA integrity_check(1)").get()?.["integrity_check"] !== "ok")
      return bad(storageWords.copy.damaged);
    const held = Number(database.prepare("SELECT count(*) AS n FROM change").get()?.["n"]);
    return changes !== null && held < changes ? bad(storageWords.copy.lacksChanges) : good(null);
  } finally {
    database.close();
  }
}

// Copies that are being made at this moment: another backup that ends meanwhile must not tidy them away.
const underWay = new Set<string>();

/**
 * Backs an open study up by SQLite's own means, looks the copy over, gives it its name only then, and thins the older
 * ones. The study itself is never touched.
 */
export async function makeBackup(
  database: DatabaseSync,
  studyPath: string,
  reason: BackupReason,
  now: string,
): Promise<Outcome<string>> {
  const folder = backupFolder(studyPath);
  const path = join(folder, fileName(now, reason));
  const part = `${path}.part`;
  try {
    mkdirSync(folder, { recursive: true });
    if (existsSync(path)) return good(path);
    underWay.add(part);
    const changes = Number(database.prepare("SELECT count(*) AS n FROM change").get()?.["n"]);
    await backup(database, part);
    atStep("backup: copied");
    const checked = checkCopy(part, changes);
    if (!checked.ok) {
      throwAway(part);
      return bad(storageWords.copy.backupThrownAway(checked.message));
    }
    atStep("backup: looked over");
    takeName(part, path);
    atStep("backup: named");
    thin(studyPath, now);
    atStep("backup: thinned");
    return good(path);
  } catch (error) {
    throwAway(part);
    return bad(storageWords.copy.noBackup(openFaultWithin(error)));
  } finally {
    underWay.delete(part);
  }
}

function thin(studyPath: string, now: string): void {
  const folder = backupFolder(studyPath);
  for (const one of thinned(listBackups(studyPath), now)) rmSync(join(folder, one.name), { force: true });
  // Half-made copies of a session that ended in the middle of one.
  for (const name of readdirSync(folder))
    if (name.endsWith(".part") && !underWay.has(join(folder, name)))
      rmSync(join(folder, name), { force: true });
}

/** Keeps a study's bytes as they are among its backups; no transaction may be running. */
export function keepBytes(studyPath: string, reason: BackupReason, now: string): Outcome<string> {
  const folder = backupFolder(studyPath);
  const path = join(folder, fileName(now, reason));
  const part = `${path}.part`;
  try {
    mkdirSync(folder, { recursive: true });
    copyFileSync(studyPath, part);
    atStep(`${reason}: copied`);
    takeName(part, path);
    atStep(`${reason}: named`);
    return good(path);
  } catch (error) {
    throwAway(part);
    return bad(storageWords.copy.noCopy(openFaultWithin(error)));
  }
}

/** Keeps the bytes of a file that does not open, with its journal, before anything is put in its place. */
function setAside(studyPath: string, now: string): Outcome<string> {
  const kept = keepBytes(studyPath, "damaged", now);
  const journal = `${studyPath}-journal`;
  if (kept.ok && existsSync(journal)) {
    // A journal left beside a new file would be played into it.
    renameSync(journal, `${kept.value}-journal`);
    syncPath(backupFolder(studyPath));
    atStep("restore: journal set aside");
  }
  return kept;
}

const opens = (path: string) => {
  try {
    return checkCopy(path, null).ok;
  } catch {
    return false;
  }
};

/**
 * Puts a backup in a study's place. The study must be closed, its lock held, and what it holds already backed up; a
 * file that does not open is set aside first. Until the last rename the study is what it was.
 */
export function putBack(studyPath: string, backupPath: string, now: string): Outcome<null> {
  const part = `${studyPath}.part`;
  try {
    const checked = checkCopy(backupPath, null);
    if (!checked.ok) return bad(storageWords.copy.cannotRestore(checked.message));
    if (existsSync(studyPath) && (!opens(studyPath) || existsSync(`${studyPath}-journal`))) {
      const aside = setAside(studyPath, now);
      if (!aside.ok) return aside;
    }
    atStep("restore: set aside");
    copyFileSync(backupPath, part);
    atStep("restore: copied");
    const copied = checkCopy(part, null);
    if (!copied.ok) {
      throwAway(part);
      return bad(storageWords.copy.studyAsItWas(copied.message));
    }
    takeName(part, studyPath);
    atStep("restore: named");
    return good(null);
  } catch (error) {
    throwAway(part);
    return bad(storageWords.copy.notRestored(openFaultWithin(error)));
  }
}
