// What happens while a large step is being written: half of it is in the file, and none of it may be seen or stay.
import fc from "fast-check";
import { existsSync, renameSync, rmSync } from "node:fs";
import { join } from "node:path";
import { afterEach, beforeEach, expect, test, vi } from "vitest";
import { now, openedDemo } from "./demo-context.ts";
import type { createDispatcher } from "../../main/dispatch.ts";
import { closeContext, inTurn, openAtStart, type Context } from "../../main/service.ts";
import { summarise, writeDemo } from "../../main/service/standalone.ts";
import { listBackups } from "../../main/storage/backups.ts";
import { watchSteps } from "../../main/storage/steps.ts";
import type { Acknowledged, Opened } from "../../src/contract.ts";
import { demoCommands } from "../../src/study/demo.ts";
import { importOf } from "../bench/host-step.ts";

/** a thousand records, written in five slices */
const jars = 200;
const slices = 4;
let folder: string;
let path: string;
let context: Context;
let call: ReturnType<typeof createDispatcher>;

function start(): void {
  ({ folder, path, context, call } = openedDemo());
}
function end(): void {
  watchSteps(() => undefined);
  closeContext(context);
  rmSync(folder, { recursive: true, force: true });
}
beforeEach(() => {
  start();
  // However quick the machine is, every slice has lasted long enough to give way after it.
  let clock = 0;
  vi.spyOn(performance, "now").mockImplementation(() => (clock += 1000));
});
afterEach(() => {
  vi.restoreAllMocks();
  end();
});

const large = (many = jars) =>
  call("study.apply", {
    command: { do: "together", label: "many", commands: importOf(many) },
    afterSeq: context.open!.seq,
    by: "",
    brief: true,
  });
const edit = (syringeAMl: number) =>
  call("study.apply", {
    command: { do: "set", kind: "jar", id: "jar-1-04", fields: { syringeAMl } },
    afterSeq: context.open!.seq,
    by: "",
  });

/** Does something within the n-th slice of the writing, just before others are let in. */
function atSlice(n: number, then: () => void): void {
  let count = 0;
  watchSteps((step) => {
    if (step === "edit: some records written" && ++count === n) then();
  });
}
/** Comes to rest once the n-th slice is written and others are let in. */
const midway = (n = 2) => new Promise<void>((resolve) => atSlice(n, () => setImmediate(resolve)));

const stateOf = () => JSON.stringify(context.open!.state);
function expectAsBefore(before: string, seq: number): void {
  const state = context.open!.file.readState();
  expect(state.ok && JSON.stringify(sorted(state.value))).toBe(JSON.stringify(sorted(JSON.parse(before))));
  expect(context.open!.seq).toBe(seq);
  expect(context.open!.file.inspect()).toMatchObject({ integrity: "ok", chain: "whole", changes: seq });
}
const sorted = (tables: object) =>
  Object.entries(tables).map(([kind, table]) => [kind, Object.entries(table as object).sort()]);

test("closed in the middle of the writing: nothing of the step stays, whichever slice it was", async () => {
  await fc.assert(
    fc.asyncProperty(fc.integer({ min: 1, max: slices }), async (n) => {
      const before = stateOf();
      const { seq } = context.open!;
      const reached = midway(n);
      const answer = large();
      await reached;
      closeContext(context);
      expect(await answer).toMatchObject({ ok: false, code: "no-study" });
      expect(existsSync(`${path}-journal`)).toBe(false);
      expect(existsSync(`${path}.lock`)).toBe(false);
      if (!openAtStart(context, path).ok) throw new Error("not opened again");
      expectAsBefore(before, seq);
      expect(await edit(n)).toMatchObject({ ok: true, value: { seq: seq + 1 } });
    }),
    { numRuns: 8 },
  );
});

test("a fault in any slice: a sentence, nothing of the step stays, and the same step goes through afterwards", async () => {
  const before = stateOf();
  const { seq } = context.open!;
  for (let n = 1; n <= slices; n++) {
    atSlice(n, () => {
      throw Object.assign(new Error("no room"), { errcode: 13 });
    });
    expect(await large()).toMatchObject({
      ok: false,
      code: "refused",
      message: expect.stringContaining("The disk is full") as string,
    });
    expect(stateOf()).toBe(before);
    expectAsBefore(before, seq);
  }
  watchSteps(() => undefined);
  expect(await large()).toMatchObject({ ok: true, value: { seq: seq + 1 } });
  expect(await call("study.undo", { by: "" })).toMatchObject({ ok: true, value: { seq: seq + 2 } });
  expect(context.open!.file.inspect()).toMatchObject({ integrity: "ok", chain: "whole", changes: seq + 2 });
});

