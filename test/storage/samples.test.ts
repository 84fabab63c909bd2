import { copyFileSync, mkdtempSync, readdirSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { expect, test } from "vitest";
import { summarise } from "../../main/service/standalone.ts";
import { formatVersion } from "../../main/storage/format.ts";
import { probeFile } from "../../main/storage/probe.ts";
import { openStudyFile } from "../../main/storage/study-file.ts";

const files = join(import.meta.dirname, "files");
const now = "2026-03-01T12:00:00.000Z";

test("there is a stored sample of every version of the format", () => {
  const versions = readdirSync(files).map((name) => Number(/^format-(\d+)\.study$/.exec(name)?.[1]));
  expect(versions.sort((a, b) => a - b)).toEqual(Array.from({ length: formatVersion }, (_, i) => i + 1));
});

for (const name of readdirSync(files))
  test(`${name} still opens, whole, and is of this version afterwards`, () => {
    const folder = mkdtempSync(join(tmpdir(), "flocwright-sample-"));
    try {
      const path = join(folder, "study.flocwright");
      copyFileSync(join(files, name), path);
      const before = summarise(path, now);
      const file = openStudyFile(path, now);
      if (!file.ok) throw new Error(file.message);
      const state = file.value.readState();
      file.value.close();
      expect(state.ok).toBe(true);
      expect(probeFile(path)).toEqual({ ok: true, value: formatVersion });
      const after = summarise(path, now);
      expect(after).toMatchObject({ ok: true, value: { jars: 24, integrity: "ok", history: "whole" } });
      expect(after).toEqual(before);
    } finally {
      rmSync(folder, { recursive: true, force: true });
    }
  });
