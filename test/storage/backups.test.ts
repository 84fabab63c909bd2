import {
  copyFileSync,
  existsSync,
  mkdtempSync,
  readFileSync,
  rmSync,
  statSync,
  truncateSync,
  writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import fc from "fast-check";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { createDispatcher } from "../../main/dispatch.ts";
import { closeContext, createContext, openAtStart, type Context } from "../../main/service.ts";
import { summarise, writeDemo } from "../../main/service/standalone.ts";
import { backupFolder, listBackups } from "../../main/storage/backups.ts";
import { backupReasons, thinned, type BackupName } from "../../main/storage/thinning.ts";
import type { Opened, OutputOf } from "../../src/contract.ts";
import { demoCommands } from "../../src/study/demo.ts";

let folder: string;
let path: string;
let clock: number;
let context: Context;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "flocwright-backups-"));
  path = join(folder, "study.flocwright");
  clock = Date.parse("2026-03-01T12:00:00.000Z");
  const written = writeDemo(path, demoCommands, new Date(clock).toISOString());
  if (!written.ok) throw new Error(written.message);
  context = createContext({
    host: "loopback",
    version: "0",
    folder,
    dialogs: null,
    now: () => new Date(clock).toISOString(),
  });
});
afterEach(() => {
  closeContext(context);
  rmSync(folder, { recursive: true, force: true });
});

async function call<T>(name: string, input: unknown): Promise<T> {
  const answer = await createDispatcher(context)(name, input);
  if (!answer.ok) throw new Error(answer.message);
  return answer.value as T;
}
const refusal = async (name: string, input: unknown) => {
  const answer = await createDispatcher(context)(name, input);
  return answer.ok ? "" : answer.message;
};
const edit = (seq: number, syringeAMl: number) =>
  call("study.apply", {
    command: { do: "set", kind: "jar", id: "jar-1-04", fields: { syringeAMl } },
    afterSeq: seq,
    by: "",
  });
const open = (): Opened => {
  const opened = openAtStart(context, path);
  if (!opened.ok) throw new Error(opened.message);
  return opened.value;
};
const syringe = (opened: Opened) => opened.state.jar["jar-1-04"]!.syringeAMl;
type Entries = OutputOf<"backup.list">;

test("a backup is made after 25 changes, after ten minutes with a change, and on closing", async () => {
  const { seq } = open();
  for (let i = 0; i < 24; i++) await edit(seq + i, i + 1);
  expect(listBackups(path)).toHaveLength(0);
  await edit(seq + 24, 25);
  await expect.poll(() => listBackups(path).length).toBe(1);
  await expect.poll(() => context.open!.backup.running).toBe(false);
  clock += 11 * 60_000;
  await edit(seq + 25, 26);
  await expect.poll(() => listBackups(path).length).toBe(2);
  await expect.poll(() => context.open!.backup.running).toBe(false);
  await edit(seq + 26, 27);
  clock += 1000;
  closeContext(context);
  expect(listBackups(path)).toHaveLength(3);
  for (const backup of listBackups(path)) {
    expect(backup.trouble).toBeNull();
    expect(summarise(backup.path, context.support.now())).toMatchObject({
      ok: true,
      value: { integrity: "ok", history: "whole" },
    });
  }
});

test("restoring brings the study back, and can itself be taken back", async () => {
  const { seq } = open();
  await call("backup.make", {});
  clock += 1000;
  await edit(seq, 33);
  const before = (await call<Entries>("backup.list", {})).entries;
  expect(before.map(({ reason }) => reason)).toEqual(["by-hand"]);
  const restored = await call<Opened>("backup.restore", { ref: before[0]!.ref });
  expect(syringe(restored)).toBe(18.6);
  expect(restored.seq).toBe(seq);
  clock += 1000;
  const after = (await call<Entries>("backup.list", {})).entries;
  expect(after[0]!.reason).toBe("before-restore");
  const back = await call<Opened>("backup.restore", { ref: after[0]!.ref });
  expect(syringe(back)).toBe(33);
  // work goes on in the restored file, under its lock
  await edit(back.seq, 34);
  expect(existsSync(`${path}.lock`)).toBe(true);
  expect(await refusal("backup.restore", { ref: "nothing" })).toMatch(/no longer there/);
});

