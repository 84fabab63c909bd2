import { createHash } from "node:crypto";
import type { Change } from "../../src/study/history.ts";

export const chainStart = "0".repeat(64);

/** The hash that ties an entry of the history to the one before it. */
export function chainHash(previous: string, change: Change): string {
  const { seq, at, by, command, inverse, undoes, redoes, why } = change;
  return createHash("sha256")
    .update(JSON.stringify([previous, seq, at, by, command, inverse, undoes, redoes, why]))
    .digest("hex");
}
