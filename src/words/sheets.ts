import { area } from "./language.ts";

/** What is wrong with a file of jars, before anything of it is read into a study. Every sentence begins with the file. */
export const sheetWords = area("sheets", {
  at: (name: string, line: number, column: string, why: string) =>
    `${name}: line ${line}, column ${column}: ${why}`,
  inColumn: (name: string, column: string, why: string) => `${name}: column ${column}: ${why}`,
  whole: (name: string, why: string) => `${name}: ${why}`,
  clause: (name: string, why: string) => `${name}: ${why}.`,
  cutShort: "is cut short or is not text: save the sheet again as CSV in UTF-8",
  notText: "is not text: save the sheet as CSV in UTF-8, or as .xlsx",
  notWorkbook: (name: string) => `${name}: is an archive, but not a workbook (.xlsx).`,
  workbookUnreadable: (name: string) =>
    `${name}: the workbook cannot be read: open it in a spreadsheet program and save it again.`,
  cellUnreadable: (name: string, row: string, column: string) =>
    `${name}: row ${row}, column ${column} of a sheet cannot be read: open it in a spreadsheet program and save it again.`,
  cellPlaceless: "a cell of a sheet has no place",
  farRow: (row: string, most: number) => `a sheet has a cell in row ${row}; ${most} rows are the most`,
  farColumn: (column: string, most: number) =>
    `a sheet has a cell in column ${column}; ${most} columns are the most`,
  fileEmpty: (name: string) => `${name}: the file is empty.`,
  fileNotText: (name: string) => `${name}: is not text; save the sheet as CSV in UTF-8.`,
  manyLines: (name: string, lines: number, rows: number) =>
    `${name}: there are more than ${lines} lines; ${rows} rows are the most.`,
  openQuote: (name: string, line: number) =>
    `${name}: line ${line} has a quotation mark that is never closed.`,
  noColumn: (name: string, head: string, heads: string) =>
    `${name}: there is no column "${head}"; there are: ${heads}.`,
  tooLarge: (text: string) => `"${text}" is too large for a measured number.`,
  tooSmall: (text: string) => `"${text}" is too small for a measured number.`,
  bound: (text: string) => `"${text}" is a bound, and a plain number is needed here.`,
  nothing: (name: string) => `${name}: there is nothing in it.`,
  noHeads: (name: string) => `${name}: there are no heads on this line or below.`,
  manyColumns: (name: string, line: number, columns: number, most: number) =>
    `${name}: line ${line} has ${columns} columns; ${most} is the most.`,
  manyRows: (name: string, rows: number, most: number) =>
    `${name}: there are ${rows} rows; ${most} is the most: split the file.`,
  noRows: (name: string) => `${name}: there are no rows below the head.`,
  wideRow: (name: string, line: number, columns: number) =>
    `${name}: line ${line} has more cells than the head has columns (${columns}).`,
  longCell: "the cell is far too long.",
  longHead: (column: number) => `the head of column ${column} is far too long.`,
  blankHead: (column: number, line: number) =>
    `column ${column} of line ${line} has no head; where a head spans several columns, give each column its own.`,
  twinHead: (line: number, head: string) => `line ${line} has two columns called "${head}".`,
  otherMark: (cell: string, line: number, column: string) =>
    `"${cell}" has another decimal mark than line ${line}, column ${column}.`,
  largeFile: (name: string, megabytes: number) =>
    `${name}: is larger than ${megabytes} MB; keep only the rows of the jars, or split it.`,
  emptySheets: (name: string) => `${name}: every sheet of the workbook is empty.`,
  oldWorkbook: (name: string) =>
    `${name}: is a workbook of the old kind (.xls), or one with a password: save it as .xlsx or CSV, without a password.`,
  archiveBroken: "is damaged or cut short: open it in a spreadsheet program and save it again",
  archiveLarge: "unpacks to far more than a sheet of jars can need, so it is not opened",
  archiveLocked: "is locked with a password: save it without one",
  doseHead:
    "say polymer, unit and basis in the head, for example dose_a_kg_per_t (active), dose_a_kg_per_t_as_supplied, dose_a_lb_per_short_ton, dose_a_mg_per_l_feed or syringe_a_ml.",
  takenTwice: (name: string, one: string, other: string, what: string) =>
    `${name}: columns ${one} and ${other} are both taken for ${what}: choose one of them.`,
  chooseUnit: "choose the unit of this dose.",
  chooseBasis: "choose whether this dose is active polymer or product as supplied.",
  doseTwice: (name: string, one: string, other: string, letter: string) =>
    `${name}: columns ${one} and ${other} both give the dose of polymer ${letter}: keep one of them.`,
  dilutionAlone:
    "a dilution factor needs the turbidity as the instrument shows it (turbidity_shown) beside it.",
  noDose: (name: string) =>
    `${name}: there is no dose column; name one, for example dose_a_kg_per_t or syringe_a_ml.`,
});
