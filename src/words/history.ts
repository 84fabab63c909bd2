import { area, counted } from "./language.ts";

/** The history of a study in sentences, and the undo line's refusals. */
export const historyWords = area("history", {
  nothing: "nothing",
  value: (kept: string, _field: string) => kept,
  named: (kind: string, label: string) => `${kind} ${label}`,
  ofJar: (kind: string, jar: string) => `${kind} of jar ${jar}`,
  added: (what: string) => `added ${what}`,
  addedResult: (what: string, result: string) => `added ${what} (${result})`,
  removed: (what: string) => `removed ${what}`,
  changed: (what: string, parts: string) => `changed ${what}: ${parts}`,
  fromTo: (field: string, before: string, after: string) => `${field} from ${before} to ${after}`,
  together: (label: string, records: number) => `${label} (${counted(records, "record", "records")})`,
  undid: (step: number, what: string) => `Undid step ${step}: ${what}.`,
  redid: (step: number, what: string) => `Did step ${step} again: ${what}.`,
  done: (what: string) => `${what}.`,
  nothingToUndo: "There is nothing to undo.",
  nothingToRedo: "There is nothing to redo.",
});
