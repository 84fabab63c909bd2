import type { DrainedWords } from "../drained.ts";

export const responseDrained: DrainedWords = {
  label: "Abgelaufen",
  column: "abgelaufen",
  unitAt: (seconds) => `mL nach ${seconds ?? "?"} s`,
  ask: "Abgelaufenes Volumen ablesen",
  run: "abgelaufenes Volumen",
  form: "Abgelaufenes Volumen zu einer Zeit",
  at: "nach",
  head: "abge\u00adlaufen, mL nach s",
  onPaper: (ml, seconds) => `${ml} nach ${seconds}`,
  onScreen: (ml, seconds) => `abgelaufen ${ml} mL nach ${seconds} s`,
  needsTime:
    "Zuerst die Entwässerungszeit der Reihe eintragen: Ein abgelaufenes Volumen gilt nur mit seiner Zeit.",
  needsFileTime:
    "braucht die Zeit, nach der abgelesen wurde: eine Spalte drained_at_s hinzufügen oder im Labor die Entwässerungszeit der Reihe eintragen.",
  slot: "abgelaufenes Volumen",
  fields: {
    drained_ml: "abgelaufenes Volumen, mL",
    drained_at_s: "abgelaufenes Volumen: abgelesen nach, s",
  },
  otherSlot: "Entwässerung zu anderer Zeit",
  otherFields: {
    drainage_ml: "Entwässerung zu anderer Zeit, mL",
    drainage_at_s: "Entwässerung zu anderer Zeit: abgelesen nach, s",
  },
  group: "ein abgelaufenes Volumen",
};
