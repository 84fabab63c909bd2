import { spawnSync } from "node:child_process";
import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, expect, test } from "vitest";
import { writeDemo } from "../../main/service/standalone.ts";
import { writeNewFile } from "../../main/storage/files.ts";
import { demoCommands } from "../../src/study/demo.ts";

let folder: string;
beforeEach(() => void (folder = mkdtempSync(join(tmpdir(), "flocwright-new-"))));
afterEach(() => rmSync(folder, { recursive: true, force: true }));

const mounts = spawnSync("unshare", ["-rm", "sh", "-c", "mount -t tmpfs none /mnt"]).status === 0;
const program = join(import.meta.dirname, "..", "..", "main", "headless.ts");

test("a new file is there whole, and one that is there already is left alone with nothing beside it", () => {
  const path = join(folder, "out.csv");
  writeNewFile(path, "jar\r\n1\r\n");
  expect(readFileSync(path, "utf8")).toBe("jar\r\n1\r\n");
  expect(() => writeNewFile(path, "other")).toThrow();
  expect(readFileSync(path, "utf8")).toBe("jar\r\n1\r\n");
  expect(readdirSync(folder)).toEqual(["out.csv"]);
});

test.skipIf(!mounts)("an export onto a disk that is full leaves no part of a file", () => {
  const study = join(folder, "study.flocwright");
  const written = writeDemo(study, demoCommands, "2026-03-01T12:00:00.000Z");
  if (!written.ok) throw new Error(written.message);
  const small = join(folder, "small");
  mkdirSync(small);
  writeFileSync(join(small, "hidden by the mount"), "");
  const out = join(small, "out.json");
  const run = (size: string) =>
    spawnSync(
      "unshare",
      [
        "-rm",
        "sh",
        "-c",
        `mount -t tmpfs -o size=${size} none "${small}" && "$0" "$@"; echo "left: $(ls "${small}")"`,
        process.execPath,
        program,
        "export",
        study,
        "--format",
        "json",
        "--out",
        out,
      ],
      { encoding: "utf8" },
    );
  const full = run("16k");
  expect(`${full.stdout}${full.stderr}`).toContain("could not be written");
  expect(full.stdout).toMatch(/left: \n$/);
  expect(run("1m").stdout).toMatch(/left: out\.json\n$/);
});
