import { spawnSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { DatabaseSync } from "node:sqlite";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { writeDemo } from "../../main/service/standalone.ts";
import { applicationId, formatVersion } from "../../main/storage/format.ts";
import { demoCommands } from "../../src/study/demo.ts";
import { kinds } from "../../src/study/schema/records.ts";

const page = readFileSync(join(import.meta.dirname, "..", "..", "docs", "file-format.md"), "utf8");
const statements = [...page.matchAll(/```sql\n([^`]+)```/g)].flatMap(([, block]) =>
  block!
    .split(/;\n/)
    .map((one) => one.trim())
    .filter((one) => one !== ""),
);
const mayBeEmpty = /previous_hash|FROM draft/;
let folder = "";
let path = "";
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), "flocwright-format-"));
  path = join(folder, "demo.flocwright");
  expect(writeDemo(path, demoCommands, "2026-03-01T12:00:00.000Z")).toMatchObject({ ok: true });
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

describe("docs/file-format.md", () => {
  test("has its questions", () => expect(statements.length).toBeGreaterThanOrEqual(9));
  for (const sql of statements)
    test(`answers: ${sql.slice(0, 60).replace(/\s+/g, " ")}`, () => {
      const database = new DatabaseSync(path, { readOnly: true });
      const rows = database.prepare(sql).all();
      database.close();
      if (mayBeEmpty.test(sql)) expect(rows).toEqual([]);
      else expect(rows.length).toBeGreaterThan(0);
    });

  test("tells the tables, their columns, the marks and the kinds as they are", () => {
    const database = new DatabaseSync(path, { readOnly: true });
    const tables = database
      .prepare("SELECT name FROM sqlite_schema WHERE type = 'table' ORDER BY name")
      .all();
    for (const { name } of tables) {
      const columns = database.prepare(`SELECT name FROM pragma_table_info('${String(name)}')`).all();
      expect(page).toContain(
        `**${String(name)}** \`(${columns.map((one) => String(one["name"])).join(", ")})\``,
      );
    }
    database.close();
    expect(page).toContain(`${applicationId}, 0x${applicationId.toString(16)}`);
    expect(page).toContain(`| \`user_version\`   | ${formatVersion} `);
    for (const kind of kinds) expect(page).toMatch(new RegExp(`\\b${kind}\\b`));
  });

  const shell = spawnSync("sqlite3", ["--version"]).status === 0;
  test.skipIf(!shell)("the same in the shell itself", () => {
    for (const sql of statements) {
      const run = spawnSync("sqlite3", ["-readonly", path, `${sql};`], { encoding: "utf8" });
      expect(run.stderr, sql).toBe("");
      expect(run.status).toBe(0);
    }
  });
});
