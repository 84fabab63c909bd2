import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, expect, test } from "vitest";
import { createDispatcher } from "../../main/dispatch.ts";
import { recentFileName } from "../../main/service/recent.ts";
import { closeContext, createContext, type Context } from "../../main/service.ts";
import type { Opened, OutputOf } from "../../src/contract.ts";

let folder = "";
let context: Context;
let minute = 0;

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "flocwright-recent-"));
  minute = 0;
  context = createContext({
    host: "loopback",
    version: "0",
    now: () => new Date(Date.UTC(2026, 0, 1, 0, minute++)).toISOString(),
    folder,
    recentFile: join(folder, recentFileName),
    dialogs: null,
  });
});
afterEach(() => {
  closeContext(context);
  rmSync(folder, { recursive: true, force: true });
});

async function call<T>(name: string, input: object): Promise<T> {
  const answer = await createDispatcher(context)(name, input);
  if (!answer.ok) throw new Error(answer.message);
  return answer.value as T;
}
const recent = async () => (await call<OutputOf<"recent.list">>("recent.list", {})).entries;

test("the list says what each study is about and how far it had come when it was left, newest first", async () => {
  expect(await recent()).toEqual([]);
  const one = await call<Opened>("study.create", { name: "One", by: "" });
  expect((await recent())[0]).toMatchObject({
    name: "One",
    about: "",
    standing: "nothing entered yet",
    lost: null,
  });
  await call("study.apply", {
    command: { do: "add", kind: "stream", record: { id: "st", label: "Line 4" } },
    afterSeq: one.seq,
    by: "",
  });
  await call("study.createDemo", {});
  const entries = await recent();
  expect(entries.map(({ name }) => name)).toEqual(["Demo: blended sludge, line 2", "One"]);
  expect(entries[0]).toMatchObject({
    about: "Blended sludge, line 2 · Flocculant E-42 (invented) · Coagulant C-40 (invented)",
    standing: "24 jars in 2 series; dose approved by Jon R.",
  });
  // what was entered before it was left is in it
  expect(entries[1]).toMatchObject({ about: "Line 4" });
  expect(entries[0]!.openedAt > entries[1]!.openedAt).toBe(true);
  await call("study.open", { ref: entries[1]!.ref });
  expect((await recent()).map(({ name }) => name)).toEqual(["One", "Demo: blended sludge, line 2"]);
});

test("a study whose file is gone says so, does not open, and can be taken off; others stay", async () => {
  await call("study.create", { name: "Gone", by: "" });
  await call("study.create", { name: "Here", by: "" });
  rmSync(join(folder, "Gone.flocwright"));
  const [here, gone] = await recent();
  expect([here!.lost, gone!.lost]).toEqual([null, expect.stringContaining("not there any more")]);
  expect(await createDispatcher(context)("study.open", { ref: gone!.ref })).toMatchObject({ ok: false });
  const after = await call<OutputOf<"recent.list">>("recent.forget", { ref: gone!.ref });
  expect(after.entries.map(({ name }) => name)).toEqual(["Here"]);
  await call("recent.forget", { ref: here!.ref });
  await call("study.close", {});
  expect(await recent()).toEqual([]);
  expect(existsSync(join(folder, "Here.flocwright"))).toBe(true);
});

test("a spoilt list is an empty one, never a reason not to open a study", async () => {
  const file = join(folder, recentFileName);
  for (const text of ["{", "[]]", '[{"path":1}]', '["x"]', "null", `["${"x".repeat(300_000)}"]`]) {
    writeFileSync(file, text);
    expect(await recent()).toEqual([]);
  }
  rmSync(file);
  await call("study.create", { name: "After", by: "" });
  expect(readFileSync(file, "utf8")).toContain("After");
});

test("the list is kept short", async () => {
  for (let i = 0; i < 13; i++) await call("study.create", { name: `Study ${i}`, by: "" });
  const entries = await recent();
  expect(entries).toHaveLength(10);
  expect(entries[0]!.name).toBe("Study 12");
});

test("the line of each study is made in the language spoken when it is shown, and a line of an earlier version stays", async () => {
  await call("study.create", { name: "One", by: "" });
  await call("host.speak", { language: "german", chosen: false });
  expect((await recent())[0]).toMatchObject({ standing: "noch nichts eingetragen" });
  const demo = await call<Opened>("study.createDemo", {});
  expect(demo.fileName).toBe("Beispiel (erfunden).flocwright");
  expect((await recent())[0]).toMatchObject({
    name: "Beispiel: Mischschlamm, Straße 2",
    standing: "24 Becher in 2 Reihen; Dosis freigegeben von Jon R.",
  });
  await call("host.speak", { language: "english", chosen: false });
  expect((await recent())[0]).toMatchObject({ standing: "24 jars in 2 series; dose approved by Jon R." });
  // Made in English it is a file of its own, and the German one is left as it is.
  expect((await call<Opened>("study.createDemo", {})).fileName).toBe("Demo (invented).flocwright");

  const file = join(folder, recentFileName);
  const kept = JSON.parse(readFileSync(file, "utf8")) as { standing: unknown }[];
  kept[0]!.standing = "3 jars in 1 series, no dose approved yet";
  writeFileSync(file, JSON.stringify(kept));
  expect((await recent())[0]).toMatchObject({ standing: "3 jars in 1 series, no dose approved yet" });
});
