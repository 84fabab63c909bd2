import { readFileSync } from "node:fs";

const lookMs = 1000;

/** The parent of a process, where this system tells (Linux); else null. */
function parentOf(processId: number): number | null {
  try {
    const text = readFileSync(`/proc/${processId}/stat`, "utf8");
    return Number(text.slice(text.lastIndexOf(")") + 2).split(" ")[1]);
  } catch {
    return null;
  }
}

/**
 * Calls back once when the process that started this one is gone, or the one before it: npm starts a shell, the shell
 * starts us, and a signal to npm alone reaches neither. Keeps nothing alive.
 */
export function whenAncestorsGo(then: () => void): void {
  const parent = process.ppid;
  const grandparent = parentOf(parent);
  const timer = setInterval(() => {
    if (process.ppid === parent && parentOf(parent) === grandparent) return;
    clearInterval(timer);
    then();
  }, lookMs);
  timer.unref();
}
