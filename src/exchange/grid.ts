import { bad, good, type Outcome } from "../outcome.ts";
import { decidedMark, writeNumber, type DecimalMark } from "../units/number-entry.ts";
import { limits } from "./limits.ts";
import { sheetWords } from "../words/sheets.ts";

/** One sheet as it lies in a file: text as written, or a number where the file says that it is one. */
export interface Grid {
  /** the sheet's name; empty for a file of separated values */
  sheet: string;
  /** `line` is the 1-based line of the file or row of the sheet on which it begins */
  rows: { line: number; cells: (string | number | null)[] }[];
  /** null for a sheet of a workbook */
  separator: "," | ";" | "\t" | null;
}

/** A file of separated values or a sheet: heads as written, rows with the line each begins on (head = 1). */
export interface Table {
  /** the file's name for sentences */
  name: string;
  heads: string[];
  /** `cells` are trimmed; `texts` are as written, for free text */
  rows: { line: number; cells: string[]; texts: string[] }[];
  separator: "," | ";" | "\t" | null;
  /** null where no cell decides it */
  mark: DecimalMark | null;
}

const isBlank = (cell: string | number | null | undefined) =>
  cell === null || cell === undefined || (typeof cell === "string" && cell.trim() === "");

/** The line of a sheet that most looks like its heads: the first with two filled cells or more, all of them text. */
export function guessHeadLine(grid: Grid): number {
  const filled = grid.rows.filter(({ cells }) => !cells.every(isBlank));
  const likely = filled
    .slice(0, 20)
    .find(
      ({ cells }) =>
        cells.filter((cell) => !isBlank(cell)).length >= 2 &&
        cells.every((cell) => typeof cell !== "number" && (isBlank(cell) || decidedMark(cell!) === null)),
    );
  return (likely ?? filled[0])?.line ?? 1;
}

/**
 * A sheet as a table under its heads. `headLine` null takes the first line that is not blank. The decimal mark is
 * `mark`, else what the cells decide in the columns for which `decides` holds (a note may hold any number); a file
 * separated by commas has the point. Faults name line and column.
 */
export function tableOf(
  grid: Grid,
  name: string,
  mark: DecimalMark | null,
  headLine: number | null = null,
  decides: (column: number, head: string) => boolean = () => true,
): Outcome<Table> {
  const filled = grid.rows.filter(
    ({ line, cells }) => (headLine === null || line >= headLine) && !cells.every(isBlank),
  );
  const [head, ...below] = filled;
  if (!head) return bad(headLine === null ? sheetWords.nothing(name) : sheetWords.noHeads(name));
  let width = head.cells.length;
  while (width > 1 && isBlank(head.cells[width - 1])) width -= 1;
  if (width > limits.columns) return bad(sheetWords.manyColumns(name, head.line, width, limits.columns));
  const heads = head.cells.slice(0, width).map((cell) => String(cell ?? "").trim());
  if (below.length > limits.rows) return bad(sheetWords.manyRows(name, below.length, limits.rows));
  const fault = headFault(heads, head.line, below, head.cells.length);
  if (fault) return bad(sheetWords.whole(name, fault));
  if (below.length === 0) return bad(sheetWords.noRows(name));
  for (const row of below) {
    const extra = row.cells.findIndex((cell, index) => index >= width && !isBlank(cell));
    if (extra >= head.cells.length) return bad(sheetWords.wideRow(name, row.line, width));
    const long = row.cells.findIndex((cell) => typeof cell === "string" && cell.length > limits.cell);
    if (long >= 0) return bad(sheetWords.at(name, row.line, heads[long] ?? "", sheetWords.longCell));
  }
  const found =
    mark === null ? inferMark(below, heads, name, grid.separator, decides) : good<DecimalMark | null>(mark);
  if (!found.ok) return found;
  // A number that the workbook holds as a number has no mark; it is written out in the one that its texts have.
  const marked: DecimalMark | null = found.value ?? (grid.separator === null ? "." : null);
  const rows = below.map(({ line, cells }) => {
    const texts = heads.map((_, index) => {
      const cell = cells[index] ?? "";
      return typeof cell === "number" ? writeNumber(cell, marked ?? ".") || String(cell) : cell;
    });
    return { line, texts, cells: texts.map((text) => text.trim()) };
  });
  return good({ name, heads, rows, separator: grid.separator, mark: marked });
}

function headFault(heads: string[], line: number, below: Grid["rows"], width: number): string | null {
  const long = heads.findIndex((title) => title.length > 200);
  if (long >= 0) return sheetWords.longHead(long + 1);
  const blank = Array.from({ length: width }, (_, index) => heads[index] ?? "").findIndex(
    (title, index) => title === "" && below.some(({ cells }) => !isBlank(cells[index])),
  );
  if (blank >= 0) return sheetWords.blankHead(blank + 1, line);
  const twin = heads.find((title, index) => title !== "" && heads.indexOf(title) !== index);
  if (twin !== undefined) return sheetWords.twinHead(line, twin);
  return null;
}

function inferMark(
  rows: Grid["rows"],
  heads: string[],
  name: string,
  separator: Grid["separator"],
  decides: (column: number, head: string) => boolean,
): Outcome<DecimalMark | null> {
  let first: { mark: DecimalMark; line: number; head: string } | null = null;
  for (const row of rows)
    for (const [index, cell] of row.cells.entries()) {
      if (typeof cell !== "string" || !decides(index, heads[index] ?? "")) continue;
      const mark = decidedMark(cell);
      if (mark === null) continue;
      if (first === null) first = { mark, line: row.line, head: heads[index] ?? "" };
      else if (first.mark !== mark)
        return bad(
          sheetWords.at(
            name,
            row.line,
            heads[index] ?? "",
            sheetWords.otherMark(cell.trim(), first.line, first.head),
          ),
        );
    }
  // A comma that separates cells is not the decimal mark, so there the point is, even where no cell decides it.
  if (first === null && separator === ",") return good(".");
  return good(first?.mark ?? null);
}
