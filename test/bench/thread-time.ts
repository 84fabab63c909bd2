// How long the screen's thread computed in one go, from the browser's own trace.
import type { Page } from "playwright";

interface TraceEvent {
  name: string;
  ph: string;
  pid: number;
  tid: number;
  ts: number;
  dur?: number;
  /** the processor time that its thread spent in it */
  tdur?: number;
  args?: { name?: string };
}

/** A task that the screen's thread did in one go. */
export interface ThreadTask {
  /** processor time of the thread alone, ms: what else runs on the machine hardly changes it */
  cpuMs: number;
  /** wall-clock time, ms */
  wallMs: number;
  /** when it began, ms after the first event traced */
  atMs: number;
}

/** The tasks of the pages' main threads while `work` was done, longest processor time first. */
export async function threadTasks(page: Page, work: () => Promise<void>): Promise<ThreadTask[]> {
  const browser = page.context().browser()!;
  await browser.startTracing(page, { categories: ["toplevel", "__metadata"] });
  let trace: Buffer;
  try {
    await work();
  } finally {
    trace = await browser.stopTracing();
  }
  const { traceEvents } = JSON.parse(trace.toString()) as { traceEvents: TraceEvent[] };
  return tasksOf(traceEvents);
}

/**
 * The whole tasks among a trace's events, on threads that show a page: also those of a frame that the browser gives a
 * process of its own, which the list of long tasks of the page around it does not tell.
 */
function tasksOf(events: TraceEvent[]): ThreadTask[] {
  const threadOf = ({ pid, tid }: TraceEvent) => `${pid} ${tid}`;
  const screens = new Set(
    events
      .filter(({ name, args }) => name === "thread_name" && args?.name === "CrRendererMain")
      .map(threadOf),
  );
  const tasks = events.filter(
    (event) =>
      event.name === "ThreadControllerImpl::RunTask" && event.ph === "X" && screens.has(threadOf(event)),
  );
  const began = Math.min(...tasks.map(({ ts }) => ts));
  return tasks
    .map(({ ts, dur = 0, tdur = 0 }) => ({
      cpuMs: tdur / 1000,
      wallMs: dur / 1000,
      atMs: (ts - began) / 1000,
    }))
    .sort((a, b) => b.cpuMs - a.cpuMs);
}
