import { rmSync } from "node:fs";
import { afterEach, beforeEach, expect, test, vi } from "vitest";
import { openedDemo } from "./demo-context.ts";
import type { createDispatcher } from "../../main/dispatch.ts";
import { closeContext, openAtStart, type Context } from "../../main/service.ts";
import { importOf } from "../bench/host-step.ts";

const jars = 2000;
let folder: string;
let path: string;
let context: Context;
let call: ReturnType<typeof createDispatcher>;
beforeEach(() => {
  ({ folder, path, context, call } = openedDemo());
  // However quick the machine is, every slice has lasted long enough to give way after it.
  let clock = 0;
  vi.spyOn(performance, "now").mockImplementation(() => (clock += 1000));
});
afterEach(() => {
  vi.restoreAllMocks();
  closeContext(context);
  rmSync(folder, { recursive: true, force: true });
});

const largeStep = (afterSeq: number) =>
  call("study.apply", {
    command: { do: "together", label: "many", commands: importOf(jars) },
    afterSeq,
    by: "",
    brief: true,
  });
const edit = (afterSeq: number) =>
  call("study.apply", {
    command: { do: "set", kind: "jar", id: "jar-1-04", fields: { syringeAMl: 21.5 } },
    afterSeq,
    by: "",
  });

/** Counts how often the event loop comes round until the work is done. */
async function rounds(work: Promise<unknown>): Promise<number> {
  let under = true;
  void work.finally(() => (under = false));
  let count = 0;
  while (under) {
    await new Promise((resolve) => setImmediate(resolve));
    count += 1;
  }
  return count;
}

test("a large step gives way between its slices, and edits that arrive meanwhile wait their turn", async () => {
  const { seq } = context.open!;
  const before = Object.keys(context.open!.state.jar).length;
  const large = largeStep(seq);
  // An edit that had not seen the step is refused as stale, as ever; one made on top of it follows it.
  const stale = edit(seq);
  const after = edit(seq + 1);
  const undone = call("study.undo", { by: "" });
  // A step that is applied in one go comes round a few times; this one once for each 200 records.
  expect(await rounds(large)).toBeGreaterThan((jars * 5) / 200);
  expect(await large).toMatchObject({ ok: true, value: { seq: seq + 1, changes: [] } });
  expect(await stale).toMatchObject({ ok: false, code: "stale" });
  expect(await after).toMatchObject({ ok: true, value: { seq: seq + 2 } });
  expect(await undone).toMatchObject({ ok: true, value: { seq: seq + 3 } });
  expect(Object.keys(context.open!.state.jar).length).toBe(before + jars);
  // The large step is taken back as one, in slices too.
  expect(await rounds(call("study.undo", { by: "" }))).toBeGreaterThan((jars * 5) / 200);
  expect(Object.keys(context.open!.state.jar).length).toBe(before);
  expect(context.open!.file.inspect()).toMatchObject({ integrity: "ok", chain: "whole", changes: seq + 4 });
});

test("a study that the host closes while a step is being applied keeps nothing of it", async () => {
  const { seq } = context.open!;
  const large = largeStep(seq);
  await new Promise((resolve) => setImmediate(resolve));
  closeContext(context);
  expect(await large).toMatchObject({ ok: false, code: "no-study" });
  if (!openAtStart(context, path).ok) throw new Error("not opened again");
  expect(context.open!.seq).toBe(seq);
  expect(context.open!.file.inspect()).toMatchObject({ integrity: "ok", chain: "whole", changes: seq });
});
