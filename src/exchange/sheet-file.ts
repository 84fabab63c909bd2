import { bad, good, type Outcome } from "../outcome.ts";
import type { Grid } from "./grid.ts";
import { limits } from "./limits.ts";
import { readSeparated } from "./table.ts";
import { decodeText } from "./text-file.ts";
import { readWorkbook } from "./workbook-in.ts";
import { sheetWords } from "../words/sheets.ts";

/** A file's sheets, with anything a person should know about how it was read. */
export interface SheetFile {
  kind: "separated" | "workbook";
  sheets: Grid[];
  encoding: "UTF-8" | "UTF-16" | "Western European" | null;
}

/**
 * Reads a file of separated values or a workbook (.xlsx), told apart by what is in it and not by its name. Whatever is
 * wrong with it is one sentence; it never throws.
 */
export async function readSheetFile(
  bytes: Uint8Array<ArrayBuffer>,
  name: string,
): Promise<Outcome<SheetFile>> {
  if (bytes.length === 0) return bad(sheetWords.fileEmpty(name));
  if (bytes.length > limits.fileBytes) return bad(sheetWords.largeFile(name, limits.fileBytes / 1024 / 1024));
  if (bytes[0] === 0x50 && bytes[1] === 0x4b) {
    const sheets = await readWorkbook(bytes, name);
    if (!sheets.ok) return sheets;
    const filled = sheets.value.filter(({ rows }) => rows.length > 0);
    if (filled.length === 0) return bad(sheetWords.emptySheets(name));
    return good({ kind: "workbook", sheets: filled, encoding: null });
  }
  if (bytes[0] === 0xd0 && bytes[1] === 0xcf && bytes[2] === 0x11 && bytes[3] === 0xe0)
    return bad(sheetWords.oldWorkbook(name));
  const decoded = decodeText(bytes);
  if (!decoded.ok) return bad(sheetWords.clause(name, decoded.message));
  const grid = readSeparated(decoded.value.text, name);
  if (!grid.ok) return grid;
  return good({ kind: "separated", sheets: [grid.value], encoding: decoded.value.encoding });
}
