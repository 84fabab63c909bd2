import assert from "node:assert/strict";
import { spawn } from "node:child_process";
import { existsSync, readdirSync, rmSync } from "node:fs";
import { dirname, join } from "node:path";
import { listBackups } from "../../main/storage/backups.ts";
import { openStudyFile } from "../../main/storage/study-file.ts";
import { summarise, writeDemo } from "../../main/service/standalone.ts";
import { seededRandom } from "../../src/curve/random.ts";
import { demoCommands } from "../../src/study/demo.ts";

const now = "2026-01-01T12:00:00Z";
const writer = join(import.meta.dirname, "kill-writer.ts");

export interface KillCount {
  tried: number;
  survived: number;
  /** what had been acknowledged before the kills, all together */
  changes: number;
  drafts: number;
  backups: number;
  copies: number;
  /** kills that struck while a write was under way, with SQLite's journal left for the next opening to play back */
  hotJournals: number;
}

interface Line {
  ready?: true;
  change?: number;
  jar?: string;
  ml?: number;
  begin?: string;
  draft?: string;
  text?: string | null;
  backup?: true;
  copy?: string;
  changes?: number;
}

/** Runs the writer and kills it `waitMs` after it is ready; answers every whole line it had printed. */
function killed(path: string, seed: number, waitMs: number): Promise<Line[]> {
  return new Promise((resolve, reject) => {
    const child = spawn(process.execPath, [writer, path, String(seed)], {
      stdio: ["ignore", "pipe", "pipe"],
    });
    let text = "";
    let error = "";
    let counting = false;
    child.stderr.on("data", (chunk) => (error += String(chunk)));
    child.stdout.on("data", (chunk) => {
      text += String(chunk);
      if (!counting) setTimeout(() => child.kill("SIGKILL"), waitMs);
      counting = true;
    });
    child.on("close", (_code, signal) => {
      if (signal !== "SIGKILL") return reject(new Error(`the writer ended by itself: ${error}`));
      const lines = text.split("\n").slice(0, -1);
      resolve(lines.map((line) => JSON.parse(line) as Line));
    });
  });
}

/**
 * Kills a real process that works on a study, over and over on the same file, at seeded moments. After each kill: all
 * that was acknowledged is there, the file and its history are whole and say the same, backups and copies open.
 * Throws at the first that is not so.
 */
export async function killAtRandom(folder: string, seed: number, kills: number): Promise<KillCount> {
  const path = join(folder, "study.flocwright");
  const written = writeDemo(path, demoCommands, now);
  assert.ok(written.ok, "the demo could not be written");
  const chance = seededRandom(seed);
  const count = { tried: 0, survived: 0, changes: 0, drafts: 0, backups: 0, copies: 0, hotJournals: 0 };
  const drafts = new Map<string, string | null>();
  for (let round = 0; round < kills; round++) {
    const lines = await killed(path, seed * 1000 + round, Math.floor(chance() * 260));
    count.tried += 1;
    if (existsSync(`${path}-journal`)) count.hotJournals += 1;
    const begun = new Map<string, string | null>();
    for (const { begin, draft, text } of lines) {
      if (begin !== undefined) begun.set(begin, text ?? null);
      if (draft !== undefined) {
        drafts.set(draft, text ?? null);
        begun.delete(draft);
      }
    }
    const opened = openStudyFile(path, now);
    assert.ok(opened.ok, opened.ok ? "" : opened.message);
    const file = opened.value;
    try {
      for (const { change: seq, jar, ml } of lines)
        if (seq !== undefined) {
          const change = file.change(seq);
          assert.ok(change, `acknowledged change ${seq} is lost`);
          if (jar !== undefined)
            assert.deepEqual(change.command, {
              do: "set",
              kind: "jar",
              id: jar,
              fields: { blankWaterMl: ml },
            });
        }
      const state = file.readState();
      assert.ok(state.ok, state.ok ? "" : state.message);
      const kept = new Map(file.drafts().map(({ place, text }) => [place, text]));
      for (const [place, text] of drafts) {
        const found = kept.get(place) ?? null;
        const allowed = begun.has(place) ? [text, begun.get(place) ?? null] : [text];
        assert.ok(allowed.includes(found), `the draft of ${place} is ${found}, not ${text}`);
        drafts.set(place, found);
      }
    } finally {
      file.close();
    }
    assertWhole(path);
    const backups = listBackups(path);
    if (lines.some((line) => line.backup)) assert.ok(backups.length > 0, "an acknowledged backup is gone");
    for (const backup of backups) assertWhole(backup.path);
    for (const { copy, changes } of lines)
      if (copy !== undefined) assert.equal(assertWhole(join(folder, copy)), changes);
    for (const name of readdirSync(dirname(path)))
      if (name.startsWith("copy-")) {
        if (name.endsWith(".flocwright")) assertWhole(join(folder, name));
        rmSync(join(folder, name));
      }
    count.survived += 1;
    count.changes += lines.filter((line) => line.change !== undefined).length;
    count.drafts += lines.filter((line) => line.draft !== undefined).length;
    count.backups += lines.filter((line) => line.backup).length;
    count.copies += lines.filter((line) => line.copy !== undefined).length;
  }
  return count;
}

function assertWhole(path: string): number {
  const summary = summarise(path, now);
  assert.ok(summary.ok, summary.ok ? "" : `${path}: ${summary.message}`);
  assert.equal(summary.value.integrity, "ok");
  assert.equal(summary.value.history, "whole");
  assert.equal(summary.value.notAsHistory, null);
  return summary.value.changes;
}
