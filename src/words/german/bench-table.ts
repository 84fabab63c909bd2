import type { benchTableWords } from "../bench-table.ts";
import { counted } from "../language.ts";

export const benchTable: typeof benchTableWords = {
  name: "Name",
  // Soft hyphens: these words stand in narrow table heads.
  runningOrder: "Reihen\u00ADfolge",
  plannedDose: (letter) => `geplante Dosis ${letter}`,
  syringe: (letter) => `Spritze ${letter}`,
  blankWater: "Ausgleichs\u00ADwasser",
  roles: { "no-polymer": "ohne Polymer", dose: "", standard: "Standard", centre: "Mitte" },
  reads: (count) => counted(count, "Ablesung", "Ablesungen"),
  plainNumber: (column) => `${column}: als Zahl ablesen, ohne > oder <.`,
  notHere: (column) => `${column} wird nicht hier eingetragen.`,
  needsOrder: "Ein Becher braucht seinen Platz in der Reihenfolge.",
  needsName: "Ein Becher braucht einen Namen.",
  chooseCell: "Ein Eingabefeld wählen, in das eingefügt werden soll.",
  wideBlock: (wide, left) =>
    `Der Block ist ${wide} Spalten breit, ab hier sind aber nur ${left} Eingabespalten übrig.`,
  blockRefused: (row, column, why) => `Zeile ${row} des Blocks, ${column}: ${why} Nichts wurde eingefügt.`,
  pairsPlanned: "Bei zwei Polymeren werden die Dosen neuer Becher als Paare geplant.",
  stockFirst: "Zuerst Konzentration und Dichte der Stammlösung eintragen.",
  solidsFirst: "Zuerst den Trockenrückstand der Probe eintragen.",
  volumeFirst: "Zuerst das Probenvolumen je Becher eintragen.",
  filtration: {
    pair: (line) => `Zeile ${line}: ein Volumen und eine Zeit eingeben, mit Leerzeichen dazwischen.`,
    volume: (line, why) => `Zeile ${line}, Volumen: ${why}`,
    time: (line, why) => `Zeile ${line}, Zeit: ${why}`,
    aboveZero: (line) => `Zeile ${line}: Volumen und Zeit müssen über 0 liegen.`,
    rising: (line) => `Zeile ${line}: Volumen und Zeit müssen von Zeile zu Zeile steigen.`,
    few: "Mindestens drei Volumina mit ihren Zeiten eingeben.",
  },
};
