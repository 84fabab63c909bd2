import { spawn, spawnSync, type ChildProcess } from "node:child_process";
import { existsSync, mkdtempSync, rmSync } from "node:fs";
import { request } from "node:http";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { findBrowser } from "../../scripts/browser.mjs";
import { ensureBuilt } from "../../main/hosts/loopback/build.ts";
import { head, talk } from "./raw.ts";

const root = join(import.meta.dirname, "..", "..");
const headless = join(root, "main", "headless.ts");
let folder = "";
let study = "";
const running: ChildProcess[] = [];

beforeAll(async () => {
  const built = await ensureBuilt();
  if (!built.ok) throw new Error(built.message);
  folder = mkdtempSync(join(tmpdir(), "flocwright-ending-"));
  study = join(folder, "own.flocwright");
  expect(spawnSync(process.execPath, [headless, "demo", study]).status).toBe(0);
}, 60_000);
afterAll(() => {
  for (const child of running) child.kill("SIGKILL");
  rmSync(folder, { recursive: true, force: true });
});

interface Started {
  child: ChildProcess;
  port: number;
  url: string;
  ended: Promise<{ code: number | null; signal: NodeJS.Signals | null }>;
  error(): string;
}

async function start(command: string, args: string[], env: Record<string, string> = {}): Promise<Started> {
  const child = spawn(command, args, {
    cwd: root,
    env: { ...process.env, ...env },
    stdio: ["ignore", "pipe", "pipe"],
  });
  running.push(child);
  let error = "";
  child.stderr!.on("data", (chunk) => (error += String(chunk)));
  const ended = new Promise<{ code: number | null; signal: NodeJS.Signals | null }>((resolve) =>
    child.on("exit", (code, signal) => resolve({ code, signal })),
  );
  const url = await new Promise<string>((resolve, reject) => {
    let text = "";
    child.stdout!.on("data", (chunk) => {
      text += String(chunk);
      const found = /http:\/\/127\.0\.0\.1:\d+\/\?key=[0-9a-f]+/.exec(text);
      if (found) resolve(found[0]);
    });
    child.on("exit", () => reject(new Error(error || "the host ended")));
  });
  return { child, port: Number(new URL(url).port), url, ended, error: () => error };
}

const isOpen = async (port: number) =>
  (await talk(port, head("GET /", { host: `127.0.0.1:${port}` }))).text !== "";
const isLocked = () => existsSync(`${study}.lock`);

async function within<T>(ms: number, work: Promise<T>): Promise<T> {
  let late: NodeJS.Timeout | undefined;
  const fail = new Promise<never>((_, reject) => {
    late = setTimeout(() => reject(new Error(`not within ${ms} ms`)), ms);
  });
  return Promise.race([work, fail]).finally(() => clearTimeout(late));
}

/** Takes the cookie and holds a window's connection, as a page does; answers how it lets go. */
function holdWindow(host: Started): Promise<() => void> {
  return new Promise((resolve, reject) => {
    const first = request(host.url, (exchanged) => {
      const cookie = String(exchanged.headers["set-cookie"]).split(";")[0]!;
      exchanged.resume();
      const held = request(`http://127.0.0.1:${host.port}/alive`, { headers: { cookie } }, (answer) => {
        answer.on("error", () => undefined);
        answer.resume();
        resolve(() => held.destroy());
      });
      held.on("error", () => undefined);
      held.end();
    });
    first.on("error", reject);
    first.end();
  });
}

const hostArgs = () => [headless, "host", "--study", study, "--port", "0", "--no-window"];

