import Papa from "papaparse";
import { bad, good, type Outcome } from "../outcome.ts";
import { parseReading, type DecimalMark, type TypedReading } from "../units/number-entry.ts";
import { tableOf, type Grid, type Table } from "./grid.ts";
import { limits } from "./limits.ts";
import { sheetWords } from "../words/sheets.ts";

export type { Table } from "./grid.ts";

// Powers of a fit stay finite up to here, and nothing measured comes near.
const largestSize = 1e15;

/**
 * Reads separated values. The separator is taken from the head line, the decimal mark from `mark` or from the cells
 * that decide it; a file separated by commas has the point. Faults name file, line and column.
 */
export function readTable(text: string, name: string, mark: DecimalMark | null): Outcome<Table> {
  const grid = readSeparated(text, name);
  return grid.ok ? tableOf(grid.value, name, mark) : grid;
}

/** Splits separated values into lines and cells, as they are written. */
export function readSeparated(text: string, name: string): Outcome<Grid> {
  const body = text.replace(/^\uFEFF/, "");
  if (body.trim() === "") return bad(sheetWords.fileEmpty(name));
  if (body.includes("\u0000")) return bad(sheetWords.fileNotText(name));
  const ends = countLineEnds(body);
  if (ends > limits.rows * 4) return bad(sheetWords.manyLines(name, limits.rows * 4, limits.rows));
  const separator = separatorOf(body);
  const parsed = Papa.parse<string[]>(body, { delimiter: separator, skipEmptyLines: false });
  const quote = parsed.errors.find((error) => error.type === "Quotes");
  const lines = startLines(parsed.data, separator, ends + 1);
  if (quote) return bad(sheetWords.openQuote(name, lines[quote.row ?? 0] ?? 1));
  return good({
    sheet: "",
    rows: parsed.data.map((cells, index) => ({ line: lines[index] ?? index + 1, cells })),
    separator,
  });
}

function countLineEnds(body: string): number {
  let count = 0;
  for (let at = 0; at < body.length; at++) {
    const code = body.charCodeAt(at);
    if (code === 10 || (code === 13 && body.charCodeAt(at + 1) !== 10)) count += 1;
  }
  return count;
}

function separatorOf(body: string): NonNullable<Grid["separator"]> {
  const line = /[^\r\n]*\S[^\r\n]*/.exec(body.slice(0, 1_000_000))?.[0] ?? "";
  const bare = line.replace(/"[^"]*"/g, "");
  if (bare.includes(";")) return ";";
  if (bare.includes("\t")) return "\t";
  return ",";
}

// Papa answers rows, not lines: a quoted cell may hold line ends, so each row's first line is counted from its text.
function startLines(rows: string[][], separator: string, physical: number): number[] {
  if (physical === rows.length) return rows.map((_, index) => index + 1);
  let line = 1;
  return rows.map((cells) => {
    const at = line;
    line += 1 + cells.join(separator).split(/\r\n|\n|\r/).length - 1;
    return at;
  });
}

/** The place of a column by its head, or the sentence that lists what there is. */
export function columnOf(table: Table, head: string): Outcome<number> {
  const index = table.heads.indexOf(head);
  if (index >= 0) return good(index);
  return bad(sheetWords.noColumn(table.name, head, table.heads.join(", ")));
}

/** One cell as a reading (number, possibly ">" or "<"), null where empty; a fault names file, line and column. */
export function readingAt(
  table: Table,
  row: Table["rows"][number],
  column: number,
): Outcome<TypedReading | null> {
  const text = row.cells[column] ?? "";
  if (text === "") return good(null);
  const parsed = parseReading(text, table.mark);
  const fault = (why: string) => bad(sheetWords.at(table.name, row.line, table.heads[column] ?? "", why));
  if (!parsed.ok) return fault(parsed.message);
  const size = Math.abs(parsed.value.value);
  if (size > largestSize || (size > 0 && size < 1 / largestSize))
    return fault(size > 1 ? sheetWords.tooLarge(text.slice(0, 30)) : sheetWords.tooSmall(text.slice(0, 30)));
  return parsed;
}

/** One cell as a plain number, null where empty; a bound (">") is refused here. */
export function numberAt(table: Table, row: Table["rows"][number], column: number): Outcome<number | null> {
  const reading = readingAt(table, row, column);
  if (!reading.ok) return reading;
  if (reading.value?.censored)
    return bad(
      sheetWords.at(
        table.name,
        row.line,
        table.heads[column] ?? "",
        sheetWords.bound(row.cells[column] ?? ""),
      ),
    );
  return good(reading.value?.value ?? null);
}
