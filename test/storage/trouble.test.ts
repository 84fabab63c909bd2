import { spawn, spawnSync } from "node:child_process";
import {
  copyFileSync,
  existsSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  unlinkSync,
  writeFileSync,
} from "node:fs";
import { hostname, tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { createDispatcher } from "../../main/dispatch.ts";
import { closeContext, createContext, openAtStart, type Context } from "../../main/service.ts";
import { summarise, writeDemo } from "../../main/service/standalone.ts";
import { openStudyFile } from "../../main/storage/study-file.ts";
import { demoCommands } from "../../src/study/demo.ts";

const now = "2026-03-01T12:00:00.000Z";
const runner = join(import.meta.dirname, "trouble-runner.ts");
let folder = "";
let path = "";
let context: Context;
let call: ReturnType<typeof createDispatcher>;

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "flocwright-trouble-"));
  path = join(folder, "study.flocwright");
  expect(writeDemo(path, demoCommands, now)).toMatchObject({ ok: true });
  context = createContext({ host: "loopback", version: "0", now: () => now, folder, dialogs: null });
  call = createDispatcher(context);
});
afterEach(() => {
  closeContext(context);
  rmSync(folder, { recursive: true, force: true });
});

const open = () => expect(openAtStart(context, path)).toMatchObject({ ok: true });
const edit = (syringeAMl: number) =>
  call("study.apply", {
    command: { do: "set", kind: "jar", id: "jar-1-04", fields: { syringeAMl } },
    afterSeq: context.open!.seq,
    by: "",
  });
const keep = (text: string) => call("draft.keep", { place: "jar 4 turbidity", text });
const said = (words: string) => ({ ok: false, message: expect.stringContaining(words) as string });
const whole = { ok: true, value: { integrity: "ok", history: "whole" } };

// A file system of this test's own needs the right to mount one; where that is not given, the tests are skipped by name.
const mounts = spawnSync("unshare", ["-rm", "sh", "-c", "mount -t tmpfs none /mnt"]).status === 0;

function inNamespace(prepare: string, action: string): Record<string, unknown> {
  const child = spawnSync(
    "unshare",
    ["-rm", "sh", "-c", `${prepare} && exec "$0" "$@"`, process.execPath, runner, action, path],
    { encoding: "utf8" },
  );
  expect(child.stderr.replace(/.*ExperimentalWarning.*\n.*\n/, "")).toBe("");
  return JSON.parse(child.stdout) as Record<string, unknown>;
}

describe("a disk that is full", () => {
  test("within a file that may not grow: a sentence, nothing half saved, and it goes on once there is room", () => {
    const file = openStudyFile(path, now, { mostPages: readFileSync(path).length / 4096 + 2 });
    if (!file.ok) throw new Error(file.message);
    const texts: string[] = [];
    let outcome;
    do {
      const place = `cell ${texts.length}`;
      outcome = file.value.keepDraft({ place, text: "z".repeat(2000), reason: "" }, now);
      if (outcome.ok) texts.push(place);
    } while (outcome.ok && texts.length < 100);
    expect(outcome).toMatchObject(said("The disk is full"));
    expect(texts.length).toBeGreaterThan(0);
    expect(file.value.drafts().map(({ place }) => place)).toEqual(expect.arrayContaining(texts));
    for (const place of texts) expect(file.value.dropDraft(place)).toMatchObject({ ok: true });
    expect(file.value.keepDraft({ place: "cell", text: "typed", reason: "" }, now)).toMatchObject({
      ok: true,
    });
    file.value.close();
    expect(summarise(path, now)).toMatchObject(whole);
  });

  test.skipIf(!mounts)("a real one, on a file system of 500 kB", () => {
    const told = inNamespace(`mount -t tmpfs -o size=500k none "${folder}"`, "full");
    const full = expect.stringMatching(/the disk is full\. Nothing of this change was saved/i) as string;
    expect(told).toMatchObject({ draft: full, edit: full, backup: full, afterFreeing: "saved", whole: true });
    expect(told["create"]).toEqual(full);
    expect(told["partLeft"]).toBe(false);
    expect(told["draftsFound"]).toBe(told["draftsKept"]);
    expect(told["draftsKept"]).toBeGreaterThan(5);
  });
});

test.skipIf(!mounts)("a folder that is read-only: shown, not edited, and nothing is written", () => {
  const before = readFileSync(path);
  const told = inNamespace(
    `mount --bind "${folder}" "${folder}" && mount -o remount,ro,bind "${folder}"`,
    "look",
  );
  expect(told["readOnlyBecause"]).toMatch(/^This study is shown to read only: this folder is read-only\.$/);
  for (const what of ["edit", "draft", "backup"]) expect(told[what]).toBe(told["readOnlyBecause"]);
  expect(told["create"]).toMatch(/read-only|cannot be written/);
  expect(told["whole"]).toBe(true);
  expect(readFileSync(path)).toEqual(before);
  expect(readdirSync(folder)).toEqual(["study.flocwright"]);
});

