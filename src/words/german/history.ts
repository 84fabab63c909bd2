import type { historyWords } from "../history.ts";
import { counted } from "../language.ts";
import { valueNamed } from "./value-names.ts";

const yesNo = new Map([
  ["true", "ja"],
  ["false", "nein"],
]);

export const history: typeof historyWords = {
  nothing: "nichts",
  value: (kept, field) => yesNo.get(kept) ?? valueNamed(field, kept) ?? kept,
  ofOther: (what, other) => `${what} zu ${other}`,
  added: (what) => `${what} hinzugefügt`,
  addedWith: (what, facts) => `${what} hinzugefügt (${facts})`,
  removed: (what) => `${what} entfernt`,
  changed: (what, parts) => `${what} geändert: ${parts}`,
  approved: (dose, series, byName, reason) => `${dose} für ${series} freigegeben (${byName}: ${reason})`,
  withdrawn: (dose, series, byName, reason) =>
    `Freigabe von ${dose} für ${series} zurückgezogen (${byName}: ${reason})`,
  pair: (doseA, doseB) => `${doseA} A und ${doseB} B`,
  settingsApproved: (series, byName) => `Anlageneinstellungen zu ${series} freigegeben (${byName})`,
  leftOut: (what, why) => (why ? `${what} weggelassen: ${why}` : `${what} weggelassen`),
  takenIn: (what) => `${what} wieder einbezogen`,
  fromTo: (field, before, after) => `${field} von ${before} auf ${after}`,
  together: (label, records) => `${label} (${counted(records, "Eintrag", "Einträge")})`,
  undid: (step, what) => `Schritt ${step} rückgängig gemacht: ${what}.`,
  redid: (step, what) => `Schritt ${step} wiederholt: ${what}.`,
  done: (what) => `${what}.`,
  nothingToUndo: "Es gibt nichts rückgängig zu machen.",
  nothingToRedo: "Es gibt nichts zu wiederholen.",
};
