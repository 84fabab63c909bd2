import type { historyWords } from "../history.ts";
import { counted } from "../language.ts";
import { valueNames } from "./value-names.ts";

const yesNo: Partial<Record<string, string>> = { true: "ja", false: "nein" };

export const history: typeof historyWords = {
  nothing: "nichts",
  value: (kept, field) => yesNo[kept] ?? valueNames[field]?.[kept] ?? kept,
  named: (kind, label) => `${kind} ${label}`,
  ofJar: (kind, jar) => `${kind} zu Becher ${jar}`,
  added: (what) => `${what} hinzugefügt`,
  addedResult: (what, result) => `${what} hinzugefügt (${result})`,
  removed: (what) => `${what} entfernt`,
  changed: (what, parts) => `${what} geändert: ${parts}`,
  fromTo: (field, before, after) => `${field} von ${before} auf ${after}`,
  together: (label, records) => `${label} (${counted(records, "Eintrag", "Einträge")})`,
  undid: (step, what) => `Schritt ${step} rückgängig gemacht: ${what}.`,
  redid: (step, what) => `Schritt ${step} wiederholt: ${what}.`,
  done: (what) => `${what}.`,
  nothingToUndo: "Es gibt nichts rückgängig zu machen.",
  nothingToRedo: "Es gibt nichts zu wiederholen.",
};
