import { existsSync, mkdtempSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";

/** A folder for fuzz, in memory where the system has such a place: what is tried here is not durability. */
export function fuzzFolder(): string {
  return mkdtempSync(join(existsSync("/dev/shm") ? "/dev/shm" : tmpdir(), "flocwright-fuzz-"));
}
