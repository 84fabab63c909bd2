import { closeSync, existsSync, fstatSync, openSync, readSync } from "node:fs";
import { bad, good, type Outcome } from "../../src/outcome.ts";
import { applicationId, formatVersion } from "./format.ts";
import { storageWords } from "../../src/words/storage.ts";

const magic = "SQLite format 3\u0000";

/**
 * Looks at a file's first bytes only, so that a foreign, truncated or newer file is refused without SQLite ever
 * touching it. Answers the format version.
 */
export function probeFile(path: string): Outcome<number> {
  let descriptor: number;
  try {
    descriptor = openSync(path, "r");
  } catch (error) {
    return bad(openFault(error));
  }
  try {
    const stat = fstatSync(descriptor);
    if (stat.isDirectory()) return bad(storageWords.folder);
    const head = Buffer.alloc(100);
    const read = readSync(descriptor, head, 0, 100, 0);
    if (read === 0) return bad(storageWords.empty);
    if (head.toString("latin1", 0, Math.min(read, 16)) !== magic.slice(0, Math.min(read, 16)))
      return bad(storageWords.notAStudy);
    if (read < 100) return bad(storageWords.cutShort);
    if (head[18] !== 1 || head[19] !== 1) return bad(storageWords.otherJournal);
    if (head.readUInt32BE(68) !== applicationId) return bad(storageWords.otherDatabase);
    const version = head.readUInt32BE(60);
    if (version > formatVersion) return bad(storageWords.newer(version, formatVersion));
    if (version === 0) return bad(storageWords.neverFinished);
    const pageSize = head.readUInt16BE(16) === 1 ? 65536 : head.readUInt16BE(16);
    const pages = head.readUInt32BE(28);
    // With a hot journal the size may lag behind: SQLite itself puts that right on opening.
    if (!existsSync(`${path}-journal`) && stat.size < pageSize * pages) return bad(storageWords.cutShort);
    return good(version);
  } finally {
    closeSync(descriptor);
  }
}

/** The sentence for a file that could not be opened or written. */
export function openFault(error: unknown): string {
  const { code, errcode } = error as { code?: string; errcode?: number };
  if (code === "ENOENT") return storageWords.disk.noFile;
  if (code === "EACCES" || code === "EPERM") return storageWords.disk.notAllowed;
  if (code === "ENAMETOOLONG") return storageWords.disk.nameTooLong;
  if (code === "EROFS") return storageWords.disk.readOnlyFolder;
  if (code === "EISDIR") return storageWords.folder;
  // SQLite's extended codes carry the plain one in their low byte.
  const plain = (errcode ?? 0) & 0xff;
  if (code === "ENOSPC" || code === "EDQUOT" || plain === 13) return storageWords.disk.full;
  if (plain === 8 || plain === 14) return storageWords.disk.notWritable;
  if (plain === 5 || plain === 6) return storageWords.disk.held;
  if (plain === 10) return storageWords.disk.unreachable;
  if (plain === 11 || plain === 26) return storageWords.disk.damaged;
  return storageWords.disk.unusable;
}

/** The same within a longer sentence. */
export function openFaultWithin(error: unknown): string {
  return storageWords.within(openFault(error));
}