test("undo and redo are left off as whole as an edit is", async () => {
  expect(await large()).toMatchObject({ ok: true });
  for (const move of ["study.undo", "study.redo"]) {
    const before = stateOf();
    const { seq } = context.open!;
    const reached = midway(3);
    const answer = call(move, { by: "" });
    await reached;
    closeContext(context);
    expect(await answer).toMatchObject({ ok: false, code: "no-study" });
    if (!openAtStart(context, path).ok) throw new Error("not opened again");
    expectAsBefore(before, seq);
    expect(await call(move, { by: "" })).toMatchObject({ ok: true, value: { seq: seq + 1 } });
  }
});

test("whatever is asked meanwhile is answered after the step, and sees all of it", async () => {
  const { seq } = context.open!;
  const before = Object.keys(context.open!.state.jar).length;
  const reached = midway();
  const step = large();
  let acknowledged = false;
  void step.then(() => (acknowledged = true));
  await reached;
  // Each is asked for while half of the step is in the file.
  const after = async (name: string, input: object) => {
    const answer = await call(name, input);
    expect(acknowledged, name).toBe(true);
    if (!answer.ok) throw new Error(`${name}: ${answer.message}`);
    return answer.value;
  };
  const asked = Promise.all([
    after("study.current", {}),
    after("study.since", { afterSeq: seq }),
    after("study.history", { beforeSeq: null, limit: 1 }),
    after("study.historyOf", { kind: "jar", id: "many-0", limit: 5 }),
    after("study.anchor", {}),
    after("draft.keep", { place: "a cell", text: "12.", reason: "" }),
    after("draft.list", {}),
    after("backup.make", {}),
    after("shelf.list", {}),
    after("library.refresh", { step: "start" }),
  ]);
  expect(acknowledged).toBe(false);
  expect(context.open!.seq).toBe(seq);
  const [current, since, history, historyOf, anchor, , drafts] = await asked;
  expect(await step).toMatchObject({ ok: true, value: { seq: seq + 1 } });
  expect(current).toMatchObject({ seq: seq + 1, undo: { seq: seq + 1 } });
  expect(Object.keys((current as Opened).state.jar)).toHaveLength(before + jars);
  expect(since).toMatchObject({ seq: seq + 1, changes: [{ seq: seq + 1 }] });
  expect(history).toMatchObject({ changes: [{ seq: seq + 1 }] });
  expect(historyOf).toMatchObject({ changes: [{ seq: seq + 1 }] });
  expect(anchor).toMatchObject({ changes: seq + 1, whole: true });
  expect(drafts).toMatchObject({ drafts: [{ place: "a cell" }] });
  const [backup] = listBackups(path);
  expect(summarise(backup!.path, now)).toMatchObject({
    ok: true,
    value: { changes: seq + 1, history: "whole" },
  });
});

test("what does not wait its turn is refused by the file itself, and does the step no harm", async () => {
  const { seq, file } = context.open!;
  const reached = midway();
  const step = large();
  await reached;
  expect(() => file.readState()).toThrow();
  expect(() => file.drafts()).toThrow();
  expect(() => file.lastChange()).toThrow();
  expect(file.change(seq + 1)).toBeNull();
  expect(file.keepDraft({ place: "a cell", text: "12.", reason: "" }, now)).toMatchObject({ ok: false });
  expect(await step).toMatchObject({ ok: true, value: { seq: seq + 1 } });
  expect(file.drafts()).toEqual([]);
  expect(file.inspect()).toMatchObject({ integrity: "ok", chain: "whole", changes: seq + 1 });
});

test("a study opened at the system's wish meanwhile waits for the step, which stays in its own file", async () => {
  const { seq } = context.open!;
  const other = join(folder, "other.flocwright");
  const written = writeDemo(other, demoCommands, now);
  if (!written.ok) throw new Error(written.message);
  const reached = midway();
  const step = large();
  await reached;
  const opened = inTurn(context, () => openAtStart(context, other));
  expect(await step).toMatchObject({ ok: true, value: { seq: seq + 1 } });
  expect(await opened).toMatchObject({ ok: true, value: { fileName: "other.flocwright", seq } });
  expect(summarise(path, now)).toMatchObject({ ok: true, value: { changes: seq + 1, history: "whole" } });
});

