import { rmSync } from "node:fs";
import { afterEach, beforeEach, expect, test } from "vitest";
import { openedDemo } from "./demo-context.ts";
import type { createDispatcher } from "../../main/dispatch.ts";
import { closeContext, openAtStart, type Context } from "../../main/service.ts";
import type { Acknowledged } from "../../src/contract.ts";

let folder: string;
let context: Context;
let call: ReturnType<typeof createDispatcher>;
let seq: number;
beforeEach(() => {
  ({ folder, context, call } = openedDemo());
  seq = context.open!.seq;
});
afterEach(() => {
  closeContext(context);
  rmSync(folder, { recursive: true, force: true });
});

async function edit(by: string, fields: object): Promise<void> {
  const answer = await call("study.apply", {
    command: { do: "set", kind: "jar", id: "jar-1-04", fields },
    afterSeq: seq,
    by,
  });
  if (!answer.ok) throw new Error(answer.message);
  seq = (answer.value as Acknowledged).seq;
}

/** Approves a dose as the last step, as the screens do. */
async function approve(): Promise<void> {
  const answer = await call("study.apply", {
    command: {
      do: "add",
      kind: "decision",
      record: { ...context.open!.state.decision["decision-1"]!, id: "decision-9", byName: "Jon R." },
    },
    afterSeq: seq,
    by: "Jon R.",
  });
  if (!answer.ok) throw new Error(answer.message);
  seq = (answer.value as Acknowledged).seq;
}

test("an approved dose is not undone, by nobody and not by its approver", async () => {
  await approve();
  for (const by of ["", "Jon R.", "Mara T."])
    expect(await call("study.undo", { by })).toMatchObject({
      ok: false,
      code: "refused",
      message: expect.stringContaining("withdraw it with a reason") as string,
    });
  expect(context.open!.seq).toBe(seq);
});

test("another person's step is undone by them alone; one's own steps come back in order, across a reopening", async () => {
  await approve();
  await edit("Mara T.", { syringeAMl: 11 });
  await edit("Mara T.", { syringeAMl: 12 });
  expect(await call("study.undo", { by: "Jon R." })).toMatchObject({
    ok: false,
    message: "The last step was made by Mara T.: only they undo it.",
  });
  const { path } = context.open!.file;
  closeContext(context);
  openAtStart(context, path);
  expect((await call("study.undo", { by: "Mara T." })).ok).toBe(true);
  expect(context.open!.state.jar["jar-1-04"]!.syringeAMl).toBe(11);
  expect((await call("study.undo", { by: "Mara T." })).ok).toBe(true);
  expect(context.open!.state.jar["jar-1-04"]!.syringeAMl).toBe(18.6);
  // and there the approval stands in the way
  expect((await call("study.undo", { by: "Mara T." })).ok).toBe(false);
  expect((await call("study.redo", { by: "Mara T." })).ok).toBe(true);
  expect(context.open!.state.jar["jar-1-04"]!.syringeAMl).toBe(11);
});

test("an approval cannot be changed, only withdrawn with a reason; a later edit leaves its snapshot alone", async () => {
  const before = JSON.stringify(context.open!.state.decision["decision-1"]);
  const change = await call("study.apply", {
    command: { do: "set", kind: "decision", id: "decision-1", fields: { doseAKgPerT: 4 } },
    afterSeq: seq,
    by: "Jon R.",
  });
  expect(change).toMatchObject({
    ok: false,
    message: expect.stringContaining("never changed") as string,
  });
  await edit("Mara T.", { syringeAMl: 11 });
  expect(JSON.stringify(context.open!.state.decision["decision-1"])).toBe(before);
});
