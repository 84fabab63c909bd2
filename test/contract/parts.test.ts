import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, beforeEach, expect, test, vi } from "vitest";
import { createDispatcher } from "../../main/dispatch.ts";
import { closeContext, createContext, openAtStart, type Context } from "../../main/service.ts";
import { wholeStudy } from "../../renderer/stores/whole-study.ts";
import { afterLarge } from "../../renderer/stores/large-change.ts";
import { contract, type Acknowledged, type Opened } from "../../src/contract.ts";
import { describeChange } from "../../src/study/describe.ts";
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

const jarsTogether = (count: number) => ({
  do: "together" as const,
  label: "Add many jars",
  commands: Array.from({ length: count }, (_, i) => ({
    do: "add" as const,
    kind: "jar" as const,
    record: { id: `many-${i}`, seriesId: "series-1", label: `Many ${i}`, order: i + 1 },
  })),
});

test("a large step is told in short, tells its whole count, and is followed by its parts, also when it is undone", async () => {
  const opened = await current();
  const start = context.open!.state;
  const { seq } = opened;
  const command = jarsTogether(4100);
  const answer = await call("study.apply", { command, afterSeq: seq, by: "" });
  if (!answer.ok) throw new Error(answer.message);
  const [change] = (answer.value as Acknowledged).changes;
  expect(change).toMatchObject({ seq: seq + 1, left: 4080 });
  expect((change!.command as typeof command).commands).toHaveLength(20);
  expect(describeChange(change!, null)).toMatch(/4.?100/);
  const added = await afterLarge(start, change!);
  if (!added.ok) throw new Error(added.message);
  expect(added.value.jar).toEqual(context.open!.state.jar);
  expect(made.filter((name) => name === "study.changeParts")).toHaveLength(3);

  const history = await call("study.history", { beforeSeq: null, limit: 1 });
  expect(history).toMatchObject({ ok: true, value: { changes: [{ seq: seq + 1, left: 4080 }] } });
  const undone = await call("study.undo", { by: "" });
  if (!undone.ok) throw new Error(undone.message);
  const [back] = (undone.value as Acknowledged).changes;
  expect(back).toMatchObject({ undoes: seq + 1, left: 4080 });
  const taken = await afterLarge(added.value, back!);
  if (!taken.ok) throw new Error(taken.message);
  expect(taken.value.jar).toEqual(start.jar);
});

test("a step of some hundred parts is told whole to whoever follows it", async () => {
  const { seq } = await current();
  const answer = await call("study.apply", { command: jarsTogether(400), afterSeq: seq, by: "" });
  if (!answer.ok) throw new Error(answer.message);
  const [change] = (answer.value as Acknowledged).changes;
  expect(change!.left).toBeUndefined();
  expect((change!.command as ReturnType<typeof jarsTogether>).commands).toHaveLength(400);
});

test("parts of an entry that has none are refused in words", async () => {
  for (const seq of [1, 999_999])
    expect(await call("study.changeParts", { seq, from: 0 })).toMatchObject({
      ok: false,
      message: expect.stringMatching(/\w+\./) as string,
    });
});

test("a study closed between two parts is a sentence", async () => {
  const opened = await current();
  before = async (name) => {
    if (made.length === 2 && name === "study.records") await call("study.close", {});
  };
  const whole = await wholeStudy(opened);
  expect(whole).toMatchObject({ ok: false, message: expect.stringMatching(/\w+\./) as string });
});
