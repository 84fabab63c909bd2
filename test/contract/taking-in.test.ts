import { createPinia, setActivePinia } from "pinia";
import { afterEach, beforeEach, expect, test, vi } from "vitest";
import { useStudy } from "../../renderer/stores/study.ts";
import type { Opened } from "../../src/contract.ts";
import { emptyState } from "../../src/study/schema/records.ts";

const openedAs = (opening: string, later: Opened["later"]): Opened => ({
  opening,
  fileName: `${opening}.flocwright`,
  readOnlyBecause: null,
  notices: [],
  state: emptyState(),
  later,
  seq: 1,
  savedAt: null,
  undo: null,
  redo: null,
});
/** what the page asked of its host */
let asked: string[] = [];

beforeEach(() => {
  setActivePinia(createPinia());
  asked = [];
  const silent = (name: string) => () => {
    asked.push(name);
    return Promise.reject(new Error("the host has gone"));
  };
  vi.stubGlobal("window", { flocwright: new Proxy({}, { get: (_, name) => silent(String(name)) }) });
});
afterEach(() => vi.unstubAllGlobals());

test("a study that does not come whole is not shown, and what stands there takes no edits for it", async () => {
  const study = useStudy();
  expect(await study.accept(openedAs("first", []))).toBe(true);
  expect(await study.accept(openedAs("second", ["reading"]))).toBe(false);
  expect(asked).toEqual(["study.records"]);
  expect(study.fileName).toBe("first.flocwright");
  expect(study.leftBehind).toBe(true);
  const edit = await study.run({ do: "set", kind: "study", id: "study", fields: { name: "Renamed" } });
  expect(edit).toEqual({ ok: false, message: study.trouble });
  expect(study.trouble).toMatch(/\w+\./);
  expect(asked).not.toContain("study.apply");
});

test("where nothing stands yet, the sentence is all there is", async () => {
  const study = useStudy();
  expect(await study.accept(openedAs("only", ["jar"]))).toBe(false);
  expect(study.isOpen).toBe(false);
  expect(study.leftBehind).toBe(false);
  expect(study.trouble).toMatch(/\w+\./);
});