describe("a file that is taken away underneath", () => {
  test("deleted: said before anything is called saved, and Save as still has it all", async () => {
    open();
    expect(await edit(11.1)).toMatchObject({ ok: true });
    unlinkSync(path);
    expect(await edit(12.2)).toMatchObject(said("moved, deleted or replaced"));
    expect(await keep("12.2.2")).toMatchObject(said("moved, deleted or replaced"));
    expect(await call("study.saveAs", { name: "Saved again" })).toMatchObject({ ok: true });
    expect(context.open!.state.jar["jar-1-04"]!.syringeAMl).toBe(11.1);
    expect(await edit(12.2)).toMatchObject({ ok: true });
    expect(existsSync(path)).toBe(false);
    expect(summarise(context.open!.file.path, now)).toMatchObject(whole);
  });

  test("replaced by another study: that one is not written into; put back, work goes on", async () => {
    open();
    const away = join(folder, "away");
    const other = join(folder, "other.flocwright");
    copyFileSync(path, other);
    renameSync(path, away);
    renameSync(other, path);
    const before = readFileSync(path);
    expect(await edit(12.2)).toMatchObject(said("moved, deleted or replaced"));
    expect(readFileSync(path)).toEqual(before);
    renameSync(away, path);
    expect(await edit(12.2)).toMatchObject({ ok: true });
    expect(summarise(path, now)).toMatchObject(whole);
  });

  test("overwritten in place by an older copy: nothing of two histories is mixed", async () => {
    const older = readFileSync(path);
    open();
    expect(await edit(11.1)).toMatchObject({ ok: true });
    writeFileSync(path, older);
    const answer = await edit(12.2);
    expect(answer.ok).toBe(false);
    expect(answer.ok ? "" : answer.message).toMatch(/changed by another program|damaged/);
    closeContext(context);
    // what counts: the file holds one history, whole
    const summary = summarise(path, now);
    expect(summary).toMatchObject(whole);
    expect(summary.ok && summary.value.changes).toBe(12);
  });

  test("changed by another program's SQLite: the next edit says so", async () => {
    open();
    const second = createContext(context.support);
    unlinkSync(`${path}.lock`);
    expect(openAtStart(second, path)).toMatchObject({ ok: true });
    expect(
      await createDispatcher(second)("study.apply", {
        command: { do: "set", kind: "jar", id: "jar-1-05", fields: { syringeAMl: 9.9 } },
        afterSeq: second.open!.seq,
        by: "",
      }),
    ).toMatchObject({ ok: true });
    expect(await edit(12.2)).toMatchObject(said("changed by another program while it was open"));
    closeContext(second);
    expect(summarise(path, now)).toMatchObject(whole);
  });
});

test("a second writer in a process of its own only reads, and the first is not disturbed", async () => {
  open();
  const child = spawnSync(process.execPath, [runner, "look", path], { encoding: "utf8" });
  const told = JSON.parse(child.stdout) as Record<string, unknown>;
  expect(told["readOnlyBecause"]).toMatch(/already open in another Flocwright on this machine/);
  expect(told["edit"]).toBe(told["readOnlyBecause"]);
  expect(await edit(12.2)).toMatchObject({ ok: true });
});

test("SQLite's lock held by another process: bounded waiting, a sentence, and the same edit goes through afterwards", async () => {
  open();
  const holder = spawn(process.execPath, [join(import.meta.dirname, "lock-holder.ts"), path], {
    stdio: ["pipe", "pipe", "ignore"],
  });
  await new Promise((resolve) => holder.stdout.once("data", resolve));
  const started = Date.now();
  expect(await edit(12.2)).toMatchObject(said("Another program holds the file"));
  expect(await keep("12.2.2")).toMatchObject(said("Another program holds the file"));
  const waited = Date.now() - started;
  expect(waited).toBeGreaterThan(2500);
  expect(waited).toBeLessThan(15_000);
  const ended = new Promise((resolve) => holder.once("close", resolve));
  holder.stdin.end();
  await ended;
  expect(await keep("12.2.2")).toMatchObject({ ok: true });
  expect(await edit(12.2)).toMatchObject({ ok: true, value: { seq: 13 } });
  expect(await call("draft.list", {})).toMatchObject({
    value: { drafts: [{ place: "jar 4 turbidity", text: "12.2.2" }] },
  });
});

test("a lock file of nonsense is no obstacle; one that names another machine is", () => {
  const holders = [
    "",
    "null",
    "{",
    '{"machine":7,"processId":"x"}',
    JSON.stringify({ machine: "m".repeat(9000), processId: 1, since: now }),
    JSON.stringify({ machine: hostname(), processId: -1, processStarted: "", since: now }),
    JSON.stringify({ machine: hostname(), processId: 1.5, processStarted: "", since: now }),
  ];
  for (const text of holders) {
    writeFileSync(`${path}.lock`, text);
    const file = openStudyFile(path, now);
    expect(file.ok && file.value.readOnlyBecause, text.slice(0, 60)).toBeNull();
    if (file.ok) file.value.close();
    expect(existsSync(`${path}.lock`)).toBe(false);
  }
  writeFileSync(
    `${path}.lock`,
    JSON.stringify({ machine: "elsewhere", processId: 1, processStarted: "", since: now }),
  );
  const file = openStudyFile(path, now);
  expect(file.ok && file.value.readOnlyBecause).toMatch(/machine elsewhere/);
  if (file.ok) file.value.close();
});
