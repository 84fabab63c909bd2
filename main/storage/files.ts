import { closeSync, existsSync, fsyncSync, openSync, renameSync, rmSync, writeFileSync } from "node:fs";
import { dirname } from "node:path";

/** Has the system write a file or folder through to the disk. Folders cannot be synced everywhere: that is no fault. */
export function syncPath(path: string): void {
  let descriptor: number | null = null;
  try {
    descriptor = openSync(path, "r");
    fsyncSync(descriptor);
  } catch (error) {
    const { code } = error as NodeJS.ErrnoException;
    if (code !== "EISDIR" && code !== "EPERM" && code !== "EINVAL" && code !== "EBADF" && code !== "EACCES")
      throw error;
  } finally {
    if (descriptor !== null) closeSync(descriptor);
  }
}

const tries = 5;
const pauseMs = 60;

/** Waits a moment for another program to be done. */
export function pause(): void {
  Atomics.wait(new Int32Array(new SharedArrayBuffer(4)), 0, 0, pauseMs);
}

/**
 * Gives a finished file its name, in place of what stood there. A sync program or virus scanner that holds the name
 * for a moment is waited for, a bounded number of times.
 */
export function takeName(part: string, path: string): void {
  syncPath(part);
  for (let attempt = 1; ; attempt++)
    try {
      renameSync(part, path);
      break;
    } catch (error) {
      const { code } = error as NodeJS.ErrnoException;
      if (attempt >= tries || (code !== "EBUSY" && code !== "EPERM" && code !== "EACCES")) throw error;
      pause();
    }
  syncPath(dirname(path));
}

/** Throws an unfinished file away where that can be done; what cannot be deleted is no second fault. */
export function throwAway(part: string): void {
  try {
    rmSync(part, { force: true });
  } catch {
    // The fault that led here is the one to tell.
  }
}

/**
 * Writes a new file whole or not at all: it bears another name until its last byte is on the disk. A file that is there
 * already is not touched. Throws where it cannot be written.
 */
export function writeNewFile(path: string, content: Uint8Array | string): void {
  const part = `${path}.${process.pid}.part`;
  try {
    writeFileSync(part, content, { flag: "wx" });
    if (existsSync(path)) throw new Error("there is already a file of this name");
    takeName(part, path);
  } catch (error) {
    throwAway(part);
    throw error;
  }
}