describe("a host that printed its address", () => {
  test.each(["SIGINT", "SIGTERM", "SIGHUP"] as const)(
    "ends on %s with a window open: no port, no lock, no fault",
    async (signal) => {
      const host = await start(process.execPath, hostArgs());
      await holdWindow(host);
      expect(await isOpen(host.port)).toBe(true);
      expect(isLocked()).toBe(true);
      host.child.kill(signal);
      expect(await within(6000, host.ended)).toEqual({ code: 0, signal: null });
      expect(await isOpen(host.port)).toBe(false);
      expect(isLocked()).toBe(false);
      expect(host.error()).toBe("");
    },
  );
  test("goes on when a window closed: others may still come by the address", async () => {
    const host = await start(process.execPath, hostArgs());
    const letGo = await holdWindow(host);
    letGo();
    await new Promise((resolve) => setTimeout(resolve, 300));
    expect(await isOpen(host.port)).toBe(true);
    host.child.kill("SIGTERM");
    await within(6000, host.ended);
  });
  test.skipIf(process.platform !== "linux").each(["SIGTERM", "SIGHUP", "SIGKILL"] as const)(
    "started through npm, ends when npm is sent %s alone (skipped where the system does not tell a process's parents)",
    async (signal) => {
      const words = ["run", "-s", "headless", "--", ...hostArgs().slice(1)];
      const host = await start("npm", words);
      expect(isLocked()).toBe(true);
      host.child.kill(signal);
      await within(6000, host.ended);
      await expect.poll(() => isOpen(host.port), { timeout: 6000 }).toBe(false);
      await expect.poll(isLocked).toBe(false);
    },
  );
  test.skipIf(!existsSync("/usr/bin/script"))(
    "ends when its terminal is closed (skipped without the script program)",
    async () => {
      const line = [process.execPath, ...hostArgs()].map((word) => `'${word}'`).join(" ");
      const terminal = await start("/usr/bin/script", ["-qfc", line, "/dev/null"]);
      expect(isLocked()).toBe(true);
      // The terminal program is killed without a word to what runs in it, as when its window is closed.
      terminal.child.kill("SIGKILL");
      await within(6000, terminal.ended);
      await expect.poll(() => isOpen(terminal.port), { timeout: 5000 }).toBe(false);
      expect(isLocked()).toBe(false);
    },
  );
  test("ends on a fault nobody caught with one sentence, its lock given back", async () => {
    const script = `
      import { createContext, openAtStart } from "./main/service.ts";
      import { startLoopback } from "./main/hosts/loopback/server.ts";
      import { loopbackSupport } from "./main/hosts/loopback/support.ts";
      import { endGracefully } from "./main/hosts/loopback/ending.ts";
      const context = createContext(loopbackSupport(null));
      openAtStart(context, ${JSON.stringify(study)});
      const running = await startLoopback(context, { port: 0, pagesFolder: "out/renderer", once: false });
      endGracefully(context, running);
      console.log(running.url);
      process.stdin.resume();
      setTimeout(() => { throw new Error("something odd"); }, 200);`;
    const host = await start(process.execPath, ["--input-type=module-typescript", "-e", script]);
    expect(isLocked()).toBe(true);
    expect(await within(6000, host.ended)).toEqual({ code: 1, signal: null });
    expect(host.error()).toBe("Flocwright had to end: something odd. What was saved is safe.\n");
    expect(isLocked()).toBe(false);
  });
});

const browser = findBrowser();
const withDisplay = existsSync("/usr/bin/xvfb-run") && browser !== null;

describe("npm start in a browser's own window", () => {
  test.skipIf(!withDisplay)(
    "ends by itself when that browser is killed (skipped without a browser or a display to open it on)",
    async () => {
      const child = spawn("/usr/bin/xvfb-run", ["-a", process.execPath, join(root, "scripts", "start.mjs")], {
        cwd: root,
        env: { ...process.env, FLOCWRIGHT_HOST: "browser", FLOCWRIGHT_FOLDER: folder },
        stdio: "ignore",
      });
      running.push(child);
      const lock = join(folder, "Demo (invented).flocwright.lock");
      await expect.poll(() => existsSync(lock), { timeout: 15_000 }).toBe(true);
      const host = (JSON.parse(await lockText(lock)) as { processId: number }).processId;
      const browserId = await expectChild(host);
      await new Promise((resolve) => setTimeout(resolve, 1500));
      process.kill(browserId, "SIGKILL");
      const code = await within(15_000, new Promise((resolve) => child.on("exit", resolve)));
      expect(code).toBe(0);
      expect(existsSync(lock)).toBe(false);
    },
    60_000,
  );
});

async function lockText(path: string): Promise<string> {
  const { readFile } = await import("node:fs/promises");
  return readFile(path, "utf8");
}

/** The browser that a host started: its only child process. */
async function expectChild(parent: number): Promise<number> {
  let found = NaN;
  await expect
    .poll(
      () => {
        const { stdout } = spawnSync("pgrep", ["-P", String(parent)], { encoding: "utf8" });
        found = Number(stdout.trim().split("\n")[0]);
        return found > 0;
      },
      { timeout: 10_000 },
    )
    .toBe(true);
  return found;
}
