import { basename, dirname, join } from "node:path";
import { existsSync } from "node:fs";
import type { Answer, Opened, OutputOf } from "../../src/contract.ts";
import { bad, good, type Outcome } from "../../src/outcome.ts";
import type { SimpleCommand } from "../../src/study/commands.ts";
import { kinds } from "../../src/study/schema/records.ts";
import { listBackups, putBack } from "../storage/backups.ts";
import { extension } from "../storage/format.ts";
import { takeLock } from "../storage/lock.ts";
import { openFault } from "../storage/probe.ts";
import { salvage } from "../storage/salvage.ts";
import { ok, refused, type Context } from "./context.ts";
import { closeOpen, openedOf, openPath, writeNewStudy } from "./opening.ts";
import { refFor, studyOfRef } from "./shelf.ts";
import { serviceWords } from "../../src/words/service.ts";

const changesBetween = 25;
const minutesBetween = 10;

/** Starts a backup where enough has changed or enough time has passed; the edit does not wait for it. */
export function backUpIfDue(context: Context): void {
  const { open } = context;
  if (!open || open.backup.running || open.file.readOnlyBecause) return;
  const minutes = (Date.parse(context.support.now()) - Date.parse(open.backup.at)) / 60_000;
  if (open.backup.changesSince < changesBetween && minutes < minutesBetween) return;
  const counted = open.backup.changesSince;
  open.backup.running = true;
  void open.file.backUp("auto", context.support.now()).then((outcome) => {
    open.backup.running = false;
    if (!outcome.ok) return;
    open.backup.changesSince -= counted;
    open.backup.at = context.support.now();
  });
}

function entriesOf(context: Context, studyPath: string): OutputOf<"backup.list"> {
  return {
    entries: listBackups(studyPath).map(({ path, at, reason, bytes, trouble }) => ({
      ref: refFor(context, path),
      at,
      reason,
      bytes,
      trouble,
    })),
  };
}

export function backupsOfOpen(context: Context): Answer<OutputOf<"backup.list">> {
  return context.open
    ? ok(entriesOf(context, context.open.file.path))
    : refused(serviceWords.noStudy, "no-study");
}

export async function backUpByHand(context: Context): Promise<Answer<OutputOf<"backup.make">>> {
  const { open } = context;
  if (!open) return refused(serviceWords.noStudy, "no-study");
  const made = await open.file.backUp("by-hand", context.support.now());
  if (!made.ok) return refused(made.message);
  open.backup.changesSince = 0;
  return ok(entriesOf(context, open.file.path));
}

function backupPath(context: Context, studyPath: string, ref: string): string | null {
  const path = context.refs.get(ref);
  return path !== undefined && listBackups(studyPath).some((one) => one.path === path) ? path : null;
}

/** Puts a backup in the open study's place, after what stands there was backed up. */
export async function restoreOpen(context: Context, ref: string): Promise<Answer<Opened>> {
  const { open } = context;
  if (!open) return refused(serviceWords.noStudy, "no-study");
  if (open.file.readOnlyBecause) return refused(open.file.readOnlyBecause, "read-only");
  const { path } = open.file;
  const from = backupPath(context, path, ref);
  if (from === null) return refused(serviceWords.backupGone);
  const kept = await open.file.backUp("before-restore", context.support.now());
  if (!kept.ok) return refused(serviceWords.nothingRestored(kept.message));
  open.backup.changesSince = 0;
  closeOpen(context);
  const done = underLock(context, path, () => putBack(path, from, context.support.now()));
  const reopened = openPath(context, path);
  if (!reopened.ok) return refused(reopened.message);
  return done.ok ? ok(openedOf(reopened.value)) : refused(done.message);
}

function underLock(context: Context, path: string, work: () => Outcome<null>): Outcome<null> {
  try {
    const lock = takeLock(path, context.support.now());
    if (lock.kind === "busy") return bad(lock.sentence);
    try {
      return work();
    } finally {
      lock.release();
    }
  } catch (error) {
    return bad(openFault(error));
  }
}

/** The backups of a study of the shelf, whether it opens or not. */
export function backupsOfShelf(context: Context, ref: string): Answer<OutputOf<"shelf.backups">> {
  const path = studyOfRef(context, ref);
  return path === null ? refused(serviceWords.notInList) : ok(entriesOf(context, path));
}

/** Puts a backup in the place of a study that does not open; its bytes are set aside first. */
export function restoreOnShelf(context: Context, ref: string, backup: string): Answer<Opened> {
  const path = studyOfRef(context, ref);
  if (path === null) return refused(serviceWords.notInList);
  const from = backupPath(context, path, backup);
  if (from === null) return refused(serviceWords.backupGone);
  const done = underLock(context, path, () => putBack(path, from, context.support.now()));
  if (!done.ok) return refused(done.message);
  const opened = openPath(context, path);
  return opened.ok ? ok(openedOf(opened.value)) : refused(opened.message);
}

/** Writes what a damaged study still holds into a new study beside it, and opens that. */
export function salvageOnShelf(context: Context, ref: string): Answer<OutputOf<"shelf.salvage">> {
  const path = studyOfRef(context, ref);
  if (path === null) return refused(serviceWords.notInList);
  const found = salvage(path);
  if (!found.ok) return refused(found.message);
  const { state, fromRecords, fromHistory, dropped } = found.value;
  const records: SimpleCommand[] = kinds.flatMap((kind) =>
    Object.values(state[kind]).map((record): SimpleCommand => ({
      do: "add",
      kind,
      record: record as Record<string, unknown>,
    })),
  );
  const target = freeName(path);
  const written = target.ok
    ? writeNewStudy(
        target.value,
        inParts(records).map((commands) => ({
          do: "together" as const,
          label: serviceWords.whatCouldBeRead(basename(path)),
          commands,
        })),
        "",
        context.support.now(),
      )
    : target;
  if (!written.ok) return refused(serviceWords.savedNotWritten(written.message));
  const opened = openPath(context, (target as { value: string }).value);
  return opened.ok
    ? ok({ opened: openedOf(opened.value), fromRecords, fromHistory, dropped })
    : refused(opened.message);
}

const largestPart = 10_000;

/** Records in the order of the job, so that what a record names always comes before it. */
function inParts(records: SimpleCommand[]): SimpleCommand[][] {
  return Array.from({ length: Math.ceil(records.length / largestPart) }, (_, i) =>
    records.slice(i * largestPart, (i + 1) * largestPart),
  );
}

function freeName(path: string): Outcome<string> {
  const name = basename(path, extension);
  for (let number = 1; number < 1000; number++) {
    const candidate = join(
      dirname(path),
      `${serviceWords.savedCopy(name, number === 1 ? "" : ` ${number}`)}${extension}`,
    );
    if (!existsSync(candidate)) return good(candidate);
  }
  return bad(serviceWords.tooManySaved);
}
