import Papa from "papaparse";
import { decidedMark, writeNumber, type DecimalMark } from "../units/number-entry.ts";
import type { FileCell } from "../responses/response.ts";
import { escapeText } from "./text-cell.ts";
import type { ExportTold } from "./told.ts";

const rowsAtOnce = 500;

/**
 * Separated values with a head, in UTF-8 (with a byte-order mark only where letters beyond ASCII need one): commas
 * between cells under a decimal point, semicolons under a decimal comma. Text that looks like a formula is escaped.
 */
export function writeSeparated(
  heads: string[],
  rows: FileCell[][],
  mark: DecimalMark,
  told: ExportTold = () => undefined,
): string {
  const newline = "\r\n";
  const lines = (some: string[][]) => Papa.unparse(some, { delimiter: mark === "," ? ";" : ",", newline });
  const parts = [lines([heads])];
  for (let from = 0; from < rows.length; from += rowsAtOnce) {
    const some = rows.slice(from, from + rowsAtOnce);
    parts.push(lines(some.map((row) => row.map((cell) => cellText(cell, mark)))));
    told("lines", from + some.length, rows.length);
  }
  const text = parts.join(newline);
  return `${/[^\u0000-\u007f]/.test(text) ? "\uFEFF" : ""}${text}${newline}`;
}

/** One cell as text under a decimal mark. */
export function cellText(cell: FileCell, mark: DecimalMark): string {
  if (cell === null) return "";
  if (typeof cell === "string") return escapeText(cell);
  if (typeof cell === "number") return plainNumber(cell, mark);
  return `${cell.bound === "above" ? ">" : "<"}${plainNumber(cell.value, mark)}`;
}

// 1,234 can be read two ways; 1,2340 cannot, so a file tells its own decimal mark.
function plainNumber(value: number, mark: DecimalMark): string {
  const text = writeNumber(value, mark);
  return /[.,]/.test(text) && !/e/i.test(text) && decidedMark(text) === null ? `${text}0` : text;
}
