import type { ChildProcess } from "node:child_process";
import { reloadGraceMs } from "./bounds.ts";
import type { Windows } from "./windows.ts";

/** How long after its browser ended a window may still hold its connection before it counts as living on, in ms. */
const exitGraceMs = 1500;

/**
 * Ends a host with the window it opened: at once when the browser's process ends (also by a crash), and ten seconds
 * after the last window let go of its connection where the process stays (some systems keep a browser without
 * windows). A browser that handed its window to a process which ran before ends early and does not end the host: the
 * window's connection then says when it is gone.
 */
export function endWithWindow(browser: ChildProcess, windows: Windows, end: () => void): void {
  browser.on("exit", () => windows.whenNone(exitGraceMs, end));
  void windows.first.then(() => {
    if (browser.exitCode === null && browser.signalCode === null) windows.whenNone(reloadGraceMs, end);
  });
}

/** Ends a browser that this host started, and waits for it within a bound. */
export function endBrowser(browser: ChildProcess, boundMs = 3000): Promise<void> {
  if (browser.exitCode !== null || browser.signalCode !== null || browser.pid === undefined)
    return Promise.resolve();
  return new Promise((resolve) => {
    const late = setTimeout(() => {
      browser.kill("SIGKILL");
      resolve();
    }, boundMs);
    browser.once("exit", () => {
      clearTimeout(late);
      resolve();
    });
    browser.kill();
  });
}
