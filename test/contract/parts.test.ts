import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, beforeEach, expect, test, vi } from "vitest";
import { createDispatcher } from "../../main/dispatch.ts";
import { closeContext, createContext, openAtStart, type Context } from "../../main/service.ts";
import { wholeStudy } from "../../renderer/stores/whole-study.ts";
import { contract, type Opened } from "../../src/contract.ts";
import { writeLargeStudy } from "../bench/large-study.ts";

let folder = "";
let context: Context;
let call: ReturnType<typeof createDispatcher>;
/** the calls that the page made, and what is done before each is answered */
let made: string[] = [];
let before: (name: string) => Promise<void> = () => Promise.resolve();

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), "flocwright-parts-"));
  const path = join(folder, "large.flocwright");
  const now = "2026-01-01T00:00:00Z";
  writeLargeStudy(path, { series: 40, jarsPerSeries: 50, changes: 7500 }, now);
  context = createContext({ host: "loopback", version: "0", now: () => now, folder, dialogs: null });
  expect(openAtStart(context, path)).toMatchObject({ ok: true });
  call = createDispatcher(context);
  // The page's calls as the desktop window makes them.
  const bridge = Object.fromEntries(
    Object.keys(contract).map((name) => [
      name,
      async (input: unknown, opening: string | null) => {
        await before(name);
        made.push(name);
        return call(name, input, opening);
      },
    ]),
  );
  vi.stubGlobal("window", { flocwright: bridge });
});
beforeEach(() => {
  made = [];
  before = () => Promise.resolve();
});
afterAll(() => {
  vi.unstubAllGlobals();
  closeContext(context);
  rmSync(folder, { recursive: true, force: true });
});

async function current(): Promise<Opened> {
  const answer = await call("study.current", {});
  if (!answer.ok) throw new Error(answer.message);
  return answer.value as Opened;
}

const edit = async (name: string) =>
  call("study.apply", {
    command: { do: "set", kind: "study", id: "study", fields: { name } },
    afterSeq: (await current()).seq,
    by: "",
  });

test("a large study is opened without its large tables, and no part of them holds more than a part", async () => {
  const opened = await current();
  expect(opened.later).toEqual(["jar", "reading"]);
  expect(Object.keys(opened.state.reading)).toEqual([]);
  expect(Object.keys(opened.state.series).length).toBeGreaterThan(40);
  const answer = await call("study.records", { kind: "reading", seq: opened.seq, from: 0 });
  expect(answer).toMatchObject({ ok: true, value: { more: true } });
  expect((answer as { value: { records: unknown[] } }).value.records).toHaveLength(1500);
});

test("its parts put together are the study, record for record and in its order", async () => {
  const whole = await wholeStudy(await current());
  if (!whole.ok) throw new Error(whole.message);
  expect(whole.value.later).toEqual([]);
  expect(JSON.stringify(whole.value.state)).toBe(JSON.stringify(context.open!.state));
  expect(made.filter((name) => name === "study.records").length).toBeGreaterThan(4);
});

test("an edit between two parts begins the fetching anew, and nothing is mixed", async () => {
  const opened = await current();
  let edited = false;
  before = async (name) => {
    if (edited || made.length < 2 || name !== "study.records") return;
    edited = true;
    expect(await edit("Edited meanwhile")).toMatchObject({ ok: true });
  };
  const whole = await wholeStudy(opened);
  if (!whole.ok) throw new Error(whole.message);
  expect(made).toContain("study.current");
  expect(whole.value.seq).toBe(opened.seq + 1);
  expect(whole.value.state.study["study"]?.name).toBe("Edited meanwhile");
  expect(JSON.stringify(whole.value.state)).toBe(JSON.stringify(context.open!.state));
});

test("a study closed between two parts is a sentence", async () => {
  const opened = await current();
  before = async (name) => {
    if (made.length === 2 && name === "study.records") await call("study.close", {});
  };
  const whole = await wholeStudy(opened);
  expect(whole).toMatchObject({ ok: false, message: expect.stringMatching(/\w+\./) as string });
});
