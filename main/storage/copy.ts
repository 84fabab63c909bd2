import { existsSync, readdirSync } from "node:fs";
import { join } from "node:path";
import { backup, DatabaseSync } from "node:sqlite";
import { bad, good, type Outcome } from "../../src/outcome.ts";
import { storageWords } from "../../src/words/storage.ts";
import { extension } from "./format.ts";
import { takeName, throwAway } from "./files.ts";
import { takeLock } from "./lock.ts";
import { openFault } from "./probe.ts";
import { atStep } from "./steps.ts";

const partOf = (target: string) => `${target}.part`;

function throwPartAway(part: string): void {
  throwAway(part);
  throwAway(`${part}-journal`);
}

/**
 * Copies an open study into a new file, looks the copy over and gives it its name only then. While it is made the copy
 * bears a lock, by which a later session knows whether whoever made it is still at it.
 */
export async function copyStudy(database: DatabaseSync, target: string, now: string): Promise<Outcome<null>> {
  if (existsSync(target)) return bad(storageWords.nameTaken);
  const part = partOf(target);
  let release = () => {};
  try {
    const lock = takeLock(part, now);
    if (lock.kind === "busy") return bad(storageWords.copy.busy);
    ({ release } = lock);
    throwPartAway(part);
    atStep("save as: begun");
    await backup(database, part);
    atStep("save as: copied");
    const copy = new DatabaseSync(part, { readOnly: true });
    const sound = copy.prepare("PRAGMA integrity_check(1)").get()?.["integrity_check"] === "ok";
    copy.close();
    if (!sound) {
      throwPartAway(part);
      return bad(storageWords.copy.thrownAway);
    }
    takeName(part, target);
    atStep("save as: named");
    return good(null);
  } catch (error) {
    throwPartAway(part);
    return bad(openFault(error));
  } finally {
    release();
  }
}

/**
 * Throws away what copying left behind in a folder when the program was killed in the middle of it. Only a half-made
 * copy that bears a lock of a dead process of this machine is ours to throw away; anything else is left.
 */
export function sweepCopies(folder: string, now: string): void {
  const ending = `${partOf(extension)}.lock`;
  try {
    for (const name of readdirSync(folder)) {
      if (!name.endsWith(ending)) continue;
      const part = join(folder, name.slice(0, -".lock".length));
      const lock = takeLock(part, now);
      if (lock.kind === "busy") continue;
      throwPartAway(part);
      lock.release();
    }
  } catch {
    // A folder that cannot be tidied is no reason not to work in it.
  }
}
