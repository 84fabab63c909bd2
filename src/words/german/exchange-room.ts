import type { exchangeRoomWords } from "../exchange-room.ts";
import { counted } from "../language.ts";

const rowsOf = (rows: number) => counted(rows, "Zeile", "Zeilen");

export const exchangeRoom: typeof exchangeRoomWords = {
  back: "Zurück zur Akte",
  region: "Becher importieren",
  title: "Becher und Ablesungen importieren",
  chooseFile: "Eine CSV-Datei oder Arbeitsmappe (.xlsx) wählen",
  dropFile: "Oder die Datei hier ablegen.",
  whatFile:
    "Eine Zeile je Becher, mit Dosis und Ablesungen. Derselbe Bechername noch einmal ist derselbe Becher, erneut abgelesen. Höchstens 20 MB und 50.000 Zeilen. Bis zum Hinzufügen ändert sich nichts.",
  needs:
    "Die Dosen der Becher entstehen aus dem Trockenrückstand der Probe und der Konzentration der Stammlösung: beides vor der Datei eintragen.",
  fallbackName: "Import",
  jarsAndReadings: (jars, readings) => {
    const read = counted(readings, "Ablesung", "Ablesungen");
    return jars === 0 ? read : `${jars} Becher mit ${read}`;
  },
  adding: (done, total) => `Becher werden hinzugefügt: ${done} von ${total} Einträgen geprüft.`,
  writing: "Die Becher werden als Ganzes geprüft und in die Datei der Studie geschrieben.",
  added: (jarsAndReadings, series) =>
    `${jarsAndReadings} hinzugefügt zu: ${series}. „Rückgängig“ nimmt alles auf einmal zurück.`,
  toBench: "Zum Labor",
  add: "Becher hinzufügen",
  addCounted: (jarsAndReadings) => `${jarsAndReadings} hinzufügen`,
  readingFile: "Die Datei wird gelesen…",
  readingRows: "Die Zeilen werden gelesen…",
  rowsRead: (done, total) => `Die Zeilen werden gelesen: ${done} von ${total}.`,
  recordsTried: (done, total) => `Die Becher werden probeweise eingetragen: ${done} von ${total} Einträgen.`,
  tooLarge: (megabytes) =>
    `Diese Datei ist größer als ${megabytes} MB. Nur die Zeilen der Becher behalten oder die Datei teilen.`,
  notReadable: "Diese Datei ließ sich nicht lesen: nachsehen, ob ein anderes Programm sie offen hält.",
  notWorkable: "Diese Datei ließ sich nicht bearbeiten. Es wurde nichts geändert.",
  failed: "Beim Lesen dieser Datei ist in Flocwright selbst etwas fehlgeschlagen. Es wurde nichts geändert.",
  chooseAgain: "Bitte die Datei erneut wählen.",
  cancelled: "Abgebrochen. Es wurde nichts geändert.",
  notAdded: "Abgebrochen. Es wurde nichts hinzugefügt.",
  file: {
    title: (name) => `1. Die Datei ${name}`,
    workbook: (rows) => `${rowsOf(rows)}, ein Blatt einer Arbeitsmappe.`,
    separated: (rows, separator) =>
      `${rowsOf(rows)}, Zellen getrennt durch ${{ ",": "Kommas", ";": "Semikolons", "\t": "Tabulatoren" }[separator]}.`,
    markRead: (mark) => `Zahlen werden mit Dezimal${mark === "," ? "komma" : "punkt"} gelesen.`,
    otherLetters:
      "Die Zeichen dieser Datei sind nicht als UTF-8 gekennzeichnet und wurden als westeuropäisch gelesen: nachsehen, ob Namen mit Umlauten stimmen.",
    sheet: "Blatt",
    sheetLines: (sheet, lines) => `${sheet} (${rowsOf(lines)})`,
    headLine: "Spaltenköpfe in Zeile",
    headLineWrong: "Die Nummer der Zeile mit den Spaltenköpfen eintragen, ab 1.",
    asNumbersShow: "wie die Zahlen zeigen",
  },
  columns: {
    title: "2. Was die Spalten sind",
    what: "Nachsehen, ob jede Vermutung stimmt. Bei einer Dosis die Einheit angeben und ob sie Wirksubstanz oder Handelsware meint: Nichts wird unterstellt.",
    table: "Die Spalten der Datei",
    inFile: "In der Datei",
    example: "Zum Beispiel",
    takenFor: "Gelesen als",
    unitAndBasis: "Einheit und Bezug einer Dosis",
    empty: "leer",
    takenForOf: (head) => `${head}: gelesen als`,
    unitOf: (head) => `${head}: Einheit`,
    basisOf: (head) => `${head}: Bezug`,
    notImported: "nicht importiert",
    chooseUnit: "Einheit wählen",
    chooseBasis: "Bezug wählen",
    noBasis: "Ein Volumen hat keinen Bezug: Seine Konzentration ist die der Stammlösung.",
    groups: {
      doses: "Dosen",
      jar: "Der Becher",
      filtrate: "Das Filtrat",
      drainageAndCake: "Entwässerung und Kuchen",
      reasonsAndNotes: "Gründe und Bemerkungen zu Ablesungen",
    },
    doseA: "Dosis von Polymer A",
    doseB: "Dosis von Polymer B",
    units: {
      "kg-per-t": "kg/t TR",
      "lb-per-short-ton": "lb/short ton TR",
      "mg-per-l-feed": "mg/L Zulaufschlamm",
      "ml-solution": "mL Stammlösung",
    },
    bases: { active: "Wirksubstanz", "as-supplied": "Handelsware" },
  },
  series: {
    title: "3. Wohin die Becher gehören",
    namedInFile:
      "Die Datei nennt die Reihe jeder Zeile. Eine Reihe, die es in der Studie noch nicht gibt, wird angelegt.",
    addTo: "Becher hinzufügen zu",
    newSeries: "einer neuen Reihe",
    newName: "Name der neuen Reihe",
    sample: "Probe",
    stockA: "Stammlösung von Polymer A",
    stockB: "Stammlösung von Polymer B",
    chooseIt: "bitte wählen",
    none: "keine",
    volume: "Probenvolumen jedes Bechers",
    readAgain: "Zeilen schon vorhandener Becher fügen diesen ihre Ablesungen hinzu",
  },
  preview: {
    title: "4. Ansehen, dann hinzufügen",
    name: "Vorschau",
    mend: {
      file: "Datei noch einmal wählen",
      columns: "Spalten angeben",
      series: "Zugehörigkeit der Becher angeben",
    },
    nothingYet: (rows) => `${rowsOf(rows)} in der Datei. Noch würde nichts hinzugefügt.`,
    would: (rows, added, jarsAndReadings, newSeries, intoSeries) => {
      const where = [
        ...newSeries.map((name) => `in der neuen Reihe ${name}`),
        ...intoSeries.map((name) => `in Reihe ${name}`),
      ].join(" und ");
      const many = added !== rows ? `${added} davon` : rows === 1 ? "sie" : "alle";
      return `${rowsOf(rows)} in der Datei, ${many} ${added === 1 ? "würde" : "würden"} hinzugefügt: ${jarsAndReadings}, ${where}.`;
    },
    badRows: (rows) =>
      rows === 1
        ? "1 Zeile lässt sich nicht lesen. Sie in der Datei berichtigen und diese erneut wählen, oder die Zeile weglassen. Solange eine fehlerhafte Zeile dabei ist, wird nichts hinzugefügt."
        : `${rows} Zeilen lassen sich nicht lesen. Sie in der Datei berichtigen und diese erneut wählen, oder die Zeilen weglassen. Solange eine fehlerhafte Zeile dabei ist, wird nichts hinzugefügt.`,
    badTable: "Zeilen, die sich nicht lesen lassen",
    row: "Zeile",
    column: "Spalte",
    wrong: "was nicht stimmt",
    firstErrors: (shown, all) => `Die ersten ${shown} von ${all} werden gezeigt.`,
    skipBad: (rows) =>
      `${counted(rows, "fehlerhafte Zeile", "fehlerhafte Zeilen")} weglassen und die anderen hinzufügen`,
    jar: "Becher",
    series: "Reihe",
    dose: (polymer, unit) => `Dosis ${polymer}, ${unit} WS`,
    readings: "Ablesungen",
    readAgain: "erneut abgelesen",
    firstRows: (shown, all) => `Die ersten ${shown} Zeilen werden gezeigt; gelesen wurden alle ${all}.`,
  },
  exporting: {
    title: "Exportieren",
    series: "Reihe",
    allSeries: "alle Reihen",
    csv: "Becher und Ablesungen als CSV",
    csvWhat:
      "Eine Tabelle mit Einheiten in den Spaltenköpfen, mit dem Dezimalzeichen der Studie. Der Import hier liest sie zurück, mit den Zeitpunkten des Rührens und Ablesens. Texte, die eine Tabellenkalkulation als Formel ausführen würde, bekommen einen Apostroph davor.",
    workbook: "Ganze Studie als Arbeitsmappe (.xlsx)",
    workbookWhat: "Ein Blatt je Art von Eintrag, die Becher zuerst.",
    json: "Ganze Studie als JSON",
    jsonWhat:
      "Jeder Eintrag, wie er geführt wird, ohne den Verlauf; das veröffentlichte JSON-Schema beschreibt ihn. Um eine Studie mit ihrem Verlauf weiterzugeben, stattdessen eine Kopie speichern.",
    writing: "Wird geschrieben…",
    workingOut: (done, total) => `Die Becher werden berechnet: ${done} von ${total}.`,
    linesWritten: (done, total) => `Die Datei wird geschrieben: ${done} von ${total} Zeilen.`,
    cancelled: "Abgebrochen. Es wurde keine Datei geschrieben.",
    given: (file) => `${file} liegt jetzt bei den Downloads.`,
    fallbackName: "Studie",
  },
};
