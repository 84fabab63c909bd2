import { createHash } from "node:crypto";
import {
  chmodSync,
  existsSync,
  mkdtempSync,
  readFileSync,
  readdirSync,
  rmSync,
  truncateSync,
  unlinkSync,
  writeFileSync,
} from "node:fs";
import { tmpdir, hostname } from "node:os";
import { join } from "node:path";
import { DatabaseSync } from "node:sqlite";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { writeDemo, summarise } from "../../main/service/standalone.ts";
import { openStudyFile } from "../../main/storage/study-file.ts";
import { demoCommands } from "../../src/study/demo.ts";

const now = "2026-01-01T12:00:00Z";
let folder = "";
let path = "";
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "flocwright-storage-"));
  path = join(folder, "study.flocwright");
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

const hash = (file: string) => createHash("sha256").update(readFileSync(file)).digest("hex");
const write = () => expect(writeDemo(path, demoCommands, now)).toEqual({ ok: true, value: null });

test("a study written is read back record for record, with its history whole", () => {
  write();
  const summary = summarise(path, now);
  expect(summary).toMatchObject({
    ok: true,
    value: {
      invented: true,
      samples: 1,
      series: 2,
      jars: 24,
      decisions: 1,
      changes: 12,
      integrity: "ok",
      history: "whole",
    },
  });
  expect(readdirSync(folder)).toEqual(["study.flocwright"]);
});

describe("a faulty file gets a sentence and stays byte for byte as it was", () => {
  const spoil: [string, () => void, RegExp][] = [
    ["foreign text", () => writeFileSync(path, "jar,dose\n1,2\n"), /not a Flocwright study/],
    ["an empty file", () => writeFileSync(path, ""), /empty/],
    ["cut within the first page", () => truncateSync(path, 60), /cut short/],
    ["cut within a later page", () => truncateSync(path, 20_000), /cut short/],
    [
      "another program's database",
      () => {
        unlinkSync(path);
        const other = new DatabaseSync(path);
        other.exec("CREATE TABLE t (x)");
        other.close();
      },
      /another program/,
    ],
    ["a newer format", () => patch(60, 99), /newer Flocwright/],
    ["a damaged page", () => damage(), /damaged|cannot be read|does not fit/],
    [
      "a trigger that is not ours",
      () => {
        const database = new DatabaseSync(path);
        database.exec("CREATE TRIGGER sly AFTER INSERT ON change BEGIN DELETE FROM record; END");
        database.close();
      },
      /not part of a study/,
    ],
    [
      "a record that fits no kind",
      () => {
        const database = new DatabaseSync(path);
        database.exec(`INSERT INTO record VALUES ('jar', 'jar-x', '{"id":"jar-x","order":"first"}')`);
        database.close();
      },
      /does not fit/,
    ],
  ];
  function patch(at: number, value: number): void {
    const bytes = readFileSync(path);
    bytes.writeUInt32BE(value, at);
    writeFileSync(path, bytes);
  }
  function damage(): void {
    const bytes = readFileSync(path);
    bytes.fill(0xff, 4096 * 2, 4096 * 2 + 600);
    writeFileSync(path, bytes);
  }
  for (const [name, act, words] of spoil)
    test(name, () => {
      write();
      act();
      const before = hash(path);
      const file = openStudyFile(path, now);
      const outcome = file.ok ? file.value.readState() : file;
      if (file.ok) file.value.close();
      expect(outcome).toMatchObject({ ok: false, message: expect.stringMatching(words) as string });
      expect(hash(path)).toBe(before);
      expect(readdirSync(folder)).toEqual(["study.flocwright"]);
    });
});

test("a second writer on this machine only reads; a dead one's lock is taken over with a sentence", () => {
  write();
  const first = openStudyFile(path, now);
  const second = openStudyFile(path, now);
  if (!first.ok || !second.ok) throw new Error("not opened");
  expect(first.value.readOnlyBecause).toBeNull();
  expect(second.value.readOnlyBecause).toMatch(/already open/);
  expect(second.value.keepDraft({ place: "x", text: "y", reason: "" }, now)).toMatchObject({ ok: false });
  second.value.close();
  first.value.close();
  expect(existsSync(`${path}.lock`)).toBe(false);

  writeFileSync(
    `${path}.lock`,
    JSON.stringify({ machine: hostname(), processId: 4194300, processStarted: "1", since: now }),
  );
  const after = openStudyFile(path, now);
  expect(after.ok && after.value.readOnlyBecause).toBeNull();
  expect(after.ok && after.value.notices[0]).toMatch(/ended without closing/);
  if (after.ok) after.value.close();

  writeFileSync(
    `${path}.lock`,
    JSON.stringify({ machine: "elsewhere", processId: 1, processStarted: "1", since: now }),
  );
  const other = openStudyFile(path, now);
  expect(other.ok && other.value.readOnlyBecause).toMatch(/machine elsewhere/);
  if (other.ok) other.value.close();
  expect(existsSync(`${path}.lock`)).toBe(true);
});

test("a file replaced underneath is noticed before anything is called saved", () => {
  write();
  const file = openStudyFile(path, now);
  if (!file.ok) throw new Error(file.message);
  unlinkSync(path);
  expect(file.value.keepDraft({ place: "x", text: "y", reason: "" }, now)).toMatchObject({
    ok: false,
    message: expect.stringContaining("moved, deleted or replaced") as string,
  });
  file.value.close();
});

test("a copy is verified before it takes its name, and overwrites nothing", async () => {
  write();
  const file = openStudyFile(path, now);
  if (!file.ok) throw new Error(file.message);
  const target = join(folder, "copy.flocwright");
  expect(await file.value.copyTo(target, now)).toEqual({ ok: true, value: null });
  expect(await file.value.copyTo(target, now)).toMatchObject({ ok: false });
  file.value.close();
  expect(summarise(target, now)).toMatchObject({ ok: true, value: { jars: 24, history: "whole" } });
});

test("a record edited by hand, behind the history's back, is shown by name", () => {
  write();
  expect(summarise(path, now)).toMatchObject({ ok: true, value: { notAsHistory: null } });
  const edit = (sql: string) => {
    const database = new DatabaseSync(path);
    database.exec(sql);
    database.close();
  };
  edit("UPDATE record SET data = json_set(data, '$.syringeAMl', 9.9) WHERE id = 'jar-1-04'");
  expect(summarise(path, now)).toMatchObject({
    ok: true,
    value: { integrity: "ok", history: "whole", notAsHistory: "jar jar-1-04" },
  });
  edit("UPDATE record SET data = json_set(data, '$.syringeAMl', 18.6) WHERE id = 'jar-1-04'");
  expect(summarise(path, now)).toMatchObject({ ok: true, value: { notAsHistory: null } });
  edit("DELETE FROM record WHERE kind = 'reading' AND id = 'jar-1-04-r1'");
  expect(summarise(path, now)).toMatchObject({ ok: true, value: { notAsHistory: "reading jar-1-04-r1" } });
});

test("a history edited by hand is shown to be broken", () => {
  write();
  const database = new DatabaseSync(path);
  database.exec("UPDATE change SET by = 'somebody else' WHERE seq = 3");
  database.close();
  expect(summarise(path, now)).toMatchObject({ ok: true, value: { integrity: "ok", history: "broken" } });
});

test.skipIf(process.getuid?.() === 0)("a folder that may not be written to", () => {
  chmodSync(folder, 0o500);
  expect(writeDemo(path, demoCommands, now)).toMatchObject({ ok: false });
  chmodSync(folder, 0o700);
});
