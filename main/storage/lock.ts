import { existsSync, readFileSync, unlinkSync, writeFileSync } from "node:fs";
import { hostname } from "node:os";
import { pause } from "./files.ts";
import { storageWords } from "../../src/words/storage.ts";

interface Holder {
  machine: string;
  processId: number;
  processStarted: string;
  since: string;
}

export type Lock =
  { kind: "held"; release(): void; notice: string | null } | { kind: "busy"; sentence: string };

/** When a process started, in the system's own ticks, so that a reused process id is told apart. "" where unknown. */
function startOf(processId: number): string {
  try {
    const text = readFileSync(`/proc/${processId}/stat`, "utf8");
    return text.slice(text.lastIndexOf(")") + 2).split(" ")[19] ?? "";
  } catch {
    return "";
  }
}

function isAlive(holder: Holder): boolean {
  try {
    process.kill(holder.processId, 0);
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === "ESRCH") return false;
  }
  const started = startOf(holder.processId);
  return started === "" || holder.processStarted === "" || started === holder.processStarted;
}

function readHolder(path: string): Holder | null {
  try {
    const value = JSON.parse(readFileSync(path, "utf8")) as Partial<Holder>;
    const { machine, processId, since } = value;
    const shown = (text: unknown) => typeof text === "string" && /^[^\p{Cc}]{1,100}$/u.test(text);
    return shown(machine) && shown(since) && Number.isInteger(processId) && Number(processId) > 0
      ? (value as Holder)
      : null;
  } catch {
    return null;
  }
}

const tries = 6;
const waits = 2;

/**
 * Takes the one writer's lock beside a study. A lock left by a dead process of this machine is taken over with a
 * sentence; a live one, or another machine's, is busy. Throws only what the file system throws on writing.
 */
export function takeLock(studyPath: string, now: string): Lock {
  const path = `${studyPath}.lock`;
  const me: Holder = {
    machine: hostname(),
    processId: process.pid,
    processStarted: startOf(process.pid),
    since: now,
  };
  let notice: string | null = null;
  for (let attempt = 0; attempt < tries; attempt++) {
    try {
      writeFileSync(path, JSON.stringify(me), { flag: "wx" });
      const release = () => {
        const holder = existsSync(path) ? readHolder(path) : null;
        if (holder?.processId === me.processId && holder.machine === me.machine) unlinkSync(path);
      };
      return { kind: "held", release, notice };
    } catch (error) {
      if ((error as NodeJS.ErrnoException).code !== "EEXIST") throw error;
    }
    const holder = readHolder(path);
    // Another program may have made the lock this very moment and not yet written its name into it.
    if (!holder && attempt < waits) {
      pause();
      continue;
    }
    if (holder && holder.machine !== me.machine)
      return {
        kind: "busy",
        sentence: storageWords.open.elsewhere(holder.machine, holder.since),
      };
    if (holder && isAlive(holder))
      return {
        kind: "busy",
        sentence: storageWords.open.here,
      };
    notice = storageWords.open.notClosed;
    unlinkSync(path);
  }
  return {
    kind: "busy",
    sentence: storageWords.open.keepsTaking,
  };
}
