import { spawnSync } from "node:child_process";
import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { readSheetFile } from "../../src/exchange/sheet-file.ts";
import { studyFrom, studyJsonSchema } from "../../src/study/exchange/whole-study.ts";

const root = join(import.meta.dirname, "..", "..");
let folder = "";
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), "flocwright-exchange-"));
  verb("demo", "demo.flocwright");
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

function verb(...args: string[]): { code: number | null; out: string; error: string } {
  const result = spawnSync(process.execPath, [join(root, "main", "headless.ts"), ...args], {
    cwd: folder,
    encoding: "utf8",
  });
  return { code: result.status, out: result.stdout, error: result.stderr };
}
const file = (name: string, text: string) => {
  writeFileSync(join(folder, name), text);
  return name;
};
const answer = (result: { out: string }) => JSON.parse(result.out) as Record<string, unknown>;
const counts = () => {
  const { jars, readings, changes, history, series } = answer(verb("inspect", "demo.flocwright"));
  return { jars, readings, changes, history, series };
};

describe("import", () => {
  test("rows with faults add nothing, a dry run adds nothing, skipping adds the others as one step", () => {
    const name = file(
      "trial.csv",
      "jar;dose_a_kg_per_t;turbidity_ntu;remarks\n1;2,5;>1000;x\n2;3,5;abc;\n3;4,5;66,5;\n",
    );
    const before = counts();
    const refused = verb("import", name, "--into", "demo.flocwright", "--series", "Monday");
    expect(refused).toMatchObject({ code: 0, error: "Columns left aside: remarks.\n" });
    expect(answer(refused)).toEqual({
      rows: 3,
      added: 0,
      errors: [{ row: 3, column: "turbidity_ntu", message: '"abc" is not a number: enter digits only.' }],
    });
    expect(
      answer(
        verb("import", name, "--into", "demo.flocwright", "--series", "Monday", "--skip-bad", "--dry-run"),
      ),
    ).toMatchObject({ rows: 3, added: 2 });
    expect(counts()).toEqual(before);
    const added = verb("import", name, "--into", "demo.flocwright", "--series", "Monday", "--skip-bad");
    expect(answer(added)).toMatchObject({ rows: 3, added: 2, errors: [{ row: 3 }] });
    expect(counts()).toEqual({
      jars: Number(before.jars) + 2,
      readings: Number(before.readings) + 2,
      changes: Number(before.changes) + 1,
      series: Number(before.series) + 1,
      history: "whole",
    });
  });

  const refused: [string, string, string[], RegExp][] = [
    ["no study", "dose_a_kg_per_t\n5\n", [], /--into is missing/],
    [
      "a study that is not there",
      "dose_a_kg_per_t\n5\n",
      ["--into", "no.flocwright"],
      /no\.flocwright: there is no such file/,
    ],
    ["a study that is none", "dose_a_kg_per_t\n5\n", ["--into", "bad.csv"], /not a Flocwright study/],
    [
      "no dose column",
      "jar,turbidity_ntu\n1,5\n",
      ["--into", "demo.flocwright"],
      /^bad\.csv: there is no dose column/,
    ],
    [
      "a dose without its basis",
      "jar,dose\n1,5\n",
      ["--into", "demo.flocwright"],
      /^bad\.csv: column dose: say polymer, unit and basis/,
    ],
    ["a file that is empty", "", ["--into", "demo.flocwright"], /^bad\.csv: the file is empty/],
    [
      "a number that reads two ways",
      "jar;dose_a_kg_per_t\n1;1,234\n",
      ["--into", "demo.flocwright"],
      /^bad\.csv: line 2, column dose_a_kg_per_t: "1,234" could be read two ways/,
    ],
    ["an unknown option", "dose_a_kg_per_t\n5\n", ["--into", "demo.flocwright", "--force"], /Unknown option/],
  ];
  for (const [name, text, args, words] of refused)
    test(`${name}: one sentence, exit 2, nothing on standard output, nothing changed`, () => {
      const before = readFileSync(join(folder, "demo.flocwright"));
      const result = verb("import", file("bad.csv", text), ...args);
      expect(result).toMatchObject({ code: 2, out: "" });
      expect(result.error).toMatch(words);
      expect(result.error.trim().split("\n")).toHaveLength(1);
      expect(readFileSync(join(folder, "demo.flocwright")).equals(before)).toBe(true);
    });
});

