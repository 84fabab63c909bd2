import { area, counted } from "./language.ts";

const yesNo = new Map([
  ["true", "yes"],
  ["false", "no"],
]);

/** The history of a study in sentences, and the undo line's refusals. */
export const historyWords = area("history", {
  nothing: "nothing",
  value: (kept: string, _field: string) => yesNo.get(kept) ?? kept,
  ofOther: (what: string, other: string) => `${what} of ${other}`,
  added: (what: string) => `added ${what}`,
  addedWith: (what: string, facts: string) => `added ${what} (${facts})`,
  removed: (what: string) => `removed ${what}`,
  changed: (what: string, parts: string) => `changed ${what}: ${parts}`,
  approved: (dose: string, series: string, byName: string, reason: string) =>
    `approved ${dose} for ${series} (${byName}: ${reason})`,
  withdrawn: (dose: string, series: string, byName: string, reason: string) =>
    `withdrew the approved ${dose} of ${series} (${byName}: ${reason})`,
  pair: (doseA: string, doseB: string) => `${doseA} of A and ${doseB} of B`,
  settingsApproved: (series: string, byName: string) =>
    `approved the plant settings of ${series} (${byName})`,
  leftOut: (what: string, why: string) => (why ? `left out ${what}: ${why}` : `left out ${what}`),
  takenIn: (what: string) => `took ${what} back in`,
  fromTo: (field: string, before: string, after: string) => `${field} from ${before} to ${after}`,
  together: (label: string, records: number) => `${label} (${counted(records, "record", "records")})`,
  undid: (step: number, what: string) => `Undid step ${step}: ${what}.`,
  redid: (step: number, what: string) => `Did step ${step} again: ${what}.`,
  done: (what: string) => `${what}.`,
  nothingToUndo: "There is nothing to undo.",
  nothingToRedo: "There is nothing to redo.",
});
