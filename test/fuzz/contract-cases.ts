import { createHash } from "node:crypto";
import { createDispatcher } from "../../main/dispatch.ts";
import { closeContext, createContext } from "../../main/service.ts";
import { firstDifference } from "../../main/storage/replay.ts";
import { openStudyFile } from "../../main/storage/study-file.ts";
import { contract, type Answer, type CallName } from "../../src/contract.ts";
import {
  kinds,
  recordSchemas,
  type AnyRecord,
  type Kind,
  type StudyState,
} from "../../src/study/schema/records.ts";
import { references } from "../../src/study/references.ts";
import { chanceFrom, fault, newTally, type Chance, type Tally } from "./chance.ts";
import { hostileTexts, hostileValue, valueFor, type Pools } from "./hostile.ts";
import { sentenceFault } from "./sentence.ts";

const texts = [
  ...hostileTexts,
  "Jar 1",
  "Sample of Monday",
  "engineer",
  "2026-02-03T10:00:00Z",
  "2026-02-03T10:00:00+05:30",
  "data:image/jpeg;base64,/9j/4AAQ",
  "EUR",
  "cost",
];
const numbers = [
  0, 1, 2, 3, 5, 7, 12.5, 18.25, 33, 60, 99.9, 100, 250, 999, 1e3, 1e4, 0.001, 0.5, 0.98, 1.02,
];

/** Calls that write files of their own are tried with valid input only now and then: each costs a whole study. */
const heavy: CallName[] = [
  "study.create",
  "study.createDemo",
  "study.saveAs",
  "backup.make",
  "backup.restore",
  "shelf.restore",
  "shelf.salvage",
];

function idsOf(state: StudyState | null, kind: Kind): string[] {
  return state ? Object.keys(state[kind]) : [];
}

/** A command built from the real schemas: mostly one that fits, with real, wrong or hostile references. */
function commandFor(state: StudyState | null, chance: Chance, pools: Pools, nested = false): unknown {
  const kind = chance.pick(kinds);
  const own = idsOf(state, kind);
  const newId = `new-${chance.whole(1, 40)}`;
  const anyId = () => chance.pick([...own.slice(0, 40), newId, "constructor", "nobody"]);
  const made = chance.pick(["add", "add", "set", "set", "set", "remove", nested ? "set" : "together"]);
  if (made === "remove") return { do: "remove", kind, id: anyId() };
  if (made === "together")
    return {
      do: "together",
      label: chance.pick(texts),
      commands: Array.from({ length: chance.whole(1, 6) }, () => commandFor(state, chance, pools, true)),
    };
  const record = valueFor(recordSchemas[kind], chance, pools);
  if (typeof record !== "object" || record === null) return { do: made, kind, record };
  const fields = record as Record<string, unknown>;
  if (chance.odds(0.9)) fields["id"] = chance.odds(0.9) ? newId : anyId();
  for (const link of references)
    if (link.from === kind && link.field in fields && chance.odds(0.9)) {
      const aims = idsOf(state, link.to);
      fields[link.field] = chance.odds(0.9) && aims.length > 0 ? chance.pick(aims) : "constructor";
    }
  if (made === "add") return { do: "add", kind, record: fields };
  delete fields["id"];
  const kept = Object.entries(fields).filter(() => chance.odds(0.4));
  return { do: "set", kind, id: anyId(), fields: Object.fromEntries(kept) };
}

const digest = (value: unknown) => createHash("sha256").update(JSON.stringify(value)).digest("hex");

const sorted = (state: StudyState) =>
  kinds.map((kind) =>
    Object.entries(state[kind] as Record<string, AnyRecord>).sort(([a], [b]) => (a < b ? -1 : 1)),
  );

/**
 * Fuzzes every call of the contract through the dispatcher, with a study open and without. After each: an answer in
 * words, nothing changed by a refusal, memory equal to disk (now and then), and no built-in object polluted.
 */
