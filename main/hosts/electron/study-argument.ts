import { resolve } from "node:path";

/** The study named on a command line (a double click in the system's files does that), as a whole path; null for none. */
export function studyArgument(words: readonly string[], workingFolder: string): string | null {
  const named = words.slice(1).find((word) => word.endsWith(".flocwright") && !word.startsWith("-"));
  return named === undefined ? null : resolve(workingFolder, named);
}