test("a study that does not open offers its backups, and its bytes are set aside", async () => {
  const { seq } = open();
  await call("backup.make", {});
  await edit(seq, 33);
  closeContext(context);
  clock += 1000;
  const bytes = readFileSync(path);
  bytes.fill(0x55, 4096, 4096 + 3000);
  writeFileSync(path, bytes);
  const shelf = await call<OutputOf<"shelf.list">>("shelf.list", {});
  const { ref } = shelf.entries[0]!;
  expect(await refusal("study.open", { ref })).toMatch(/damaged/);
  const { entries } = await call<Entries>("shelf.backups", { ref });
  const newest = entries.find(({ reason }) => reason === "auto")!;
  const opened = await call<Opened>("shelf.restore", { ref, backup: newest.ref });
  expect(syringe(opened)).toBe(33);
  const aside = listBackups(path).find(({ reason }) => reason === "damaged")!;
  expect(readFileSync(aside.path).equals(bytes)).toBe(true);
});

describe("what can still be read of a damaged study is saved beside it", () => {
  const salvaged = async () => {
    const shelf = await call<OutputOf<"shelf.list">>("shelf.list", {});
    const entry = shelf.entries.find(({ fileName }) => fileName === "study.flocwright")!;
    return call<OutputOf<"shelf.salvage">>("shelf.salvage", { ref: entry.ref });
  };
  test("every page in turn spoilt: the study opens, or its rest is saved, and the damaged file stays as it is", async () => {
    const good = readFileSync(path);
    const pages = good.length / 4096;
    let saved = 0;
    let hopeless = 0;
    for (let page = 1; page < pages; page++) {
      const bytes = Buffer.from(good);
      bytes.fill(0xa7, page * 4096 + 8, page * 4096 + 4096);
      writeFileSync(path, bytes);
      const shelf = await call<OutputOf<"shelf.list">>("shelf.list", {});
      const entry = shelf.entries.find(({ fileName }) => fileName === "study.flocwright")!;
      const answer = await createDispatcher(context)("shelf.salvage", { ref: entry.ref });
      expect(readFileSync(path).equals(bytes)).toBe(true);
      if (answer.ok) {
        const { opened, fromRecords, fromHistory } = answer.value as OutputOf<"shelf.salvage">;
        saved += 1;
        expect(fromRecords + fromHistory).toBeGreaterThan(0);
        expect(Object.keys(opened.state.jar).length).toBeGreaterThan(0);
      } else hopeless += 1;
      closeContext(context);
    }
    // one page of many holds the root of everything: the others leave most of the study to be read
    expect(saved).toBeGreaterThan(pages * 0.8);
    expect(hopeless).toBeLessThan(pages * 0.2);
  }, 120_000);
  test("a file cut short", async () => {
    truncateSync(path, Math.floor(statSync(path).size * 0.6));
    const { opened, fromRecords, fromHistory } = await salvaged();
    expect(fromRecords + fromHistory).toBeGreaterThan(20);
    expect(opened.fileName).toBe("study (saved).flocwright");
    expect(existsSync(path)).toBe(true);
  });
});

test("an older study is upgraded in one go, with its bytes kept; a read-only look leaves it alone", async () => {
  const old = join(import.meta.dirname, "files", "format-1.study");
  rmSync(path);
  copyFileSync(old, path);
  const before = readFileSync(path);
  expect(summarise(path, context.support.now())).toMatchObject({
    ok: true,
    value: { jars: 24, history: "whole" },
  });
  expect(readFileSync(path).equals(before)).toBe(true);
  const opened = open();
  expect(opened.notices.join(" ")).toMatch(/written by an older Flocwright \(format 1\)/);
  expect(readFileSync(listBackups(path)[0]!.path).equals(before)).toBe(true);
  const { changes } = await call<OutputOf<"study.historyOf">>("study.historyOf", {
    kind: "jar",
    id: "jar-1-04",
    limit: 5,
  });
  expect(changes).toHaveLength(1);
  await edit(opened.seq, 12);
  const later = await call<OutputOf<"study.historyOf">>("study.historyOf", {
    kind: "jar",
    id: "jar-1-04",
    limit: 5,
  });
  expect(later.changes).toHaveLength(2);
});