export async function runContractCases(seed: number, cases: number, folder: string): Promise<Tally> {
  const chance = chanceFrom(seed);
  const tally = newTally("contract calls");
  let tick = 0;
  const context = createContext({
    host: "loopback",
    version: "0",
    now: () => new Date(Date.UTC(2026, 0, 1) + tick++ * 1000).toISOString(),
    folder,
    dialogs: null,
  });
  const call = createDispatcher(context);
  const names = Object.keys(contract) as CallName[];
  const builtIns = Object.getOwnPropertyNames(Object.prototype).join();
  const refs = () => [...context.refs.keys(), "nothing", ...hostileTexts.slice(0, 6)];
  await call("study.createDemo", {});

  const inputFor = (name: string): unknown => {
    const wild = chance.pick([0, 0.02, 0.3, 1]);
    const pools = { texts, numbers, wild };
    if (!Object.hasOwn(contract, name)) return hostileValue(chance);
    if (name === "study.apply" && chance.odds(0.8)) {
      const seq = context.open?.seq ?? 0;
      return {
        command: commandFor(context.open?.state ?? null, chance, {
          ...pools,
          wild: chance.pick([0, 0, 0.03]),
        }),
        afterSeq: chance.odds(0.95) ? seq : chance.whole(0, 3),
        by: chance.odds(0.8) ? "" : chance.pick(texts),
        ...(chance.odds(0.3) ? { why: chance.pick(texts) } : {}),
      };
    }
    if (/open|restore|salvage|backups/.test(name) && chance.odds(0.7))
      return {
        ref: chance.pick(refs()),
        ...(name === "shelf.restore" ? { backup: chance.pick(refs()) } : {}),
      };
    if (heavy.includes(name as CallName) && !chance.odds(0.1)) return hostileValue(chance);
    return valueFor(contract[name as CallName].input, chance, pools);
  };

  const look = (name: string, input: unknown, answer: Answer<unknown>): void => {
    const about = () => {
      let shown: string;
      try {
        shown = JSON.stringify(input, (_, value: unknown) =>
          typeof value === "bigint" ? `${value}n` : value,
        );
      } catch {
        shown = "(cannot be shown)";
      }
      return `${name} ${String(shown).slice(0, 300)}`;
    };
    if (!answer.ok) {
      tally.refused += 1;
      const wrong = sentenceFault(answer.message, folder);
      if (wrong) fault(tally, "crashed", `${wrong} <- ${about()}`);
      if (answer.code === "failed") fault(tally, "crashed", `failed inside <- ${about()}`);
    } else tally.accepted += 1;
  };

  for (let index = 0; index < cases; index++) {
    if (!context.open && chance.odds(0.15)) await call("study.createDemo", {});
    let name: string = chance.odds(0.5)
      ? "study.apply"
      : chance.odds(0.25)
        ? chance.pick(["study.undo", "study.redo"])
        : chance.pick(names);
    if ((name === "study.close" || name === "shelf.salvage") && !chance.odds(0.2)) name = "study.undo";
    if (chance.odds(0.02)) name = chance.pick(hostileTexts.slice(0, 20));
    const input = inputFor(name);
    const { open } = context;
    const before = open && {
      state: open.state,
      seq: open.seq,
      digest: index % 10 === 0 ? digest(open.state) : "",
    };
    tally.tried += 1;
    let answer: Answer<unknown>;
    try {
      answer = await call(name, input);
    } catch (error) {
      fault(tally, "crashed", `threw ${String(error)} <- ${name}`);
      continue;
    }
    look(name, input, answer);
    const after = context.open;
    if (before && !answer.ok && after === open && after) {
      if (after.state !== before.state || after.seq !== before.seq)
        fault(tally, "acceptedWrongly", `a refused call changed the study <- ${name}`);
      if (before.digest !== "" && digest(after.state) !== before.digest)
        fault(tally, "acceptedWrongly", `a refused call changed the study in place <- ${name}`);
    }
    if (Object.getOwnPropertyNames(Object.prototype).join() !== builtIns || "polluted" in {})
      fault(tally, "acceptedWrongly", `a built-in object was changed <- ${name}`);
    if (index % 100 === 99) compareWithDisk(context.open, tally, name);
  }
  compareWithDisk(context.open, tally, "the end");
  closeContext(context);
  return tally;
}

function compareWithDisk(
  open: { file: { path: string }; state: StudyState; seq: number } | null,
  tally: Tally,
  name: string,
): void {
  if (!open) return;
  const file = openStudyFile(open.file.path, "2026-01-01T00:00:00Z", { onlyRead: true });
  if (!file.ok) return fault(tally, "crashed", `the file does not open: ${file.message} <- ${name}`);
  const state = file.value.readState();
  const { integrity, chain, changes } = file.value.inspect();
  const different = state.ok ? firstDifference(file.value.since(0), state.value) : null;
  file.value.close();
  if (!state.ok) return fault(tally, "acceptedWrongly", `${state.message} <- ${name}`);
  if (digest(sorted(state.value)) !== digest(sorted(open.state)))
    fault(tally, "acceptedWrongly", `memory is not what is on disk <- ${name}`);
  if (different) fault(tally, "acceptedWrongly", `${different} is not what the history says <- ${name}`);
  if (integrity !== "ok" || chain !== "whole" || changes !== open.seq)
    fault(
      tally,
      "acceptedWrongly",
      `integrity ${integrity}, history ${chain}, ${changes} of ${open.seq} <- ${name}`,
    );
}
