import { createHash } from "node:crypto";
import { readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { createDispatcher } from "../../main/dispatch.ts";
import { closeContext, createContext, openAtStart } from "../../main/service.ts";
import { summarise, writeDemo } from "../../main/service/standalone.ts";
import { salvage } from "../../main/storage/salvage.ts";
import type { Answer, Opened } from "../../src/contract.ts";
import { demoCommands } from "../../src/study/demo.ts";
import { kinds, recordSchemas, type AnyRecord, type StudyState } from "../../src/study/schema/records.ts";
import { references } from "../../src/study/references.ts";
import { chanceFrom, fault, newTally, type Tally } from "./chance.ts";
import { sentenceFault } from "./sentence.ts";
import { damages, type Damage } from "./study-damage.ts";

const now = "2026-01-01T12:00:00Z";
const hash = (path: string) => createHash("sha256").update(readFileSync(path)).digest("hex");

/** What is wrong with a state that a file was opened with, or null. */
function stateFault(state: StudyState): string | null {
  for (const kind of kinds)
    for (const [id, record] of Object.entries(state[kind] as Record<string, AnyRecord>))
      if (record.id !== id || !recordSchemas[kind].safeParse(record).success)
        return `${kind} ${id} does not fit`;
  for (const link of references)
    for (const record of Object.values(state[link.from]) as Record<string, unknown>[]) {
      const aim = record[link.field];
      if (typeof aim === "string" && !Object.hasOwn(state[link.to], aim))
        return `${link.from} names a lost ${link.to}`;
    }
  return null;
}

/**
 * Spoils a demo study over and over and opens it as a host does. Either it opens with a valid state and takes an edit
 * (or refuses that in words), or it is refused in one sentence, its bytes untouched and nothing left beside it.
 */
export async function runStudyFileCases(seed: number, cases: number, folder: string): Promise<Tally> {
  const chance = chanceFrom(seed);
  const tally = newTally("study files");
  const path = join(folder, "study.flocwright");
  const written = writeDemo(path, demoCommands, now);
  if (!written.ok) throw new Error(written.message);
  const sound = readFileSync(path);
  for (let index = 0; index < cases; index++) {
    for (const name of readdirSync(folder)) rmSync(join(folder, name), { recursive: true, force: true });
    writeFileSync(path, sound);
    const damage = index < damages.length * 4 ? damages[index % damages.length]! : chance.pick(damages);
    damage.spoil(path, chance);
    tally.tried += 1;
    try {
      await openSpoilt(path, folder, damage, tally, index);
    } catch (error) {
      fault(tally, "crashed", `${damage.name}: threw ${String(error)}`);
    }
  }
  return tally;
}

async function openSpoilt(
  path: string,
  folder: string,
  damage: Damage,
  tally: Tally,
  index: number,
): Promise<void> {
  const before = hash(path);
  const files = readdirSync(folder).join();
  const say = (kind: "crashed" | "acceptedWrongly", words: string) =>
    fault(tally, kind, `${damage.name}: ${words}`);
  const words = (message: string) => {
    const wrong = sentenceFault(message, folder);
    if (wrong) say("crashed", wrong);
  };
  const untouched = (when: string) => {
    if (hash(path) !== before) say("acceptedWrongly", `the bytes changed: ${when}`);
    if (readdirSync(folder).join() !== files)
      say("acceptedWrongly", `left beside it: ${readdirSync(folder).join()} (${when})`);
  };

  const summary = summarise(path, now);
  if (!summary.ok) words(summary.message);
  untouched("after inspecting");
  if (index % 5 === 0) {
    const saved = salvage(path);
    if (!saved.ok) words(saved.message);
    else {
      const wrong = stateFault(saved.value.state);
      if (wrong) say("acceptedWrongly", `salvaged: ${wrong}`);
    }
    untouched("after salvaging");
  }

  const context = createContext({ host: "loopback", version: "0", now: () => now, folder, dialogs: null });
  const call = createDispatcher(context);
  const opened: Answer<Opened> = openAtStart(context, path);
  if (!opened.ok) {
    tally.refused += 1;
    words(opened.message);
    if (context.open) say("acceptedWrongly", "refused, yet open");
    untouched("after refusing");
    return;
  }
  tally.accepted += 1;
  if (damage.refuse) say("acceptedWrongly", "opened");
  const wrong = stateFault(opened.value.state);
  if (wrong) say("acceptedWrongly", wrong);
  for (const [name, input] of [
    ["draft.list", {}],
    ["study.history", { beforeSeq: null, limit: 100 }],
    ["study.historyOf", { kind: "jar", id: "jar-1-04", limit: 20 }],
    ["study.undo", { by: "" }],
    [
      "study.apply",
      {
        command: {
          do: "add",
          kind: "person",
          record: { id: "p-fuzz", name: "After the damage", role: "crew" },
        },
        afterSeq: context.open?.seq ?? 0,
        by: "",
      },
    ],
    ["study.undo", { by: "" }],
  ] as const) {
    const input2 = name === "study.apply" ? { ...input, afterSeq: context.open?.seq ?? 0 } : input;
    const answer = await call(name, input2);
    if (answer.ok) continue;
    words(answer.message);
    if (answer.code === "failed") say("crashed", `${name} failed inside`);
  }
  const held = context.open?.state;
  closeContext(context);
  const left = readdirSync(folder).filter((name) => /-journal$|-wal$|-shm$|\.lock$|\.part$/.test(name));
  if (left.length > 0) say("acceptedWrongly", `left after closing: ${left.join()}`);
  const later = createContext(context.support);
  const again = openAtStart(later, path);
  if (!again.ok) say("acceptedWrongly", `no longer opens after an edit: ${again.message}`);
  else if (JSON.stringify(again.value.state.person) !== JSON.stringify(held?.person))
    say("acceptedWrongly", "memory is not what is on disk");
  closeContext(later);
}
