import { spawn, type ChildProcess } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { test as base, type Page } from "@playwright/test";

export interface App {
  /** a folder of this test's own */
  folder: string;
  /** whether a host was ended by the test: its page then rightly finds nobody who answers */
  hostEnded(): boolean;
  /** starts a host on a study (written as the demo first, where asked) and answers its address */
  host(
    fileName: string,
    demo: boolean,
  ): Promise<{ url: string; kill(signal?: NodeJS.Signals): Promise<void> }>;
}

const root = join(import.meta.dirname, "..", "..");

function headless(args: string[], env: Record<string, string> = {}): ChildProcess {
  return spawn(process.execPath, [join(root, "main", "headless.ts"), ...args], {
    cwd: root,
    env: { ...process.env, ...env },
    stdio: ["ignore", "pipe", "pipe"],
  });
}

/** Runs one verb to its end and answers what it printed. */
export function runVerb(args: string[]): Promise<{ code: number | null; out: string; error: string }> {
  return new Promise((resolve) => {
    const child = headless(args);
    let out = "";
    let error = "";
    child.stdout!.on("data", (chunk) => (out += String(chunk)));
    child.stderr!.on("data", (chunk) => (error += String(chunk)));
    child.on("exit", (code) => resolve({ code, out, error }));
  });
}

/** A test with hosts of its own and a page whose errors fail it. */
export const test = base.extend<{ app: App; watched: Page }>({
  app: async ({}, use) => {
    const folder = mkdtempSync(join(tmpdir(), "flocwright-e2e-"));
    const running: ChildProcess[] = [];
    let ended = false;
    await use({
      folder,
      hostEnded: () => ended,
      async host(fileName, demo) {
        const path = join(folder, fileName);
        if (demo) await runVerb(["demo", path]);
        const child = headless(["host", "--study", path, "--port", "0", "--no-window"]);
        running.push(child);
        const url = await new Promise<string>((resolve, reject) => {
          let text = "";
          child.stdout!.on("data", (chunk) => {
            text += String(chunk);
            if (text.includes("\n")) resolve((JSON.parse(text) as { url: string }).url);
          });
          child.on("exit", (code) => reject(new Error(`the host ended with ${code}`)));
        });
        const kill = (signal: NodeJS.Signals = "SIGTERM") =>
          new Promise<void>((resolve) => {
            ended = true;
            child.on("exit", () => resolve());
            child.kill(signal);
          });
        return { url, kill };
      },
    });
    for (const child of running) child.kill("SIGKILL");
    rmSync(folder, { recursive: true, force: true });
  },
  watched: async ({ page, app }, use) => {
    const unanswered = /^Failed to load resource: net::ERR_(CONNECTION|INCOMPLETE_CHUNKED|EMPTY_RESPONSE)/;
    const faults: string[] = [];
    page.on("pageerror", (error) => faults.push(error.message));
    page.on("console", (message) => {
      if (message.type() !== "error" || (app.hostEnded() && unanswered.test(message.text()))) return;
      faults.push(message.text());
    });
    await use(page);
    if (faults.length > 0) throw new Error(`the page complained: ${faults.join("; ")}`);
  },
});

export { expect } from "@playwright/test";
