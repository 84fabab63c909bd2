import { closeSync, existsSync, fstatSync, openSync, readSync } from "node:fs";
import { bad, good, type Outcome } from "../../src/outcome.ts";
import { applicationId, formatVersion } from "./format.ts";

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
    if (stat.isDirectory()) return bad("This is a folder, not a study file.");
    const head = Buffer.alloc(100);
    const read = readSync(descriptor, head, 0, 100, 0);
    if (read === 0) return bad("This file is empty. It is left as it is.");
    if (head.toString("latin1", 0, Math.min(read, 16)) !== magic.slice(0, Math.min(read, 16)))
      return bad("This is not a Flocwright study. It is left as it is.");
    if (read < 100)
      return bad("This study file is cut short. It is left as it is: open a backup or another copy.");
    if (head[18] !== 1 || head[19] !== 1)
      return bad(
        "This study was set to another way of writing by another program. It is left as it is: set its journal mode back to DELETE there, or open a backup.",
      );
    if (head.readUInt32BE(68) !== applicationId)
      return bad("This is a database of another program. It is left as it is.");
    const version = head.readUInt32BE(60);
    if (version > formatVersion)
      return bad(
        `This study was written by a newer Flocwright (format ${version}, this one reads up to ${formatVersion}). It is left as it is: update first.`,
      );
    if (version === 0) return bad("This study file was never finished. It is left as it is.");
    const pageSize = head.readUInt16BE(16) === 1 ? 65536 : head.readUInt16BE(16);
    const pages = head.readUInt32BE(28);
    // With a hot journal the size may lag behind: SQLite itself puts that right on opening.
    if (!existsSync(`${path}-journal`) && stat.size < pageSize * pages)
      return bad("This study file is cut short. It is left as it is: open a backup or another copy.");
    return good(version);
  } finally {
    closeSync(descriptor);
  }
}

/** The sentence for a file that could not be opened or written. */
export function openFault(error: unknown): string {
  const { code, errcode } = error as { code?: string; errcode?: number };
  if (code === "ENOENT") return "There is no such file.";
  if (code === "EACCES" || code === "EPERM") return "This file or folder may not be used by you.";
  if (code === "ENAMETOOLONG") return "This name is too long for the disk.";
  if (code === "EROFS") return "This folder is read-only.";
  if (code === "EISDIR") return "This is a folder, not a study file.";
  // SQLite's extended codes carry the plain one in their low byte.
  const plain = (errcode ?? 0) & 0xff;
  if (code === "ENOSPC" || code === "EDQUOT" || plain === 13)
    return "The disk is full. Nothing of this change was saved: free some space, then try again.";
  if (plain === 8 || plain === 14) return "The file or its folder cannot be written to.";
  if (plain === 5 || plain === 6)
    return "Another program holds the file. Nothing of this change was saved: close it there, then try again.";
  if (plain === 10)
    return "The disk could not be read or written. Nothing of this change was saved: see that it is connected, then try again.";
  if (plain === 11 || plain === 26)
    return "The file is damaged. It is left as it is: open a backup or another copy.";
  return "The file could not be used.";
}

/** The same within a longer sentence. */
export function openFaultWithin(error: unknown): string {
  const sentence = openFault(error);
  return `${sentence.charAt(0).toLowerCase()}${sentence.slice(1)}`;
}
