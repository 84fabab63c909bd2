import fc from "fast-check";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { createDispatcher } from "../../main/dispatch.ts";
import { closeContext, createContext, handlers, type Context } from "../../main/service.ts";
import { contract } from "../../src/contract.ts";

let folder = "";
let context: Context;
let call: ReturnType<typeof createDispatcher>;
let tick = 0;

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), "flocwright-contract-"));
  context = createContext({
    host: "loopback",
    version: "0",
    now: () => new Date(Date.UTC(2026, 0, 1) + tick++ * 1000).toISOString(),
    folder,
    dialogs: null,
  });
  call = createDispatcher(context);
  expect(await call("study.createDemo", {})).toMatchObject({ ok: true });
});
afterAll(() => {
  closeContext(context);
  rmSync(folder, { recursive: true, force: true });
});

test("every call of the contract has its handler, and there is no other", () => {
  expect(Object.keys(handlers).sort()).toEqual(Object.keys(contract).sort());
});

test("refusals are in the language that was asked for, down to what the disk says", async () => {
  const refusals = async () => {
    const other = createDispatcher(createContext({ ...context.support, folder: join(folder, "none") }));
    const file = join(folder, "no.flocwright");
    writeFileSync(file, "");
    const list = (await call("shelf.list", {})) as { value: { entries: { trouble: string | null }[] } };
    rmSync(file);
    return [
      ((await other("study.anchor", {})) as { message: string }).message,
      list.value.entries.flatMap(({ trouble }) => trouble ?? []),
    ];
  };
  expect(await call("host.speak", { language: "german", chosen: false })).toMatchObject({ ok: true });
  expect(await refusals()).toEqual([
    "Es ist keine Studie geöffnet.",
    ["Diese Datei ist leer. Sie bleibt, wie sie ist."],
  ]);
  expect(await call("host.speak", { language: "english", chosen: false })).toMatchObject({ ok: true });
  expect(await refusals()).toEqual(["No study is open.", ["This file is empty. It is left as it is."]]);
});

const seqNow = async () =>
  ((await call("study.current", {})) as { ok: true; value: { seq: number } }).value.seq;

test("edit, undo, redo: each durable, each an entry of its own", async () => {
  const command = { do: "set", kind: "jar", id: "jar-1-02", fields: { syringeAMl: 13 } };
  const before = await seqNow();
  expect(await call("study.apply", { command, afterSeq: before, by: "A" })).toMatchObject({
    ok: true,
    value: { seq: before + 1 },
  });
  expect(await call("study.apply", { command, afterSeq: before, by: "A" })).toMatchObject({
    ok: false,
    code: "stale",
  });
  expect(await call("study.undo", { by: "B" })).toMatchObject({
    ok: false,
    message: expect.stringContaining("made by A") as string,
  });
  expect(await call("study.undo", { by: "A" })).toMatchObject({
    ok: true,
    value: { changes: [{ undoes: before + 1 }] },
  });
  expect(await call("study.redo", { by: "A" })).toMatchObject({
    ok: true,
    value: { changes: [{ redoes: before + 1 }] },
  });
  expect(await call("study.redo", { by: "A" })).toMatchObject({
    ok: false,
    message: "There is nothing to redo.",
  });
  expect(await call("study.undo", { by: "A" })).toMatchObject({ ok: true });
});

test("an approved dose is neither changed nor undone", async () => {
  const fields = { doseAKgPerT: 9 };
  expect(
    await call("study.apply", {
      command: { do: "set", kind: "decision", id: "decision-1", fields },
      afterSeq: await seqNow(),
      by: "",
    }),
  ).toMatchObject({ ok: false, message: expect.stringContaining("never changed") as string });
});

