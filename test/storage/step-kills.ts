import assert from "node:assert/strict";
import { spawnSync } from "node:child_process";
import { copyFileSync, existsSync, mkdtempSync, readdirSync, rmSync, statSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { listBackups } from "../../main/storage/backups.ts";
import { openStudyFile } from "../../main/storage/study-file.ts";
import { summarise, writeDemo } from "../../main/service/standalone.ts";
import { demoCommands } from "../../src/study/demo.ts";
import { importedJars } from "./imported.ts";

const now = "2026-03-01T12:00:00.000Z";
const runner = join(import.meta.dirname, "step-runner.ts");
const oldFile = join(import.meta.dirname, "files", "format-1.study");
let folder = "";
let path = "";

/** A fresh folder with nothing in it. */
function startAgain(): void {
  endFolder();
  folder = mkdtempSync(join(tmpdir(), "flocwright-steps-"));
  path = join(folder, "study.flocwright");
}

/** Deletes the last folder. */
function endFolder(): void {
  if (folder !== "") rmSync(folder, { recursive: true, force: true });
}

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
  check(result: { out: string; step: string }): void;
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
const demoJars = 24;
const whole = (at = path, wholeJars = demoJars) => {
  const summary = summarise(at, now);
  assert.ok(summary.ok, summary.ok ? "" : summary.message);
  const { jars, integrity, history, notAsHistory } = summary.value;
  assert.deepEqual(
    { jars, integrity, history, notAsHistory },
    { jars: wholeJars, integrity: "ok", history: "whole", notAsHistory: null },
  );
};
const backupsOpen = () => {
  for (const backup of listBackups(path)) {
    assert.equal(backup.trouble, null);
    const summary = summarise(backup.path, now);
    assert.ok(summary.ok && summary.value.integrity === "ok", `${backup.name} is not whole`);
  }
};

const cases: Case[] = [
  {
    action: "create",
    prepare: () => undefined,
    check: () => {
      if (existsSync(path)) whole();
      else assert.equal(run("create").killed, false);
      whole();
    },
  },
  {
    action: "edit",
    prepare: demo,
    check: ({ out }) => {
      whole();
      const value = syringe();
      if (out.includes("acknowledged")) assert.equal(value, 12.3);
      assert.ok(value === 18.6 || value === 12.3);
    },
  },
  {
    action: "import",
    prepare: demo,
    check: ({ out, step }) => {
      // Some of the step stands in the file, and its journal is what takes that back.
      if (step === "edit: records written")
        assert.ok(existsSync(`${path}-journal`) && statSync(path).size > 2e6);
      const file = openStudyFile(path, now);
      if (!file.ok) throw new Error(file.message);
      file.value.close();
      whole(path, step === "write: committed" ? demoJars + importedJars : demoJars);
      assert.ok(!out.includes("acknowledged"));
      // The study goes on as it was: the same step is made whole.
      if (step !== "write: committed") assert.match(run("import").out, /acknowledged/);
      whole(path, demoJars + importedJars);
    },
  },
  {
    action: "save-as",
    prepare: demo,
    check: () => {
      whole();
      const copy = `${path}.copy.flocwright`;
      const named = existsSync(copy);
      if (named) whole(copy);
      // A study of that folder is opened again: nothing half-made is left, and the copy can be made anew.
      assert.equal(run("close").killed, false);
      assert.deepEqual(
        readdirSync(folder).filter((name) => name.includes(".part")),
        [],
      );
      if (!named) {
        assert.equal(run("save-as").error, "");
        assert.equal(existsSync(copy), true);
      }
    },
  },
  {
    action: "upgrade",
    prepare: () => copyFileSync(oldFile, path),
    check: () => {
      const file = openStudyFile(path, now);
      if (!file.ok) throw new Error(file.message);
      assert.ok(file.value.historyOf("jar", "jar-1-04", 10).length > 0);
      file.value.close();
      whole();
      assert.ok(listBackups(path).some(({ reason }) => reason === "before-upgrade"));
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
      assert.equal(syringe(), 12.3);
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
      assert.ok([18.6, 12.3].includes(syringe() ?? 0));
      backupsOpen();
    },
  },
];

/** What is done while the process dies, each by its name. */
export const stepActions = cases.map(({ action }) => action);

/**
 * Does one thing and kills the process at a step between its writes, each step in turn on a fresh study; with `every`
 * at each step there is, otherwise a few stand for the many alike. Answers how many kills were made and survived.
 * Throws at the first that was not.
 */
export function killAtSteps(action: string, every: boolean): { tried: number; survived: number } {
  const { prepare, check } = cases.find((one) => one.action === action)!;
  try {
    startAgain();
    prepare();
    const dry = run(action);
    const steps = JSON.parse(dry.out.split("steps ")[1] ?? "[]") as string[];
    assert.ok(steps.length > 1, dry.error);
    // The demo repeats the same three writes for each of its edits, and a large step the writing of some records.
    const wanted =
      steps.length > 40 && !every
        ? [1, 2, 3, 5, 8, 13, 21, steps.length - 2, steps.length]
        : steps.map((_, i) => i + 1);
    let survived = 0;
    for (const step of wanted) {
      startAgain();
      prepare();
      const result = run(action, step);
      assert.ok(result.killed, `step ${step}, ${steps[step - 1]}: ${result.error}`);
      check({ ...result, step: steps[step - 1]! });
      survived += 1;
    }
    return { tried: wanted.length, survived };
  } finally {
    endFolder();
  }
}
