import { settledEvent, settleEvent, unsettledEvent } from "../src/window-events.ts";
import type { useDrafts } from "./stores/drafts.ts";
import type { useStudy } from "./stores/study.ts";

const lookMs = 2000;

/**
 * In a browser, holds one connection to the host for as long as a window of this browser is open, so that a host
 * which opened the window itself knows when the last one is gone, whatever way it went. The browser's own lock passes
 * the task on to the next window at once; only one of several windows holds the connection.
 */
export function holdConnection(): void {
  if (window.flocwright || !navigator.locks) return;
  void navigator.locks.request("flocwright.window", async () => {
    for (;;) {
      try {
        const { body } = await fetch("/alive");
        const reader = body?.getReader();
        while (reader && !(await reader.read()).done);
      } catch {
        // The host is gone or was started anew: what stands here stays, and it is tried again.
      }
      await new Promise((resolve) => setTimeout(resolve, lookMs));
    }
  });
}

/** A file let go where nothing takes it stays where it was: a browser would leave the program and show the file instead. */
export function refuseStrayFiles(): void {
  const refuse = (event: DragEvent) => {
    if (event.defaultPrevented || !event.dataTransfer?.types.includes("Files")) return;
    event.preventDefault();
    event.dataTransfer.dropEffect = "none";
  };
  addEventListener("dragover", refuse);
  addEventListener("drop", refuse);
}

/** Keeps a browser window in step with edits made in another one: looked for every two seconds while it is visible. */
export function followOthers(study: ReturnType<typeof useStudy>): () => void {
  if (window.flocwright) return () => undefined;
  const timer = setInterval(() => {
    if (document.visibilityState === "visible" && study.isOpen && study.saveState === "saved")
      void study.catchUp();
  }, lookMs);
  return () => clearInterval(timer);
}

/**
 * Before a window goes: writes drafts that are under way and waits for edits. The desktop host asks and waits for the
 * answer; a browser gives no time for that, so there drafts are sent on their way and unsaved edits are asked about.
 */
export function settleBeforeClosing(
  study: ReturnType<typeof useStudy>,
  drafts: ReturnType<typeof useDrafts>,
): () => void {
  const settle = async () => {
    const [, saved] = await Promise.all([drafts.flush(), study.settled()]);
    dispatchEvent(new Event(saved ? settledEvent : unsettledEvent));
  };
  const onSettle = () => void settle();
  const onHide = () => void drafts.flush();
  const onLeave = (event: BeforeUnloadEvent) => {
    if (study.saveState !== "saved") event.preventDefault();
  };
  addEventListener(settleEvent, onSettle);
  addEventListener("pagehide", onHide);
  if (!window.flocwright) addEventListener("beforeunload", onLeave);
  return () => {
    removeEventListener(settleEvent, onSettle);
    removeEventListener("pagehide", onHide);
    removeEventListener("beforeunload", onLeave);
  };
}