test("records that break a rule are refused in words", async () => {
  const refuse = async (command: object) => {
    const answer = await call("study.apply", { command, afterSeq: await seqNow(), by: "" });
    return answer.ok ? "accepted" : answer.message;
  };
  expect(await refuse({ do: "set", kind: "dish", id: "dish-1", fields: { dryG: 99 } })).toMatch(
    /must weigh more than/,
  );
  expect(await refuse({ do: "set", kind: "dish", id: "dish-1", fields: { dryG: -5 } })).toMatch(
    /must be above 0/,
  );
  expect(await refuse({ do: "remove", kind: "sample", id: "sample-1" })).toMatch(/is used by/);
  expect(await refuse({ do: "set", kind: "jar", id: "jar-1-01", fields: { label: "2" } })).toMatch(
    /already a jar called/,
  );
  expect(await refuse({ do: "set", kind: "jar", id: "jar-1-02", fields: { syringeAMl: 500 } })).toMatch(
    /four fills/,
  );
  expect(await refuse({ do: "set", kind: "jar", id: "nobody", fields: {} })).toMatch(
    /no longer in the study/,
  );
  expect(
    await refuse({ do: "add", kind: "jar", record: { id: "j9", seriesId: "nowhere", label: "x", order: 1 } }),
  ).toMatch(/not in the study/);
});

describe("fuzz", () => {
  test("no input of any shape crashes a call, and no refused one changes the study", async () => {
    const anything = fc.anything({
      maxDepth: 3,
      withBigInt: false,
      withDate: false,
      withNullPrototype: true,
    });
    const before = await seqNow();
    await fc.assert(
      fc.asyncProperty(
        fc.constantFrom(
          ...Object.keys(contract).filter((name) => !/close|create|saveAs|open|undo|redo/.test(name)),
        ),
        anything,
        async (name, input) => {
          const answer = await call(name, input);
          if (!answer.ok) {
            expect(answer.message.length).toBeGreaterThan(3);
            expect(answer.message).not.toMatch(/\bat \S+:\d+|node_modules/);
          }
        },
      ),
      { numRuns: 1500 },
    );
    expect(await call("__proto__", {})).toMatchObject({ ok: false, code: "bad-input" });
    expect(await call("constructor", {})).toMatchObject({ ok: false, code: "bad-input" });
    expect(await seqNow()).toBe(before);
  });
  test("commands of any shape are applied whole or refused whole", async () => {
    const before = JSON.stringify(await call("study.current", {}));
    const part = fc.record({
      do: fc.constantFrom("add", "set", "remove", "together", "destroy"),
      kind: fc.constantFrom("jar", "reading", "study", "__proto__", "nothing"),
      id: fc.constantFrom("jar-1-01", "__proto__", "constructor", ""),
      fields: fc.dictionary(
        fc.constantFrom("label", "order", "__proto__", "id", "wild", "syringeAMl"),
        fc.anything({ maxDepth: 2 }),
      ),
      record: fc.dictionary(fc.string(), fc.anything({ maxDepth: 1 })),
    });
    let accepted = 0;
    await fc.assert(
      fc.asyncProperty(part, async (command) => {
        const answer = await call("study.apply", { command, afterSeq: await seqNow(), by: "" });
        if (answer.ok) {
          accepted += 1;
          expect(await call("study.undo", { by: "" })).toMatchObject({ ok: true });
        }
      }),
      { numRuns: 600 },
    );
    const after = (await call("study.current", {})) as { value: { state: unknown } };
    expect(JSON.stringify(after.value.state)).toBe(
      JSON.stringify((JSON.parse(before) as { value: { state: unknown } }).value.state),
    );
    expect(accepted).toBeLessThan(600);
  });
});

test("a paper's anchor is the head of the history that inspect walks", async () => {
  const before = await call("study.anchor", {});
  expect(before).toMatchObject({
    ok: true,
    value: { changes: await seqNow(), whole: true, head: expect.stringMatching(/^[0-9a-f]{64}$/) as string },
  });
  const command = { do: "set", kind: "jar", id: "jar-1-03", fields: { note: "anchored" } };
  expect(await call("study.apply", { command, afterSeq: await seqNow(), by: "A" })).toMatchObject({
    ok: true,
  });
  const after = await call("study.anchor", {});
  expect(after).toMatchObject({ ok: true, value: { changes: await seqNow(), whole: true } });
  expect((after as { value: { head: string } }).value.head).not.toBe(
    (before as { value: { head: string } }).value.head,
  );
});

test("a host that cannot write a PDF says so, and what to do instead", async () => {
  expect(await call("host.about", {})).toMatchObject({ value: { savesPdf: false } });
  expect(await call("paper.savePdf", { name: "Sheet", paperSize: "A4" })).toMatchObject({
    ok: false,
    code: "refused",
    message: expect.stringMatching(/print, and choose PDF/) as string,
  });
});