describe("thinning", () => {
  const backup = fc.record({
    minutesAgo: fc.integer({ min: 0, max: 60 * 24 * 500 }),
    reason: fc.constantFrom(...backupReasons),
  });
  const now = "2026-03-01T12:00:00.000Z";
  const named = (list: { minutesAgo: number; reason: BackupName["reason"] }[]): BackupName[] =>
    list.map(({ minutesAgo, reason }, i) => ({
      name: `${i}`,
      at: new Date(Date.parse(now) - minutesAgo * 60_000 - i).toISOString(),
      reason,
    }));
  test("keeps the newest eight, every damaged original, and at least one of each day of the last month", () => {
    fc.assert(
      fc.property(fc.array(backup, { maxLength: 120 }), (list) => {
        const all = named(list);
        const gone = new Set(thinned(all, now).map(({ name }) => name));
        const left = all.filter(({ name }) => !gone.has(name));
        const newest = [...all].sort((a, b) => (a.at < b.at ? 1 : -1)).slice(0, 8);
        expect(newest.every(({ name }) => !gone.has(name))).toBe(true);
        expect(all.every(({ name, reason }) => reason !== "damaged" || !gone.has(name))).toBe(true);
        const days = (some: BackupName[]) =>
          new Set(
            some
              .filter(({ at }) => Date.parse(now) - Date.parse(at) < 31 * 86_400_000)
              .map(({ at }) => at.slice(0, 10)),
          );
        expect(days(left)).toEqual(days(all));
        // thinning twice thins no more
        expect(thinned(left, now)).toEqual([]);
      }),
      { seed: 3, numRuns: 200 },
    );
  });
  test("dense of late, sparse of old: a backup every ten minutes for two months comes down to under a hundred", () => {
    const all = named(
      Array.from({ length: 6 * 24 * 60 }, (_, i) => ({ minutesAgo: i * 10, reason: "auto" as const })),
    );
    const left = all.length - thinned(all, now).length;
    expect(left).toBeLessThan(100);
    expect(left).toBeGreaterThan(50);
  });
});

test("a backup is not opened to be worked on: it would be a backup no more", async () => {
  openAtStart(context, path);
  const { entries } = await call<OutputOf<"backup.make">>("backup.make", {});
  const { ref } = entries[0]!;
  expect(await refusal("study.open", { ref })).toMatch(/no longer in the list/);
  expect(await refusal("shelf.backups", { ref })).toMatch(/no longer in the list/);
  expect(await refusal("shelf.salvage", { ref })).toMatch(/no longer in the list/);
  expect(await call("backup.restore", { ref })).toMatchObject({ seq: 12 });
});

test("backups that are made at once do not tidy one another away", async () => {
  openAtStart(context, path);
  const { file } = context.open!;
  for (let k = 0; k < 300; k++)
    file.keepDraft({ place: `cell ${k}`, text: "z".repeat(2000), reason: "" }, "");
  const made = await Promise.all(
    backupReasons.map((reason, k) => file.backUp(reason, new Date(clock + k).toISOString())),
  );
  for (const outcome of made) expect(outcome).toMatchObject({ ok: true });
  expect(listBackups(path)).toHaveLength(backupReasons.length);
});

test("strangers in the backup folder are passed over and left", async () => {
  open();
  await call("backup.make", {});
  const strange = join(backupFolder(path), "notes.txt");
  writeFileSync(strange, "not ours");
  clock += 1000;
  await call("backup.make", {});
  expect(listBackups(path)).toHaveLength(2);
  expect(existsSync(strange)).toBe(true);
});
