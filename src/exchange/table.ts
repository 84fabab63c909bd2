import Papa from "papaparse";
import { bad, good, type Outcome } from "../outcome.ts";
import { decidedMark, parseReading, type DecimalMark, type TypedReading } from "../units/number-entry.ts";

/** A file of separated values: heads as written, rows with the line each begins on (head = 1). */
export interface Table {
  /** the file's name for sentences */
  name: string;
  heads: string[];
  rows: { line: number; cells: string[] }[];
  separator: "," | ";" | "\t";
  /** null where no cell decides it */
  mark: DecimalMark | null;
}

const largestCell = 10_000;
// Powers of a fit stay finite up to here, and nothing measured comes near.
const largestSize = 1e15;

/**
 * Reads separated values. The separator is taken from the head line, the decimal mark from `mark` or from the cells
 * that decide it; a file separated by commas has the point. Faults name file, line and column.
 */
export function readTable(text: string, name: string, mark: DecimalMark | null): Outcome<Table> {
  const body = text.replace(/^\uFEFF/, "");
  if (body.trim() === "") return bad(`${name}: the file is empty.`);
  if (body.includes("\u0000")) return bad(`${name}: is not text; save the sheet as CSV in UTF-8.`);
  const separator = separatorOf(body);
  const parsed = Papa.parse<string[]>(body, { delimiter: separator, skipEmptyLines: false });
  const quote = parsed.errors.find((error) => error.type === "Quotes");
  const lines = startLines(body, parsed.data, separator);
  if (quote)
    return bad(`${name}: line ${lines[quote.row ?? 0] ?? 1} has a quotation mark that is never closed.`);
  const filled = parsed.data
    .map((cells, index) => ({ line: lines[index] ?? index + 1, cells: cells.map((cell) => cell.trim()) }))
    .filter(({ cells }) => cells.some((cell) => cell !== ""));
  const [head, ...rows] = filled;
  if (!head) return bad(`${name}: the file is empty.`);
  const heads = head.cells;
  while (heads.length > 1 && heads.at(-1) === "") heads.pop();
  const blank = heads.findIndex((title) => title === "");
  if (blank >= 0) return bad(`${name}: column ${blank + 1} of line ${head.line} has no head.`);
  const twin = heads.find((title, index) => heads.indexOf(title) !== index);
  if (twin !== undefined) return bad(`${name}: line ${head.line} has two columns called "${twin}".`);
  if (rows.length === 0) return bad(`${name}: there are no rows below the head.`);
  for (const row of rows) {
    const extra = row.cells.slice(heads.length).findIndex((cell) => cell !== "");
    if (extra >= 0)
      return bad(`${name}: line ${row.line} has more cells than the head has columns (${heads.length}).`);
    const long = row.cells.findIndex((cell) => cell.length > largestCell);
    if (long >= 0) return bad(`${name}: line ${row.line}, column ${heads[long]}: the cell is far too long.`);
    row.cells = heads.map((_, index) => row.cells[index] ?? "");
  }
  const found = mark === null ? inferMark(rows, heads, name, separator) : good<DecimalMark | null>(mark);
  if (!found.ok) return found;
  return good({ name, heads, rows, separator, mark: found.value });
}

function separatorOf(body: string): Table["separator"] {
  const line = body.split(/\r\n|\n|\r/).find((candidate) => candidate.trim() !== "") ?? "";
  const bare = line.replace(/"[^"]*"/g, "");
  if (bare.includes(";")) return ";";
  if (bare.includes("\t")) return "\t";
  return ",";
}

// Papa answers rows, not lines: a quoted cell may hold line ends, so each row's first line is counted from its text.
function startLines(body: string, rows: string[][], separator: string): number[] {
  const physical = body.split(/\r\n|\n|\r/).length;
  if (physical === rows.length) return rows.map((_, index) => index + 1);
  let line = 1;
  return rows.map((cells) => {
    const at = line;
    line += 1 + cells.join(separator).split(/\r\n|\n|\r/).length - 1;
    return at;
  });
}

function inferMark(
  rows: Table["rows"],
  heads: string[],
  name: string,
  separator: Table["separator"],
): Outcome<DecimalMark | null> {
  let first: { mark: DecimalMark; line: number; head: string } | null = null;
  for (const row of rows)
    for (const [index, cell] of row.cells.entries()) {
      const mark = decidedMark(cell);
      if (mark === null) continue;
      if (first === null) first = { mark, line: row.line, head: heads[index] ?? "" };
      else if (first.mark !== mark)
        return bad(
          `${name}: line ${row.line}, column ${heads[index] ?? ""}: "${cell}" has another decimal mark than line ${first.line}, column ${first.head}.`,
        );
    }
  // A comma that separates cells is not the decimal mark, so there the point is, even where no cell decides it.
  if (first === null && separator === ",") return good(".");
  return good(first?.mark ?? null);
}

/** The place of a column by its head, or the sentence that lists what there is. */
export function columnOf(table: Table, head: string): Outcome<number> {
  const index = table.heads.indexOf(head);
  if (index >= 0) return good(index);
  return bad(`${table.name}: there is no column "${head}"; there are: ${table.heads.join(", ")}.`);
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
  const place = `${table.name}: line ${row.line}, column ${table.heads[column]}`;
  if (!parsed.ok) return bad(`${place}: ${parsed.message}`);
  const size = Math.abs(parsed.value.value);
  if (size > largestSize || (size > 0 && size < 1 / largestSize))
    return bad(
      `${place}: "${text.slice(0, 30)}" is too ${size > 1 ? "large" : "small"} for a measured number.`,
    );
  return parsed;
}

/** One cell as a plain number, null where empty; a bound (">") is refused here. */
export function numberAt(table: Table, row: Table["rows"][number], column: number): Outcome<number | null> {
  const reading = readingAt(table, row, column);
  if (!reading.ok) return reading;
  if (reading.value?.censored)
    return bad(
      `${table.name}: line ${row.line}, column ${table.heads[column]}: "${row.cells[column]}" is a bound, and a plain number is needed here.`,
    );
  return good(reading.value?.value ?? null);
}
