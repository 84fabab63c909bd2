import type { DatabaseSync } from "node:sqlite";
import { bad, good, type Outcome } from "../../src/outcome.ts";
import { openFault } from "./probe.ts";
import { atStep } from "./steps.ts";

/** What is written within a transaction, in one go or in steps. A sentence refuses it: then nothing is written. */
export type Work = () => Generator<number, string | void> | string | void;

/**
 * Does work as one transaction: durable when this answers, or nothing of it is there and the sentence says why. Between
 * two of the work's steps others may be let in, but not to this database: it holds half of the work until the end.
 */
export function* transaction(database: DatabaseSync, work: Work): Generator<number, Outcome<null>> {
  try {
    database.exec("BEGIN IMMEDIATE");
    try {
      atStep("write: begun");
      const done = work();
      const refusal = typeof done === "object" ? yield* done : done;
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
}

/** Takes back what a transaction left off between two steps has written, if there is one. False where that fails. */
export function takeBack(database: DatabaseSync): boolean {
  try {
    if (database.isTransaction) database.exec("ROLLBACK");
    return true;
  } catch {
    // Its journal stays beside the file, and the next opening plays it back.
    return false;
  }
}