describe("export", () => {
  test("csv, with units in the head, is read back by import", () => {
    const out = verb("export", "demo.flocwright", "--format", "csv", "--out", "jars.csv");
    expect(answer(out)).toMatchObject({ file: "jars.csv", format: "csv" });
    const text = readFileSync(join(folder, "jars.csv"), "utf8");
    expect(text.split("\r\n")[0]).toMatch(
      /^series,.*syringe_a_ml,dose_a_kg_per_t,.*turbidity_ntu.*cake_ts_pct/,
    );
    expect(text).toContain(">1000");
    verb("demo", "other.flocwright");
    const again = answer(verb("import", "jars.csv", "--into", "other.flocwright"));
    // every jar of the demo is in that study already, and each says so
    expect(again).toMatchObject({ added: 0 });
    const errors = again["errors"] as { column: string }[];
    expect(errors.length).toBeGreaterThan(20);
    expect(new Set(errors.map(({ column }) => column))).toEqual(new Set(["jar"]));
  });
  test("one series as csv goes straight into analyse, without what was left out", () => {
    verb("export", "demo.flocwright", "--format", "csv", "--series", "E-42 alone", "--out", "one.csv");
    const analysis = answer(verb("analyse", "one.csv"));
    expect(analysis).toMatchObject({ axis: "a" });
    const [head, ...rows] = readFileSync(join(folder, "one.csv"), "utf8").trim().split("\r\n");
    const left = file(
      "left.csv",
      [
        `${head},turbidity_left_out`,
        ...rows.map((row, index) => `${row},${index === 3 ? "spilled" : ""}`),
      ].join("\n"),
    );
    const used = (result: { out: string }) =>
      (answer(result)["responses"] as { name: string; fits: { rowsUsed: number[] }[] }[]).find(
        ({ name }) => name === "turbidity_ntu",
      )!.fits[0]!.rowsUsed;
    expect(used(verb("analyse", "one.csv"))).toContain(5);
    expect(used(verb("analyse", left))).not.toContain(5);
  });
  test("xlsx has a sheet a kind; json is the whole study by the schema", async () => {
    verb("export", "demo.flocwright", "--format", "xlsx", "--out", "study.xlsx");
    const book = await readSheetFile(new Uint8Array(readFileSync(join(folder, "study.xlsx"))), "study.xlsx");
    expect(book.ok && book.value.sheets.map(({ sheet }) => sheet)).toEqual(
      expect.arrayContaining([
        "jars",
        "readings",
        "samples",
        "dishes",
        "products",
        "stock solutions",
        "series",
        "pumps",
      ]),
    );
    const samples = book.ok ? book.value.sheets.find(({ sheet }) => sheet === "samples") : undefined;
    expect(samples?.rows[0]?.cells).toContain("density, kg/L");
    verb("export", "demo.flocwright", "--format", "json", "--out", "study.json");
    const state = studyFrom(JSON.parse(readFileSync(join(folder, "study.json"), "utf8")));
    expect(state.ok && Object.keys(state.value.jar)).toHaveLength(Number(counts().jars));
  });
  test("nothing is written over, and an unknown format is one sentence", () => {
    file("there.csv", "mine");
    expect(verb("export", "demo.flocwright", "--format", "csv", "--out", "there.csv")).toMatchObject({
      code: 2,
      out: "",
      error: "there.csv: there is already a file of this name; it is left as it is.\n",
    });
    expect(readFileSync(join(folder, "there.csv"), "utf8")).toBe("mine");
    expect(verb("export", "demo.flocwright", "--format", "pdf", "--out", "x.pdf").error).toMatch(
      /takes csv, xlsx, json/,
    );
    expect(existsSync(join(folder, "x.pdf"))).toBe(false);
  });
});

describe("schema", () => {
  test("prints what the docs publish, generated from the schemas in use", () => {
    const printed = JSON.parse(verb("schema").out) as unknown;
    expect(printed).toEqual(JSON.parse(JSON.stringify(studyJsonSchema())));
    expect(printed).toEqual(JSON.parse(readFileSync(join(root, "docs", "study-schema.json"), "utf8")));
  });
});
