import { createHash } from "node:crypto";
import { existsSync, mkdirSync, readdirSync } from "node:fs";
import { basename, dirname, join } from "node:path";
import { bad, good, type Outcome } from "../../src/outcome.ts";
import { isBackup } from "../storage/backups.ts";
import { extension } from "../storage/format.ts";
import { openFaultWithin, probeFile } from "../storage/probe.ts";
import { stampOf } from "../storage/read-only.ts";
import type { Context } from "./context.ts";
import { serviceWords } from "../../src/words/service.ts";

export interface ShelfEntry {
  ref: string;
  fileName: string;
  folder: string;
  modifiedAt: string | null;
  trouble: string | null;
}

/** The token a page may use for a file. */
export function refFor(context: Context, path: string): string {
  const ref = createHash("sha256").update(path).digest("hex").slice(0, 24);
  context.refs.set(ref, path);
  return ref;
}

/** The study a page means by a token, or null: a backup's token names no study, it can only be put back. */
export function studyOfRef(context: Context, ref: string): string | null {
  const path = context.refs.get(ref);
  return path === undefined || isBackup(path) ? null : path;
}

/** The studies in the host's folder, newest first. */
export function listShelf(context: Context): ShelfEntry[] {
  const { folder } = context.support;
  if (!existsSync(folder)) return [];
  return readdirSync(folder)
    .filter((name) => name.endsWith(extension))
    .map((name) => {
      const path = join(folder, name);
      // What is no plain file (a link that leads nowhere, a pipe) is named, and never opened: a pipe would not answer.
      const stamp = stampOf(path);
      const probed = stamp.ok ? probeFile(path) : stamp;
      return {
        ref: refFor(context, path),
        fileName: basename(path),
        folder: dirname(path),
        modifiedAt: stamp.ok ? new Date(stamp.value.modifiedMs).toISOString() : null,
        trouble: probed.ok ? null : probed.message,
      };
    })
    .sort((a, b) => ((a.modifiedAt ?? "") < (b.modifiedAt ?? "") ? 1 : -1));
}

// File systems take 255 bytes; the longest that is added is a number, the ending, and what SQLite and a copy append.
const mostNameBytes = 200;
// Names that one system keeps for devices, with whatever ending.
const deviceName = /^(con|prn|aux|nul|com\d|lpt\d)(\.|$)/i;

/** A study's name as a file may bear it anywhere. */
function safeName(name: string): string {
  let safe = name.replace(/[\\/:*?"<>|\p{Cc}]/gu, "-").slice(0, 80);
  while (Buffer.byteLength(safe) > mostNameBytes) safe = safe.slice(0, -1);
  safe = safe.toWellFormed().replace(/^[.\s]+|[.\s]+$/g, "");
  return safe === "" || deviceName.test(safe) ? serviceWords.studyNamed(safe).trim() : safe;
}

/** A file name in the host's folder for a study's name: unsafe characters replaced, a number added where it is taken. */
export function pathForName(context: Context, name: string): Outcome<string> {
  const { folder } = context.support;
  try {
    mkdirSync(folder, { recursive: true });
  } catch (error) {
    return bad(serviceWords.noFolder(openFaultWithin(error)));
  }
  const safe = safeName(name);
  for (let number = 1; number < 1000; number++) {
    const path = join(folder, `${safe}${number === 1 ? "" : ` ${number}`}${extension}`);
    if (!existsSync(path)) return good(path);
  }
  return bad(serviceWords.tooManyOfName);
}
