import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, expect, test } from "vitest";
import { createDispatcher } from "../../main/dispatch.ts";
import { closeContext, createContext, type Context } from "../../main/service.ts";
import { contract, type Opened } from "../../src/contract.ts";

let folder = "";
let context: Context;
let call: ReturnType<typeof createDispatcher>;

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), "flocwright-opening-"));
  context = createContext({
    host: "loopback",
    version: "0",
    now: () => "2026-01-01T00:00:00Z",
    folder,
    dialogs: null,
  });
  call = createDispatcher(context);
});
afterAll(() => {
  closeContext(context);
  rmSync(folder, { recursive: true, force: true });
});

async function opened(name: string, input: object): Promise<Opened> {
  const answer = await call(name, input);
  if (!answer.ok) throw new Error(answer.message);
  return answer.value as Opened;
}

test("a window that shows another opening of a study can neither edit nor follow nor close what is open now", async () => {
  const first = await opened("study.create", { name: "One", by: "" });
  const edit = (afterSeq: number) => ({
    command: { do: "set", kind: "study", id: "study", fields: { name: "Renamed" } },
    afterSeq,
    by: "",
  });
  expect(await call("study.apply", edit(first.seq), first.opening)).toMatchObject({ ok: true });
  const second = await opened("study.create", { name: "Two", by: "" });
  expect(second.opening).not.toBe(first.opening);

  const inputs: Record<string, object> = {
    "study.apply": edit(second.seq),
    "study.undo": { by: "" },
    "study.redo": { by: "" },
    "study.since": { afterSeq: first.seq },
    "study.history": { beforeSeq: null, limit: 10 },
    "study.saveAs": { name: "Three" },
    "study.close": {},
    "draft.list": {},
    "draft.keep": { place: "jar j1 turbidity", text: "12", reason: "" },
    "draft.drop": { place: "jar j1 turbidity" },
  };
  for (const [name, input] of Object.entries(inputs))
    for (const stale of [first.opening, "", "x", 7, {}])
      expect(await call(name, input, stale), name).toMatchObject({
        ok: false,
        code: "no-study",
        message: expect.stringMatching(/Another window/) as string,
      });
  const now = await opened("study.current", {});
  expect(now.opening).toBe(second.opening);
  expect(now.seq).toBe(second.seq);
  expect(now.state.study["study"]?.name).toBe("Two");
  expect(await call("draft.list", {}, second.opening)).toMatchObject({ ok: true, value: { drafts: [] } });
});

test("only calls that choose or list studies may be made from a window that shows another opening", async () => {
  const free: string[] = [];
  for (const name of Object.keys(contract)) {
    // No input is right for every call; what counts is whether the opening is looked at before it.
    const answer = await call(name, { wrong: true }, "of another day");
    if (answer.ok || answer.code !== "no-study") free.push(name);
  }
  expect(free).toEqual([
    "host.about",
    "host.speak",
    "shelf.list",
    "recent.list",
    "recent.forget",
    "study.create",
    "study.createDemo",
    "study.open",
    "study.choose",
    "study.current",
  ]);
});

test("opening the file that is open already is the same opening; closing and opening it again is another", async () => {
  const list = await call("shelf.list", {});
  if (!list.ok) throw new Error(list.message);
  const { entries } = list.value as { entries: { ref: string; fileName: string }[] };
  const { ref } = entries.find(({ fileName }) => fileName === "Two.flocwright")!;
  const before = await opened("study.current", {});
  expect((await opened("study.open", { ref })).opening).toBe(before.opening);
  expect(await call("study.close", {}, before.opening)).toMatchObject({ ok: true });
  expect((await opened("study.open", { ref })).opening).not.toBe(before.opening);
});
