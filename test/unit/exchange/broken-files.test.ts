import { describe, expect, test } from "vitest";
import { seededRandom } from "../../../src/curve/random.ts";
import {
  exactUse,
  fields,
  guessUses,
  holdsNumbers,
  usesByHeads,
  type ColumnUse,
} from "../../../src/exchange/columns.ts";
import { guessHeadLine, tableOf } from "../../../src/exchange/grid.ts";
import { limits } from "../../../src/exchange/limits.ts";
import { readSheetFile } from "../../../src/exchange/sheet-file.ts";
import { writeWorkbook } from "../../../src/exchange/workbook-out.ts";
import { packZip, unpackZip } from "../../../src/exchange/zip.ts";
import { applyCommand } from "../../../src/study/commands.ts";
import { idMaker } from "../../../src/study/exchange/ids.ts";
import { planImport } from "../../../src/study/exchange/import-plan.ts";
import { benchStudy } from "./bench-study.ts";

type Bytes = Uint8Array<ArrayBuffer>;
const study = benchStudy();
const utf8 = (text: string): Bytes => new Uint8Array(new TextEncoder().encode(text));
const heads = "jar,dose_a_kg_per_t,turbidity_ntu";
const plain = `${heads}\n1,2.5,447\n2,3.5,146\n3,4.5,>1000\n`;

function utf16(text: string, mark: boolean, big = false): Bytes {
  const units = [...(mark ? "\uFEFF" : ""), ...text].flatMap((letter) =>
    [...letter].flatMap((c) => [c.charCodeAt(0)]),
  );
  return new Uint8Array(units.flatMap((unit) => (big ? [unit >> 8, unit & 255] : [unit & 255, unit >> 8])));
}

/**
 * The whole way of a file, on both of its ends: as the terminal reads it and as the screen guesses it. Whatever comes
 * out is a sentence, or a plan whose command (if any) the study takes; with a bad row and no skipping there is none.
 */
async function through(bytes: Bytes): Promise<string> {
  const file = await readSheetFile(bytes, "f");
  if (!file.ok) return sentence(file.message);
  const said: string[] = [];
  for (const sheet of file.value.sheets) {
    const table = tableOf(sheet, "f", null, null, (_column, head) => holdsNumbers(exactUse(head)));
    const lenient = tableOf(sheet, "f", null, guessHeadLine(sheet), () => false);
    if (lenient.ok) expect(guessUses(lenient.value.heads)).toHaveLength(lenient.value.heads.length);
    else sentence(lenient.message);
    if (!table.ok) {
      said.push(sentence(table.message));
      continue;
    }
    const uses = usesByHeads(table.value.heads, "f");
    if (!uses.ok) {
      said.push(sentence(uses.message));
      continue;
    }
    for (const skipBad of [false, true]) {
      const plan = planImport(study, table.value, uses.value, {
        seriesName: "Series",
        fallbackName: "f",
        choice: {},
        skipBad,
        readAgain: false,
        nextId: idMaker(0, "t"),
      });
      if (!plan.ok) {
        said.push(sentence(plan.message));
        continue;
      }
      for (const error of plan.value.errors) sentence(error.message);
      if (plan.value.errors.length > 0 && !skipBad) {
        expect(plan.value.command).toBeNull();
        expect(plan.value.added).toBe(0);
      }
      if (plan.value.command) expect(applyCommand(study, plan.value.command).ok).toBe(true);
      said.push(`${plan.value.added} of ${plan.value.rows}`);
    }
  }
  return said.join(" | ");
}

