import { area, counted } from "./language.ts";

/** The import of jars from a file, and the export of a study. */
export const exchangeRoomWords = area("exchangeRoom", {
  back: "Back to the Record",
  region: "Import jars",
  title: "Import jars and readings",
  chooseFile: "Choose a CSV file or a workbook (.xlsx)",
  dropFile: "Or drop the file here.",
  whatFile:
    "One row a jar, with its dose and readings. The same jar name again is the same jar read again. At most 20 MB and 50,000 rows. Nothing changes before you press Add.",
  needs:
    "The jars' doses are made with the sample's solids and the stock solution's strength: enter them before the file.",
  /** what a new series is called where the file's own name says nothing */
  fallbackName: "import",
  jarsAndReadings: (jars: number, readings: number) => {
    const read = counted(readings, "reading", "readings");
    return jars === 0 ? read : `${counted(jars, "jar", "jars")} with ${read}`;
  },
  adding: (done: number, total: number) => `Adding the jars: ${done} of ${total} records are checked.`,
  writing: "The jars are checked as a whole and written into the study file.",
  added: (jarsAndReadings: string, series: string) =>
    `Added ${jarsAndReadings} to ${series}. Undo takes all of it back at once.`,
  toBench: "Go to the Bench",
  add: "Add the jars",
  addCounted: (jarsAndReadings: string) => `Add ${jarsAndReadings}`,
  readingFile: "Reading the file…",
  readingRows: "Reading the rows…",
  rowsRead: (done: number, total: number) => `Reading the rows: ${done} of ${total}.`,
  recordsTried: (done: number, total: number) => `Trying the jars on the study: ${done} of ${total} records.`,
  tooLarge: (megabytes: number) =>
    `This file is larger than ${megabytes} MB. Keep only the rows of the jars, or split it.`,
  notReadable: "This file could not be read: look whether another program holds it open.",
  notWorkable: "This file could not be worked on. Nothing was changed.",
  failed: "Something in Flocwright itself failed while reading this file. Nothing was changed.",
  chooseAgain: "Choose the file again.",
  cancelled: "Cancelled. Nothing was changed.",
  notAdded: "Cancelled. Nothing was added.",
  file: {
    title: (name: string) => `1. The file ${name}`,
    workbook: (rows: number) => `${counted(rows, "row", "rows")}, a sheet of a workbook.`,
    separated: (rows: number, separator: "," | ";" | "\t") =>
      `${counted(rows, "row", "rows")}, cells apart by ${{ ",": "commas", ";": "semicolons", "\t": "tabs" }[separator]}.`,
    markRead: (mark: "," | ".") => `Numbers are read with a decimal ${mark === "," ? "comma" : "point"}.`,
    otherLetters:
      "The letters of this file are not marked as UTF-8 and were read as Western European: look whether names with accents are right.",
    sheet: "Sheet",
    sheetLines: (sheet: string, lines: number) => `${sheet} (${counted(lines, "line", "lines")})`,
    headLine: "Heads are on line",
    headLineWrong: "Enter the number of the line that holds the heads, from 1.",
    asNumbersShow: "as the numbers show",
  },
  columns: {
    title: "2. What the columns are",
    what: "Look whether each guess is right. For a dose say its unit, and whether it is active polymer or the product as supplied: nothing is assumed.",
    table: "The file's columns",
    inFile: "In the file",
    example: "For example",
    takenFor: "Taken for",
    unitAndBasis: "Unit and basis of a dose",
    empty: "empty",
    takenForOf: (head: string) => `${head}: taken for`,
    unitOf: (head: string) => `${head}: unit`,
    basisOf: (head: string) => `${head}: basis`,
    notImported: "not imported",
    chooseUnit: "choose the unit",
    chooseBasis: "choose the basis",
    noBasis: "A volume has no basis: its strength is the stock solution's.",
    groups: {
      doses: "Doses",
      jar: "The jar",
      filtrate: "Filtrate",
      drainageAndCake: "Drainage and cake",
      reasonsAndNotes: "Reasons and notes of readings",
    },
    doseA: "dose of polymer A",
    doseB: "dose of polymer B",
    units: {
      "kg-per-t": "kg/t of dry solids",
      "lb-per-short-ton": "lb/short ton of dry solids",
      "mg-per-l-feed": "mg/L of feed sludge",
      "ml-solution": "mL of stock solution",
    },
    bases: { active: "active polymer", "as-supplied": "product as supplied" },
  },
  series: {
    title: "3. Where the jars belong",
    namedInFile: "The file names the series of each row. A series that is not in the study yet is made.",
    addTo: "Add the jars to",
    newSeries: "a new series",
    newName: "Name of the new series",
    sample: "Sample",
    stockA: "Stock solution of polymer A",
    stockB: "Stock solution of polymer B",
    chooseIt: "choose it",
    none: "none",
    volume: "Sample volume of each jar",
    readAgain: "Rows of jars that are there already add their readings to them",
  },
  preview: {
    title: "4. Look, then add",
    name: "Preview",
    mend: {
      file: "Choose the file again",
      columns: "Say what the columns are",
      series: "Say where the jars belong",
    },
    nothingYet: (rows: number) => `${counted(rows, "row", "rows")} in the file. Nothing would be added yet.`,
    would: (
      rows: number,
      added: number,
      jarsAndReadings: string,
      newSeries: readonly string[],
      intoSeries: readonly string[],
    ) => {
      const where = [
        ...newSeries.map((name) => `the new series ${name}`),
        ...intoSeries.map((name) => `series ${name}`),
      ].join(" and ");
      return `${counted(rows, "row", "rows")} in the file, ${added === rows ? "all" : added} of them would be added: ${jarsAndReadings}, in ${where}.`;
    },
    badRows: (rows: number) => {
      const them = rows === 1 ? "it" : "them";
      return `${counted(rows, "row cannot", "rows cannot")} be read. Correct ${them} in the file and choose it again, or leave ${them} out. While a bad row is in, nothing is added.`;
    },
    badTable: "Rows that cannot be read",
    row: "row",
    column: "column",
    wrong: "what is wrong",
    firstErrors: (shown: number, all: number) => `The first ${shown} of ${all} are shown.`,
    skipBad: (rows: number) => `Leave ${counted(rows, "bad row", "bad rows")} out and add the others`,
    jar: "jar",
    series: "series",
    dose: (polymer: "A" | "B", unit: string) => `dose ${polymer}, ${unit} active`,
    readings: "readings",
    readAgain: "read again",
    firstRows: (shown: number, all: number) => `The first ${shown} rows are shown; all ${all} were read.`,
  },
  exporting: {
    title: "Export",
    series: "Series",
    allSeries: "all series",
    csv: "Jars and readings as CSV",
    csvWhat:
      "One table with units in its heads, in the study's decimal mark. The import here reads it back, with the moments when jars were mixed and read. Words that a spreadsheet program would run as a formula get an apostrophe before them.",
    workbook: "Whole study as a workbook (.xlsx)",
    workbookWhat: "A sheet for each kind of record, the jars first.",
    json: "Whole study as JSON",
    jsonWhat:
      "Every record as it is kept, without the history; the published JSON schema describes it. To pass a study on with its history, save a copy instead.",
    writing: "Writing…",
    workingOut: (done: number, total: number) => `Working out the jars: ${done} of ${total}.`,
    linesWritten: (done: number, total: number) => `Writing the file: ${done} of ${total} lines.`,
    cancelled: "Cancelled. No file was written.",
    given: (file: string) => `${file} was given to your downloads.`,
    fallbackName: "study",
  },
});