/** Has an automatic backup begin just before the step is written: such a backup is made beside the calls. */
function backUpBeside(): { steps: string[]; made: () => boolean } {
  const { file } = context.open!;
  const steps: string[] = [];
  let made = false;
  const append = file.appendInSlices.bind(file);
  vi.spyOn(file, "appendInSlices").mockImplementationOnce((...given) => {
    void file.backUp("auto", now).then((outcome) => (made = outcome.ok));
    watchSteps((step) => steps.push(step));
    return append(...given);
  });
  return { steps, made: () => made };
}

test("a large step waits for a backup that is being made, and both come out whole", async () => {
  const { seq } = context.open!;
  const { steps, made } = backUpBeside();
  expect(await large()).toMatchObject({ ok: true, value: { seq: seq + 1 } });
  expect(made()).toBe(true);
  expect(steps.indexOf("backup: named")).toBeGreaterThanOrEqual(0);
  expect(steps.indexOf("write: begun")).toBeGreaterThan(steps.indexOf("backup: named"));
  const [backup] = listBackups(path);
  expect(summarise(backup!.path, now)).toMatchObject({
    ok: true,
    value: { changes: seq, integrity: "ok", history: "whole", notAsHistory: null },
  });
  expect(context.open!.file.inspect()).toMatchObject({ integrity: "ok", chain: "whole", changes: seq + 1 });
});

test("a small edit does not wait for a backup", async () => {
  const { steps } = backUpBeside();
  expect(await edit(11)).toMatchObject({ ok: true });
  expect(steps).toContain("write: committed");
  expect(steps).not.toContain("backup: named");
});

test("closed while a large step waits for a backup: it is answered, and nothing of it stays", async () => {
  const before = stateOf();
  const { seq } = context.open!;
  const { steps } = backUpBeside();
  const step = large();
  const append = vi.mocked(context.open!.file.appendInSlices);
  while (append.mock.calls.length === 0) await new Promise((resolve) => setImmediate(resolve));
  closeContext(context);
  expect(await step).toMatchObject({ ok: false, code: "no-study" });
  expect(steps).not.toContain("write: begun");
  if (!openAtStart(context, path).ok) throw new Error("not opened again");
  expectAsBefore(before, seq);
  expect(await large()).toMatchObject({ ok: true, value: { seq: seq + 1 } });
});

test("a file that is taken away in the middle of the writing: the step is not called saved", async () => {
  const { seq } = context.open!;
  const before = stateOf();
  const away = join(folder, "away");
  atSlice(2, () => renameSync(path, away));
  expect(await large()).toMatchObject({
    ok: false,
    message: expect.stringContaining("moved, deleted or replaced") as string,
  });
  renameSync(away, path);
  expectAsBefore(before, seq);
  expect(await large()).toMatchObject({ ok: true });
});

test("a small edit is written without giving way", async () => {
  const { seq } = context.open!;
  let acknowledged = false;
  void edit(11).then((answer) => (acknowledged = answer.ok));
  await new Promise((resolve) => setImmediate(resolve));
  expect(acknowledged).toBe(true);
  expect(context.open!.seq).toBe(seq + 1);
});

test("a large step's parts and the entries undo would move are told without its being read from the file again", async () => {
  expect(await large(800)).toMatchObject({ ok: true });
  const { file } = context.open!;
  const read = vi.spyOn(file, "change");
  const readInSlices = vi.spyOn(file, "changeInSlices");
  const undone = await call("study.undo", { by: "" });
  if (!undone.ok) throw new Error(undone.message);
  const { changes, redo } = undone.value as Acknowledged;
  expect(redo).toMatchObject({ seq: changes[0]!.seq - 1, left: 3980 });
  expect(changes[0]).toMatchObject({ left: 3980 });
  let count = 0;
  for (let more = true; more;) {
    const part = await call("study.changeParts", { seq: changes[0]!.seq, from: count });
    if (!part.ok) throw new Error(part.message);
    const { commands, more: further } = part.value as { commands: unknown[]; more: boolean };
    count += commands.length;
    more = further;
  }
  expect(count).toBe(4000);
  expect(read).not.toHaveBeenCalled();
  // Only the small entry before it, which undo would move next.
  expect(readInSlices.mock.calls.map(([seq]) => seq)).toEqual([changes[0]!.seq - 2]);
});
