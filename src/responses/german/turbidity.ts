import type { TurbidityWords } from "../turbidity.ts";

export const responseTurbidity: TurbidityWords = {
  label: "Trübung",
  column: "Trübung",
  ask: "Küvette über Kopf wenden und die Trübung immer nach derselben Zeit (10 bis 30 s) ablesen",
  overRange: (high) => `Das Gerät misst bis ${high}: >${high} eintragen oder verdünnen.`,
  form: "Trübung einer Verdünnung",
  formStandard: "Standard Methods 2130 B; nicht linear, deshalb steht die Verdünnung daneben",
  read: "abgelesen",
  dilution: "Gesamt- je Probenvolumen",
  times: "fach",
  head: (unit) => `Trü\u00adbung, ${unit}`,
  onScreen: (shown, unit) => `Trübung ${shown} ${unit}`,
  dilutedOnScreen: (shown, unit, dilution, made) =>
    `Trübung ${shown} ${unit}, ${dilution}fach verdünnt: ${made}`,
  slot: "Trübung",
  otherUnit: (series, unit) =>
    `die Reihe ${series} führt die Trübung in ${unit}: Die Einheiten sind verschieden.`,
  dilutionAlone: "hat keine abgelesene Trübung (turbidity_shown) neben sich.",
  needsDilution: "ist leer: 1 eintragen, wo die Probe nicht verdünnt wurde.",
  fields: {
    turbidity_ntu: "Trübung, NTU, Verdünnung eingerechnet",
    turbidity_fnu: "Trübung, FNU, Verdünnung eingerechnet",
    turbidity_shown: "Trübung, wie das Gerät sie zeigt",
    turbidity_dilution: "Verdünnungsfaktor der Trübung",
  },
};
