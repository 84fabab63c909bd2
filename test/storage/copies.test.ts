import { existsSync, mkdtempSync, readdirSync, rmSync, writeFileSync } from "node:fs";
import { hostname, tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, expect, test } from "vitest";
import { sweepCopies } from "../../main/storage/copy.ts";

const now = "2026-03-01T12:00:00.000Z";
let folder = "";
beforeEach(() => (folder = mkdtempSync(join(tmpdir(), "flocwright-copies-"))));
afterEach(() => rmSync(folder, { recursive: true, force: true }));

function halfMade(name: string, holder: object | null): void {
  writeFileSync(join(folder, name), "half a copy");
  if (holder) writeFileSync(join(folder, `${name}.lock`), JSON.stringify(holder));
}
// No process bears a number as high as this.
const dead = { machine: hostname(), processId: 2 ** 30, processStarted: "1", since: now };

test("a half-made copy of a dead session is thrown away with its journal and lock", () => {
  halfMade("a.flocwright.part", dead);
  writeFileSync(join(folder, "a.flocwright.part-journal"), "journal");
  sweepCopies(folder, now);
  expect(readdirSync(folder)).toEqual([]);
});

test("a copy that is being made, one of another machine, and files that are not ours are left", () => {
  halfMade("mine.flocwright.part", { ...dead, processId: process.pid, processStarted: "" });
  halfMade("theirs.flocwright.part", { ...dead, machine: "another" });
  halfMade("download.flocwright.part", null);
  halfMade("letter.txt.part", dead);
  const before = readdirSync(folder).sort();
  sweepCopies(folder, now);
  expect(readdirSync(folder).sort()).toEqual(before);
});

test("a folder that is not there is no fault", () => {
  const gone = join(folder, "gone");
  sweepCopies(gone, now);
  expect(existsSync(gone)).toBe(false);
});
