import { spawnSync } from "node:child_process";
import { copyFileSync, existsSync, mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { listBackups } from "../../main/storage/backups.ts";
import { openStudyFile } from "../../main/storage/study-file.ts";
import { summarise, writeDemo } from "../../main/service/standalone.ts";
import { demoCommands } from "../../src/study/demo.ts";

const now = "2026-03-01T12:00:00.000Z";
const runner = join(import.meta.dirname, "step-runner.ts");
const oldFile = join(import.meta.dirname, "files", "format-1.study");
let folder: string;
let path: string;

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "flocwright-steps-"));
  path = join(folder, "study.flocwright");
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

function run(action: string, dieAt?: number): { out: string; killed: boolean; error: string } {
  const child = spawnSync(
    process.execPath,
    [runner, action, path, ...(dieAt === undefined ? [] : [String(dieAt)])],
    { encoding: "utf8" },
  );
  return { out: child.stdout, killed: child.signal === "SIGKILL", error: child.stderr };
}

interface Case {
  action: string;
  prepare(): void;
  /** what must hold after the process died at a step */
  check(result: { out: string }): void;
}

const demo = () => {
  const written = writeDemo(path, demoCommands, now);
  if (!written.ok) throw new Error(written.message);
};
const syringe = () => {
  const file = openStudyFile(path, now);
  if (!file.ok) throw new Error(file.message);
  const state = file.value.readState();
  file.value.close();
  if (!state.ok) throw new Error(state.message);
  return state.value.jar["jar-1-04"]!.syringeAMl;
};
const whole = (at = path) =>
  expect(summarise(at, now)).toMatchObject({
    ok: true,
    value: { jars: 24, integrity: "ok", history: "whole" },
  });
const backupsOpen = () => {
  for (const backup of listBackups(path)) {
    expect(backup.trouble).toBeNull();
    expect(summarise(backup.path, now)).toMatchObject({ ok: true, value: { integrity: "ok" } });
  }
};

const cases: Case[] = [
  {
    action: "create",
    prepare: () => undefined,
    check: () => {
      if (existsSync(path)) whole();
      else expect(run("create").killed).toBe(false);
      whole();
    },
  },
  {
    action: "edit",
    prepare: demo,
    check: ({ out }) => {
      whole();
      const value = syringe();
      if (out.includes("acknowledged")) expect(value).toBe(12.3);
      expect([18.6, 12.3]).toContain(value);
    },
  },
  {
    action: "save-as",
    prepare: demo,
    check: () => {
      whole();
      if (existsSync(`${path}.copy.flocwright`)) whole(`${path}.copy.flocwright`);
    },
  },
  {
    action: "upgrade",
    prepare: () => copyFileSync(oldFile, path),
    check: () => {
      const file = openStudyFile(path, now);
      if (!file.ok) throw new Error(file.message);
      expect(file.value.historyOf("jar", "jar-1-04", 10).length).toBeGreaterThan(0);
      file.value.close();
      whole();
      expect(listBackups(path).some(({ reason }) => reason === "before-upgrade")).toBe(true);
      backupsOpen();
    },
  },
  {
    action: "backup",
    prepare: demo,
    check: () => {
      whole();
      backupsOpen();
    },
  },
  {
    action: "close",
    prepare: demo,
    check: () => {
      whole();
      expect(syringe()).toBe(12.3);
      backupsOpen();
    },
  },
  {
    action: "restore",
    prepare: () => {
      demo();
      if (run("backup").killed) throw new Error("no backup");
      if (!run("edit").out.includes("acknowledged")) throw new Error("no edit");
    },
    check: () => {
      whole();
      // either what was, or what was restored: never anything else
      expect([18.6, 12.3]).toContain(syringe());
      backupsOpen();
    },
  },
];

describe("killed between every two writes", () => {
  for (const { action, prepare, check } of cases)
    test(action, { timeout: 120_000 }, () => {
      prepare();
      const dry = run(action);
      const steps = JSON.parse(dry.out.split("steps ")[1] ?? "[]") as string[];
      expect(steps.length, dry.error).toBeGreaterThan(1);
      let killed = 0;
      // The demo repeats the same three writes for each of its edits: a few of them stand for all.
      const wanted =
        steps.length > 40
          ? [1, 2, 3, 5, 8, 13, 21, steps.length - 2, steps.length]
          : steps.map((_, i) => i + 1);
      for (const step of wanted) {
        rmSync(folder, { recursive: true, force: true });
        folder = mkdtempSync(join(tmpdir(), "flocwright-steps-"));
        path = join(folder, "study.flocwright");
        prepare();
        const result = run(action, step);
        expect(result.killed, `step ${step}, ${steps[step - 1]}: ${result.error}`).toBe(true);
        killed += 1;
        check(result);
      }
      expect(killed).toBe(wanted.length);
    });
});
