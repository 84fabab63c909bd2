import writeByLibrary from "write-excel-file/universal";
import { describe, expect, test } from "vitest";
import { readSheetFile } from "../../../src/exchange/sheet-file.ts";
import { unpackZip } from "../../../src/exchange/zip.ts";
import { writeWorkbook } from "../../../src/exchange/workbook-out.ts";

const cells = async (bytes: Uint8Array<ArrayBuffer>) => {
  const file = await readSheetFile(bytes, "book");
  if (!file.ok) throw new Error(file.message);
  return file.value.sheets.map(({ sheet, rows }) => ({ sheet, rows: rows.map((row) => row.cells) }));
};

describe("workbooks", () => {
  test("one written by another program is read, a large one too", async () => {
    const rows = Array.from({ length: 6000 }, (_, index) => [`jar ${index}`, index / 8, index % 2 === 0]);
    const blob = await writeByLibrary([
      { data: [["jar", "dose", "seen"], ...rows], sheet: "day 1" },
      { data: [["a", new Date("2026-03-04T00:00:00Z")]], sheet: "dates", dateFormat: "yyyy-mm-dd" },
    ]).toBlob();
    const [first, second] = await cells(new Uint8Array(await blob.arrayBuffer()));
    expect(first!.sheet).toBe("day 1");
    expect(first!.rows).toHaveLength(6001);
    expect(first!.rows[5]).toEqual(["jar 4", 0.5, "TRUE"]);
    expect(second!.rows[0]).toEqual(["a", "2026-03-04T00:00:00.000"]);
  });

  test("ours keeps numbers as numbers and text as text, whatever is in it", async () => {
    const odd = [
      "=1+1",
      " two  blanks ",
      "line\nand\r\nline",
      "<&>\"'",
      "_x000D_",
      "_x005F_",
      "é ° ß 漢 😀",
      "\u0001\u001f",
      "\u007f\u0085\ufffe\ufdd0",
      "-1",
      "1e5",
    ];
    const numbers = [0, -2.5, 1e-7, 123456789.125, 1e21, 0.1 + 0.2];
    const bytes = await writeWorkbook([
      {
        name: 'a & "b"',
        rows: [["text", "number"], ...odd.map((text, index) => [text, numbers[index] ?? null])],
      },
    ]);
    const [sheet] = await cells(bytes);
    expect(sheet!.sheet).toBe('a & "b"');
    expect(sheet!.rows.slice(1).map((row) => row[0])).toEqual(odd);
    expect(sheet!.rows.slice(1, 1 + numbers.length).map((row) => row[1])).toEqual(numbers);
  });

  test("nothing in it is a formula, and its parts are what the format asks for", async () => {
    const parts = await unpackZip(
      await writeWorkbook([{ name: "x", rows: [["=1+1"], ["+A1"]] }]),
      () => true,
    );
    expect(parts.ok && parts.value.map(({ path }) => path)).toEqual([
      "[Content_Types].xml",
      "_rels/.rels",
      "xl/workbook.xml",
      "xl/_rels/workbook.xml.rels",
      "xl/styles.xml",
      "xl/worksheets/sheet1.xml",
    ]);
    const sheet = parts.ok ? new TextDecoder().decode(parts.value.at(-1)!.bytes) : "";
    expect(sheet).not.toMatch(/<f\b/);
    expect(sheet.match(/t="inlineStr"/g)).toHaveLength(2);
  });
});
