import type { sheetWords } from "../sheets.ts";

export const sheets: typeof sheetWords = {
  at: (name, line, column, why) => `${name}: Zeile ${line}, Spalte ${column}: ${why}`,
  inColumn: (name, column, why) => `${name}: Spalte ${column}: ${why}`,
  whole: (name, why) => `${name}: ${why}`,
  clause: (name, why) => `${name}: ${why}.`,
  cutShort: "ist abgeschnitten oder kein Text: das Blatt noch einmal als CSV in UTF-8 speichern",
  notText: "ist kein Text: das Blatt als CSV in UTF-8 oder als .xlsx speichern",
  notWorkbook: (name) => `${name}: ist ein Archiv, aber keine Arbeitsmappe (.xlsx).`,
  workbookUnreadable: (name) =>
    `${name}: Die Arbeitsmappe lässt sich nicht lesen: in einem Tabellenprogramm öffnen und neu speichern.`,
  cellUnreadable: (name, row, column) =>
    `${name}: Zeile ${row}, Spalte ${column} eines Blatts lässt sich nicht lesen: in einem Tabellenprogramm öffnen und neu speichern.`,
  cellPlaceless: "eine Zelle eines Blatts hat keinen Platz",
  farRow: (row, most) => `ein Blatt hat eine Zelle in Zeile ${row}; höchstens ${most} Zeilen sind möglich`,
  farColumn: (column, most) =>
    `ein Blatt hat eine Zelle in Spalte ${column}; höchstens ${most} Spalten sind möglich`,
  fileEmpty: (name) => `${name}: Die Datei ist leer.`,
  fileNotText: (name) => `${name}: ist kein Text; das Blatt als CSV in UTF-8 speichern.`,
  manyLines: (name, lines, rows) =>
    `${name}: Es sind mehr als ${lines} Zeilen; höchstens ${rows} Datenzeilen sind möglich.`,
  openQuote: (name, line) => `${name}: Zeile ${line} hat ein Anführungszeichen, das nie geschlossen wird.`,
  noColumn: (name, head, heads) => `${name}: Es gibt keine Spalte „${head}“; es gibt: ${heads}.`,
  tooLarge: (text) => `„${text}“ ist für eine gemessene Zahl zu groß.`,
  tooSmall: (text) => `„${text}“ ist für eine gemessene Zahl zu klein.`,
  bound: (text) => `„${text}“ ist eine Schranke, hier wird aber eine einfache Zahl gebraucht.`,
  nothing: (name) => `${name}: Es ist nichts darin.`,
  noHeads: (name) => `${name}: In dieser Zeile und darunter stehen keine Spaltenköpfe.`,
  manyColumns: (name, line, columns, most) =>
    `${name}: Zeile ${line} hat ${columns} Spalten; höchstens ${most} sind möglich.`,
  manyRows: (name, rows, most) =>
    `${name}: Es sind ${rows} Zeilen; höchstens ${most} sind möglich: die Datei teilen.`,
  noRows: (name) => `${name}: Unter dem Kopf stehen keine Zeilen.`,
  wideRow: (name, line, columns) =>
    `${name}: Zeile ${line} hat mehr Zellen, als der Kopf Spalten hat (${columns}).`,
  longCell: "Die Zelle ist viel zu lang.",
  longHead: (column) => `Der Kopf der Spalte ${column} ist viel zu lang.`,
  blankHead: (column, line) =>
    `Spalte ${column} der Zeile ${line} hat keinen Kopf; wo ein Kopf über mehrere Spalten reicht, jeder Spalte ihren eigenen geben.`,
  twinHead: (line, head) => `Zeile ${line} hat zwei Spalten mit dem Namen „${head}“.`,
  otherMark: (cell, line, column) =>
    `„${cell}“ hat ein anderes Dezimalzeichen als Zeile ${line}, Spalte ${column}.`,
  largeFile: (name, megabytes) =>
    `${name}: ist größer als ${megabytes} MB; nur die Zeilen der Becher behalten oder die Datei teilen.`,
  emptySheets: (name) => `${name}: Jedes Blatt der Arbeitsmappe ist leer.`,
  oldWorkbook: (name) =>
    `${name}: ist eine Arbeitsmappe der alten Art (.xls) oder eine mit Kennwort: als .xlsx oder CSV ohne Kennwort speichern.`,
  archiveBroken: "ist beschädigt oder abgeschnitten: in einem Tabellenprogramm öffnen und neu speichern",
  archiveLarge:
    "wird entpackt viel größer, als ein Blatt mit Bechern sein kann, und wird deshalb nicht geöffnet",
  archiveLocked: "ist mit einem Kennwort gesperrt: ohne Kennwort speichern",
  doseHead:
    "Polymer, Einheit und Bezug im Kopf angeben, zum Beispiel dose_a_kg_per_t (Wirksubstanz), dose_a_kg_per_t_as_supplied, dose_a_lb_per_short_ton, dose_a_mg_per_l_feed oder syringe_a_ml.",
  takenTwice: (name, one, other, what) =>
    `${name}: Die Spalten ${one} und ${other} sind beide vergeben an „${what}“: eine davon wählen.`,
  chooseUnit: "die Einheit dieser Dosis wählen.",
  chooseBasis: "wählen, ob diese Dosis Wirksubstanz oder Handelsware ist.",
  doseTwice: (name, one, other, letter) =>
    `${name}: Die Spalten ${one} und ${other} geben beide die Dosis von Polymer ${letter} an: eine davon behalten.`,
  dilutionAlone:
    "Ein Verdünnungsfaktor braucht daneben die Trübung, wie das Gerät sie zeigt (turbidity_shown).",
  noDose: (name) =>
    `${name}: Es gibt keine Dosisspalte; eine benennen, zum Beispiel dose_a_kg_per_t oder syringe_a_ml.`,
};
