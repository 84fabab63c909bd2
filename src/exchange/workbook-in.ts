import readXlsxFile from "read-excel-file/universal";
import { bad, good, type Outcome } from "../outcome.ts";
import type { Grid } from "./grid.ts";
import { limits } from "./limits.ts";
import { packZip, unpackZip, type ZipPart } from "./zip.ts";
import { sheetWords } from "../words/sheets.ts";

const wanted = (path: string) =>
  /\.(xml|rels)$/i.test(path) &&
  !/(^|\/)(drawings|theme|media|charts|docProps|customXml|printerSettings)\//.test(path);

/**
 * Reads the sheets of a workbook (.xlsx). The archive is unpacked here under our own bounds and handed on as it is, so
 * that nothing grows unseen and no thread of the library's own is started. Formulas give the value they had when saved.
 */
export async function readWorkbook(bytes: Uint8Array<ArrayBuffer>, name: string): Promise<Outcome<Grid[]>> {
  const parts = await unpackZip(bytes, wanted);
  if (!parts.ok) return bad(sheetWords.clause(name, parts.message));
  if (!parts.value.some(({ path }) => path === "xl/workbook.xml" || path.endsWith("/workbook.xml")))
    return bad(sheetWords.notWorkbook(name));
  const read: ZipPart[] = [];
  for (const part of parts.value) {
    if (!/worksheets\/[^/]*\.xml$/i.test(part.path)) {
      read.push(part);
      continue;
    }
    const text = new TextDecoder().decode(part.bytes);
    const fault = sizeFault(text);
    if (fault) return bad(sheetWords.clause(name, fault));
    read.push({ path: part.path, bytes: new TextEncoder().encode(withFaultsAsText(text)) });
  }
  try {
    const plain = await packZip(read, false);
    const sheets = await readXlsxFile(plain.buffer, { trim: false });
    return good(
      sheets.map(({ sheet, data }) => ({
        sheet,
        separator: null,
        rows: data.map((cells, index) => ({ line: index + 1, cells: cells.map(cellOf) })),
      })),
    );
  } catch (error) {
    // The library names the row and column of a cell that makes no sense; that is worth passing on.
    const place = /row (\d+),? col(?:umn)? (\d+)/.exec(error instanceof Error ? error.message : "");
    return bad(
      place ? sheetWords.cellUnreadable(name, place[1]!, place[2]!) : sheetWords.workbookUnreadable(name),
    );
  }
}

// A single cell far out on a sheet would make every row and column before it.
function sizeFault(text: string): string | null {
  for (const [, reference] of text.matchAll(/<(?:\w+:)?(?:row|c)\b[^>]*?\sr=["']([^"']*)["']/g)) {
    const place = /^([A-Z]{0,3})(\d{1,7})$/.exec(reference ?? "");
    if (!place) return sheetWords.cellPlaceless;
    if (Number(place[2]) > limits.rows + 1000) return sheetWords.farRow(place[2]!, limits.rows);
    const column = [...place[1]!].reduce((sum, letter) => sum * 26 + letter.charCodeAt(0) - 64, 0);
    if (column > limits.columns) return sheetWords.farColumn(place[1]!, limits.columns);
  }
  return null;
}

/**
 * The library reads a formula's error, and a formula whose value was not saved, as an empty cell. Both are made text, so
 * that they are refused where a number is needed instead of being lost.
 */
function withFaultsAsText(text: string): string {
  if (!/<(?:\w+:)?f\b|\st=["']e["']/.test(text)) return text;
  return text
    .replace(/(<(?:\w+:)?c\b[^>]*?\st=)["']e["']/g, '$1"str"')
    .replace(
      /<((?:\w+:)?)c\b([^>]*)>\s*<(?:\w+:)?f\b(?:[^>]*\/>|[^>]*>([^<]*)<\/(?:\w+:)?f>)\s*<\/(?:\w+:)?c>/g,
      (_whole, prefix: string, attributes: string, formula: string | undefined) =>
        `<${prefix}c${attributes.replace(/\st=["'][^"']*["']/, "")} t="str"><${prefix}v>=${formula ?? ""}</${prefix}v></${prefix}c>`,
    );
}

function cellOf(value: unknown): string | number | null {
  if (value === null || value === undefined) return null;
  if (typeof value === "number" || typeof value === "string") return value;
  if (typeof value === "boolean") return value ? "TRUE" : "FALSE";
  // A workbook's date has no offset, so the Z that would make it UTC is taken away.
  if (value instanceof Date)
    return Number.isNaN(value.getTime()) ? null : value.toISOString().replace(/Z$/, "");
  return String(value);
}