function sentence(message: string): string {
  expect(message).toMatch(/\S.*[.!]$/s);
  expect(message.length).toBeLessThan(12_000);
  expect(message).not.toMatch(/undefined|\[object|Error:|\bNaN\b|    at /);
  return message;
}

const workbook = (rows: (string | number | null)[][]) => writeWorkbook([{ name: "jars", rows }]);
const goodRows = [heads.split(","), ["1", 2.5, 447], ["2", 3.5, ">1000"]];

/** A workbook with one part replaced. */
async function workbookWith(path: string, text: string): Promise<Bytes> {
  const parts = await unpackZip(await workbook(goodRows), () => true);
  if (!parts.ok) throw new Error(parts.message);
  return packZip(
    parts.value.map((part) => (part.path === path ? { path, bytes: utf8(text) } : part)),
    true,
  );
}
const sheet = "xl/worksheets/sheet1.xml";
const sheetXml = (rows: string) =>
  `<worksheet xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main"><sheetData>${rows}</sheetData></worksheet>`;
const text = (place: string, value: string) => `<c r="${place}" t="inlineStr"><is><t>${value}</t></is></c>`;
const headRow = `<row r="1">${text("A1", "jar")}${text("B1", "dose_a_kg_per_t")}${text("C1", "cst_s")}</row>`;

describe("files that are not what they should be", () => {
  const cases: [string, () => Bytes | Promise<Bytes>, RegExp][] = [
    ["nothing at all", () => utf8(""), /the file is empty/],
    ["only blanks", () => utf8(" \r\n \r\n;;\n"), /there is nothing in it|the file is empty/],
    ["no rows below the head", () => utf8(`${heads}\n`), /no rows below the head/],
    ["a good file", () => utf8(plain), /3 of 3 \| 3 of 3/],
    ["a byte-order mark", () => utf8(`\uFEFF${plain}`), /3 of 3/],
    ["UTF-16, little end first", () => utf16(plain, true), /3 of 3/],
    ["UTF-16, big end first", () => utf16(plain, true, true), /3 of 3/],
    ["UTF-16 without its mark", () => utf16(plain, false), /3 of 3/],
    ["UTF-16 cut in the middle of a letter", () => utf16(plain, true).slice(0, 41), /is cut short/],
    [
      "Western European letters",
      () => new Uint8Array([...utf8(`${heads},note\n1,2.5,44,`), 0xe9, 0xb0]),
      /1 of 1/,
    ],
    ["semicolons and decimal commas", () => utf8("jar;dose_a_kg_per_t;cst_s\n1;2,5;20,5\n"), /1 of 1/],
    ["tabs", () => utf8("jar\tdose_a_kg_per_t\tcst_s\n1\t2.5\t20.5\n"), /1 of 1/],
    [
      "a separator nobody uses",
      () => utf8("jar|dose_a_kg_per_t|cst_s\n1|2.5|20.5\n"),
      /say polymer, unit and basis/,
    ],
    ["semicolons in the head, commas below", () => utf8("jar;dose_a_kg_per_t;cst_s\n1,2.5,20\n"), /0 of 1/],
    ["two decimal marks", () => utf8("jar;dose_a_kg_per_t;cst_s\n1;2,5;20.5\n"), /another decimal mark/],
    ["thousands marks", () => utf8('jar;dose_a_kg_per_t;cst_s\n1;"1.234,5";20\n'), /0 of 1/],
    ["a quotation mark that never closes", () => utf8(`${heads}\n1,"2.5,44\n2,3,4\n`), /never closed/],
    [
      "two heads alike",
      () => utf8("jar,dose_a_kg_per_t,cst_s,cst_s\n1,2,3,4\n"),
      /two columns called "cst_s"/,
    ],
    [
      "heads that only differ in capitals",
      () => utf8("jar,dose_a_kg_per_t,cst_s,CST s\n1,2,3,4\n"),
      /both taken for CST/,
    ],
    [
      "merged heads",
      () => utf8("jar,dose_a_kg_per_t,turbidity_ntu,\n1,2.5,44,45\n"),
      /column 4 of line 1 has no head/,
    ],
    ["more cells than heads", () => utf8(`${heads}\n1,2.5,44,9,9\n`), /more cells than the head/],
    ["a formula in a number", () => utf8(`${heads}\n1,=1+1,44\n2,2,#REF!\n`), /0 of 2/],
    ["NUL bytes", () => utf8(`${heads}\n1,2.\u00005,44\n`), /is not text/],
    [
      "a cell of a megabyte",
      () => utf8(`${heads}\n1,2.5,${"4".repeat(1_000_000)}\n`),
      /the cell is far too long/,
    ],
    [
      "a head of a megabyte",
      () => utf8(`jar,dose_a_kg_per_t,${"x".repeat(1_000_000)}\n1,2,3\n`),
      /far too long/,
    ],
    ["a million columns", () => utf8(`${"a,".repeat(1_000_000)}b\n1,2\n`), /200 is the most/],
    ["a million blank lines", () => utf8(`${heads}${"\n".repeat(1_000_000)}1,2,3`), /more than 200000 lines/],
    ["60,000 rows", () => utf8(`${heads}\n${"1,2,3\n".repeat(60_000)}`), /60000 rows; 50000 is the most/],
    ["larger than it may be", () => new Uint8Array(limits.fileBytes + 1), /larger than 20 MB/],
    [
      "the old workbook format",
      () => new Uint8Array([0xd0, 0xcf, 0x11, 0xe0, 0xa1, 0xb1, 0x1a, 0xe1]),
      /old kind/,
    ],
    ["a workbook", () => workbook(goodRows), /2 of 2/],
    ["a workbook cut short", async () => (await workbook(goodRows)).slice(0, 900), /damaged or cut short/],
    [
      "an archive that is no workbook",
      () => packZip([{ path: "a.xml", bytes: utf8("<a/>") }], true),
      /not a workbook/,
    ],
    ["a workbook with an empty sheet", () => workbook([]), /every sheet of the workbook is empty/],
    [
      "a sheet that is no XML",
      () => workbookWith(sheet, "<worksheet><sheetData><row r='1'><c"),
      /cannot be read|is empty/,
    ],
    [
      "a cell far down",
      () => workbookWith(sheet, sheetXml(`${headRow}<row r="1048576">${text("A1048576", "x")}</row>`)),
      /row 1048576; 50000/,
    ],
    [
      "a cell far out",
      () => workbookWith(sheet, sheetXml(`<row r="1">${text("XFD1", "x")}</row>`)),
      /column XFD; 200/,
    ],
    [
      "a cell of a megabyte in a sheet",
      () =>
        workbookWith(
          sheet,
          sheetXml(`${headRow}<row r="2">${text("A2", "x".repeat(1_000_000))}<c r="B2"><v>2</v></c></row>`),
        ),
      /far too long/,
    ],
    [
      "formulas with and without their values, and one in error",
      () =>
        workbookWith(
          sheet,
          sheetXml(
            `${headRow}<row r="2">${text("A2", "1")}<c r="B2"><f>1+1</f><v>2</v></c><c r="C2"><f>2*10</f><v>20</v></c></row><row r="3">${text("A3", "2")}<c r="B3"><f>1+2</f><v>3</v></c><c r="C3" t="e"><f>1/0</f><v>#DIV/0!</v></c></row><row r="4">${text("A4", "3")}<c r="B4"><v>4</v></c><c r="C4"><f>9</f></c></row>`,
          ),
        ),
      /0 of 3 \| 1 of 3/,
    ],
    [
      "a date in a number",
      () =>
        workbookWith(
          sheet,
          sheetXml(
            `${headRow}<row r="2">${text("A2", "1")}<c r="B2" t="d"><v>2026-03-04T00:00:00Z</v></c></row>`,
          ),
        ),
      /0 of 1/,
    ],
    [
      "a number beyond all numbers",
      () =>
        workbookWith(
          sheet,
          sheetXml(`${headRow}<row r="2">${text("A2", "1")}<c r="B2"><v>1e999</v></c></row>`),
        ),
      /0 of 1/,
    ],
  ];
  for (const [name, make, words] of cases)
    test(name, async () => expect(await through(await make())).toMatch(words), 20_000);

  test("an archive that unpacks without bound is stopped, whatever its directory says", async () => {
    const bomb = await packZip(
      [{ path: "xl/workbook.xml", bytes: new Uint8Array(limits.unpackedBytes + 1) }],
      true,
    );
    expect(bomb.length).toBeLessThan(1_000_000);
    expect(await through(bomb)).toMatch(/unpacks to far more/);
    // the same, with a directory that claims ten bytes
    const view = new DataView(bomb.buffer);
    const directory = view.getUint32(bomb.length - 22 + 16, true);
    view.setUint32(directory + 24, 10, true);
    expect(await through(bomb)).toMatch(/unpacks to far more/);
  }, 30_000);

  test("10 MB of junk, of bytes and of signs, is refused in time", async () => {
    const random = seededRandom(4);
    const bytes = Uint8Array.from({ length: 10_000_000 }, () => Math.floor(random() * 256));
    expect(await through(bytes)).toMatch(/\.$/);
    bytes[0] = 0x50;
    bytes[1] = 0x4b;
    expect(await through(bytes)).toMatch(/damaged/);
    for (const signs of ['",;\n', "a,1\n", '""";\t\r\n', "=+-@'\n,", "1.5,2\n\n"]) {
      const junk = Uint8Array.from({ length: 10_000_000 }, () =>
        signs.charCodeAt(Math.floor(random() * signs.length)),
      );
      await through(junk);
    }
  }, 60_000);

  test("a good file with seeded damage never half-imports", async () => {
    const random = seededRandom(9);
    const pick = <T>(list: readonly T[]) => list[Math.floor(random() * list.length)]!;
    const noise = [",", ";", '"', "\n", "\r", "=", "-", ">", "\t", "é", "\u0000", "1e9", "  ", "'", "x"];
    let added = 0;
    let refused = 0;
    for (let run = 0; run < 400; run++) {
      let damaged = plain;
      for (let hit = 0; hit <= random() * 4; hit++) {
        const at = Math.floor(random() * damaged.length);
        damaged = damaged.slice(0, at) + pick(noise) + damaged.slice(at + Math.floor(random() * 3));
      }
      if (/[1-9]\d* of/.test(await through(utf8(damaged)))) added += 1;
      else refused += 1;
    }
    const book = await workbook(goodRows);
    for (let run = 0; run < 300; run++) {
      const damaged = book.slice(0, random() < 0.3 ? Math.floor(random() * book.length) : book.length);
      for (let hit = 0; hit <= random() * 6; hit++)
        damaged[Math.floor(random() * damaged.length)] = Math.floor(random() * 256);
      if (/[1-9]\d* of/.test(await through(damaged))) added += 1;
      else refused += 1;
    }
    // both ways out were taken, or the damage was too mild or too strong to say anything
    expect(added).toBeGreaterThan(50);
    expect(refused).toBeGreaterThan(50);
  }, 60_000);

  test("any columns taken for anything, over any cells: a sentence or a plan the study takes", () => {
    const random = seededRandom(31);
    const pick = <T>(list: readonly T[]) => list[Math.floor(random() * list.length)]!;
    const samples = [
      "",
      "",
      "1",
      "2,5",
      "2.5",
      ">1000",
      "<5",
      "-1",
      "0",
      "=1+1",
      "'=x",
      "spilled",
      "7",
      "Series",
    ];
    const more = ["Stock", "abc", "1 2 3", "10 20 30", "1e9", "no-polymer", "Sample", "x".repeat(130), "é\n"];
    const units = [null, "kg-per-t", "lb-per-short-ton", "mg-per-l-feed", "ml-solution"] as const;
    let carried = 0;
    for (let run = 0; run < 6000; run++) {
      const width = 1 + Math.floor(random() * 12);
      const uses = Array.from({ length: width }, (_, at): ColumnUse => {
        if (at === 0) return { as: "dose", polymer: "a", unit: pick(units.slice(1)), basis: "active" };
        const chance = random();
        if (chance < 0.1) return { as: "ignore" };
        if (chance < 0.2)
          return {
            as: "dose",
            polymer: pick(["a", "a", "b"] as const),
            unit: pick(units),
            basis: pick([null, "active", "active", "as-supplied"] as const),
          };
        return { as: "field", field: pick(fields) };
      });
      const rows = Array.from({ length: 1 + Math.floor(random() * 4) }, (_, line) => ({
        line: line + 2,
        cells: uses.map(() => pick(random() < 0.8 ? samples : more)),
      }));
      const table = tableOf(
        { sheet: "", separator: ";", rows: [{ line: 1, cells: uses.map((_, at) => `c${at}`) }, ...rows] },
        "f",
        pick([null, ".", ","] as const),
        null,
        (column) => holdsNumbers(uses[column]),
      );
      if (!table.ok) {
        sentence(table.message);
        continue;
      }
      const plan = planImport(study, table.value, uses, {
        seriesName: pick([null, "Series", "New"]),
        fallbackName: "f",
        choice: {},
        skipBad: random() < 0.5,
        readAgain: random() < 0.3,
        nextId: idMaker(0, "t"),
      });
      if (!plan.ok) sentence(plan.message);
      else if (plan.value.command) {
        expect(applyCommand(study, plan.value.command).ok).toBe(true);
        carried += 1;
      } else for (const error of plan.value.errors) sentence(error.message);
    }
    expect(carried).toBeGreaterThan(50);
  });
});
