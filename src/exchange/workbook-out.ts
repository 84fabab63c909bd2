import { limits } from "./limits.ts";
import type { ExportTold } from "./told.ts";
import { packZip, type ZipPart } from "./zip.ts";

/** A sheet to write: every cell a number, text or nothing. The first row is the head. */
export interface OutSheet {
  name: string;
  rows: (string | number | null)[][];
}

const declaration = '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n';
const main = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
const office = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
const packages = "http://schemas.openxmlformats.org/package/2006";

/**
 * Writes a workbook (.xlsx, Office Open XML, ECMA-376) with a bold head on each sheet. Numbers are written as numbers;
 * text as text, never as a formula. Written here rather than by a library, because a large one would start threads from
 * generated code, which the screens' content policy forbids.
 */
export async function writeWorkbook(
  sheets: OutSheet[],
  told: ExportTold = () => undefined,
): Promise<Uint8Array<ArrayBuffer>> {
  const total = sheets.reduce((sum, { rows }) => sum + rows.length, 0);
  let done = 0;
  const line = () => told("lines", (done += 1), total);
  const part = (path: string, xml: string): ZipPart => ({
    path,
    bytes: new TextEncoder().encode(declaration + xml),
  });
  const each = (text: (number: number, sheet: OutSheet) => string) =>
    sheets.map((sheet, index) => text(index + 1, sheet)).join("");
  return packZip(
    [
      part(
        "[Content_Types].xml",
        `<Types xmlns="${packages}/content-types"><Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/><Default Extension="xml" ContentType="application/xml"/><Override PartName="/xl/workbook.xml" ContentType="application/vnd.openxmlformats-officedocument.spreadsheetml.sheet.main+xml"/><Override PartName="/xl/styles.xml" ContentType="application/vnd.openxmlformats-officedocument.spreadsheetml.styles+xml"/>${each((n) => `<Override PartName="/xl/worksheets/sheet${n}.xml" ContentType="application/vnd.openxmlformats-officedocument.spreadsheetml.worksheet+xml"/>`)}</Types>`,
      ),
      part(
        "_rels/.rels",
        `<Relationships xmlns="${packages}/relationships"><Relationship Id="rId1" Type="${office}/officeDocument" Target="xl/workbook.xml"/></Relationships>`,
      ),
      part(
        "xl/workbook.xml",
        `<workbook xmlns="${main}" xmlns:r="${office}"><sheets>${each((n, { name }) => `<sheet name="${escapeXml(name)}" sheetId="${n}" r:id="rId${n}"/>`)}</sheets></workbook>`,
      ),
      part(
        "xl/_rels/workbook.xml.rels",
        `<Relationships xmlns="${packages}/relationships">${each((n) => `<Relationship Id="rId${n}" Type="${office}/worksheet" Target="worksheets/sheet${n}.xml"/>`)}<Relationship Id="rId${sheets.length + 1}" Type="${office}/styles" Target="styles.xml"/></Relationships>`,
      ),
      part(
        "xl/styles.xml",
        `<styleSheet xmlns="${main}"><fonts count="2"><font><sz val="11"/></font><font><b/><sz val="11"/></font></fonts><fills count="2"><fill><patternFill patternType="none"/></fill><fill><patternFill patternType="gray125"/></fill></fills><borders count="1"><border><left/><right/><top/><bottom/><diagonal/></border></borders><cellStyleXfs count="1"><xf numFmtId="0" fontId="0" fillId="0" borderId="0"/></cellStyleXfs><cellXfs count="2"><xf numFmtId="0" fontId="0" fillId="0" borderId="0" xfId="0"/><xf numFmtId="0" fontId="1" fillId="0" borderId="0" xfId="0" applyFont="1"/></cellXfs><cellStyles count="1"><cellStyle name="Normal" xfId="0" builtinId="0"/></cellStyles></styleSheet>`,
      ),
      ...sheets.map((sheet, index) => part(`xl/worksheets/sheet${index + 1}.xml`, sheetXml(sheet, line))),
    ],
    true,
  );
}

function sheetXml({ rows }: OutSheet, line: () => void): string {
  const widths = (rows[0] ?? [])
    .map((head, index) => {
      const width = Math.min(40, Math.max(8, String(head ?? "").length + 2));
      return `<col min="${index + 1}" max="${index + 1}" width="${width}" customWidth="1"/>`;
    })
    .join("");
  const body = rows
    .map((cells, row) => {
      const written = cells.map((cell, column) =>
        cellXml(cell, `${columnLetters(column)}${row + 1}`, row === 0),
      );
      line();
      return `<row r="${row + 1}">${written.join("")}</row>`;
    })
    .join("");
  const frozen = `<sheetViews><sheetView workbookViewId="0"><pane ySplit="1" topLeftCell="A2" activePane="bottomLeft" state="frozen"/></sheetView></sheetViews>`;
  return `<worksheet xmlns="${main}">${frozen}${widths ? `<cols>${widths}</cols>` : ""}<sheetData>${body}</sheetData></worksheet>`;
}

function cellXml(cell: string | number | null, place: string, head: boolean): string {
  if (cell === null || cell === "") return "";
  const style = head ? ' s="1"' : "";
  if (typeof cell === "number")
    return Number.isFinite(cell) ? `<c r="${place}"${style}><v>${cell}</v></c>` : "";
  return `<c r="${place}"${style} t="inlineStr"><is><t xml:space="preserve">${escapeXml(cell.slice(0, limits.cell))}</t></is></c>`;
}

function columnLetters(index: number): string {
  const letter = String.fromCharCode(65 + (index % 26));
  return index < 26 ? letter : columnLetters(Math.floor(index / 26) - 1) + letter;
}

/**
 * Text for XML. Characters that XML 1.0 does not hold, and a carriage return (which a reader would turn into a line
 * feed), are written in the escape of the format itself, _xHHHH_; text that only looks like one is marked as text.
 */
function escapeXml(text: string): string {
  return text
    .replace(/_x[0-9A-Fa-f]{4}_/g, (match) => `_x005F${match}`)
    .replace(
      /[\u0000-\u0008\u000b-\u001f\ufffe\uffff]|[\ud800-\udbff](?![\udc00-\udfff])|(?<![\ud800-\udbff])[\udc00-\udfff]/g,
      (character) => `_x${character.charCodeAt(0).toString(16).toUpperCase().padStart(4, "0")}_`,
    )
    .replace(/&/g, "&amp;")
    .replace(/</g, "&lt;")
    .replace(/>/g, "&gt;")
    .replace(/"/g, "&quot;");
}
