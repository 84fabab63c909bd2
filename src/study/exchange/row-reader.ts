import type { ChosenColumns, Field } from "../../exchange/columns.ts";
import { unescapeText } from "../../exchange/text-cell.ts";
import type { Table } from "../../exchange/grid.ts";
import { inputDigits, writeSignificant } from "../../units/digits.ts";
import { parseReading, type TypedReading } from "../../units/number-entry.ts";
import { importWords } from "../../words/imports.ts";
import { sheetWords } from "../../words/sheets.ts";

/** One thing wrong with one cell: the line of the file, the column by its head, and what to do about it. */
export interface RowFault {
  row: number;
  column: string;
  message: string;
}

/** Reads the cells of one row by what they are; whatever is wrong is noted, not thrown. */
export interface RowReader {
  line: number;
  has(field: Field): boolean;
  filled(field: Field): boolean;
  isEmpty(column: number): boolean;
  /** a name: trimmed, with a leading apostrophe before what looks like a formula taken away */
  label(field: Field): string;
  /** free text as it was written */
  text(field: Field): string;
  number(column: Field | number): number | null;
  reading(field: Field): TypedReading | null;
  fault(column: Field | number, message: string): void;
  /** a number in a sentence, under the file's decimal mark */
  words(value: number): string;
  faults: RowFault[];
}

/** A cell as a sentence may hold it. */
export const clip = (text: string) => (text.length > 40 ? `${text.slice(0, 40)}…` : text);

/** A reader over one row of a table. */
export function rowReader(table: Table, row: Table["rows"][number], columns: ChosenColumns): RowReader {
  const faults: RowFault[] = [];
  const place = (column: Field | number) =>
    typeof column === "number" ? column : (columns.fields[column] ?? -1);
  const cell = (column: Field | number) => row.cells[place(column)] ?? "";
  const fault = (column: Field | number, message: string) => {
    faults.push({ row: row.line, column: table.heads[place(column)] ?? String(column), message });
  };
  const reading = (column: Field | number): TypedReading | null => {
    const text = cell(column);
    if (text === "") return null;
    if (/^[=@#]/.test(text)) {
      fault(column, importWords.formula(clip(text)));
      return null;
    }
    const parsed = parseReading(text, table.mark);
    if (parsed.ok) return parsed.value;
    fault(column, parsed.message);
    return null;
  };
  return {
    line: row.line,
    faults,
    fault,
    words: (value) => writeSignificant(value, table.mark ?? ".", inputDigits),
    has: (field) => columns.fields[field] !== undefined,
    filled: (field) => cell(field) !== "",
    isEmpty: (column) => cell(column) === "",
    label: (field) => unescapeText(cell(field)).trim(),
    text: (field) => unescapeText(row.texts[place(field)] ?? ""),
    number: (column) => {
      const read = reading(column);
      if (read === null) return null;
      if (read.censored === null) return read.value;
      fault(column, sheetWords.bound(clip(cell(column))));
      return null;
    },
    reading: (field) => reading(field),
  };
}
