import { EventEmitter } from "node:events";
import type { ChildProcess } from "node:child_process";
import { afterEach, beforeEach, describe, expect, test, vi } from "vitest";
import { endWithWindow } from "../../main/hosts/loopback/app-window.ts";
import { reloadGraceMs } from "../../main/hosts/loopback/bounds.ts";
import { countWindows } from "../../main/hosts/loopback/windows.ts";

beforeEach(() => void vi.useFakeTimers());
afterEach(() => void vi.useRealTimers());

const browser = () =>
  Object.assign(new EventEmitter(), { exitCode: null, signalCode: null }) as unknown as ChildProcess & {
    exitCode: number | null;
  };
const settle = () => vi.advanceTimersByTimeAsync(0);

describe("counting windows", () => {
  test("nothing follows from windows coming and going until it is asked for", async () => {
    const windows = countWindows();
    const gone = windows.arrived();
    gone();
    await vi.advanceTimersByTimeAsync(3_600_000);
    expect(windows.open()).toBe(0);
  });
  test("a connection that ended is counted once", () => {
    const windows = countWindows();
    const gone = windows.arrived();
    windows.arrived();
    gone();
    gone();
    expect(windows.open()).toBe(1);
  });
  test("a reload within the grace does not end, a longer absence does, once", async () => {
    const windows = countWindows();
    const ended = vi.fn();
    let gone = windows.arrived();
    windows.whenNone(1000, ended);
    gone();
    await vi.advanceTimersByTimeAsync(900);
    gone = windows.arrived();
    await vi.advanceTimersByTimeAsync(60_000);
    expect(ended).not.toHaveBeenCalled();
    gone();
    await vi.advanceTimersByTimeAsync(999);
    expect(ended).not.toHaveBeenCalled();
    await vi.advanceTimersByTimeAsync(1);
    windows.arrived()();
    await vi.advanceTimersByTimeAsync(60_000);
    expect(ended).toHaveBeenCalledOnce();
  });
});

describe("a host ends with the window it opened", () => {
  test("when the browser's process ends, by whatever cause, also before a page was there", async () => {
    for (const loaded of [true, false]) {
      const windows = countWindows();
      const [child, ended] = [browser(), vi.fn()];
      endWithWindow(child, windows, ended);
      const gone = loaded ? windows.arrived() : () => undefined;
      await settle();
      child.exitCode = 0;
      child.emit("exit", null, "SIGKILL");
      gone();
      await vi.advanceTimersByTimeAsync(2000);
      expect(ended, String(loaded)).toHaveBeenCalledOnce();
    }
  });
  test("when the last window closed though the browser's process stays", async () => {
    const windows = countWindows();
    const [child, ended] = [browser(), vi.fn()];
    endWithWindow(child, windows, ended);
    const gone = windows.arrived();
    await settle();
    gone();
    await vi.advanceTimersByTimeAsync(reloadGraceMs - 1);
    expect(ended).not.toHaveBeenCalled();
    await vi.advanceTimersByTimeAsync(1);
    expect(ended).toHaveBeenCalledOnce();
  });
  test("not while a slow browser has not shown a page yet, nor where it handed its window to another process", async () => {
    const windows = countWindows();
    const [child, ended] = [browser(), vi.fn()];
    endWithWindow(child, windows, ended);
    await vi.advanceTimersByTimeAsync(600_000);
    expect(ended).not.toHaveBeenCalled();
    const gone = windows.arrived();
    await settle();
    child.exitCode = 0;
    child.emit("exit", 0, null);
    await vi.advanceTimersByTimeAsync(600_000);
    expect(ended).not.toHaveBeenCalled();
    gone();
    await vi.advanceTimersByTimeAsync(2000);
    expect(ended).toHaveBeenCalledOnce();
  });
});
