import { fork, type ChildProcess } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { createServer, type Server } from "node:http";
import type { AddressInfo } from "node:net";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { test as base, type Frame, type Page } from "@playwright/test";
import { ensureBuilt } from "../../main/hosts/loopback/build.ts";

const root = join(import.meta.dirname, "..", "..");
const appOrigin = "flocwright://app";

/**
 * The built main entry, booted under a stand-in for the electron module, with this page as its window: pages come
 * from the entry's own protocol handler, calls go through the built preload to its own ipc handlers.
 */
export interface Desktop {
  page: Page;
  /** methods and paths that were asked of the pages' server */
  asked: { method: string; path: string; status: number; policy: string }[];
  faults: string[];
  /** while true, calls of the page find nobody who answers */
  deaf: boolean;
  crash(): Promise<void>;
  /** the person presses the window's close button */
  pressClose(): Promise<void>;
  /** which button the person presses in the next message box */
  press(button: number): Promise<void>;
  second(words: string[]): Promise<void>;
  seen(): Promise<{ messages: { message: string }[]; errors: { message: string }[]; quits: number }>;
  /** settles when the app destroyed its window */
  closed: Promise<void>;
  quit: Promise<void>;
  /** ends the stand-in's process */
  end(): void;
}

interface PageAnswer {
  status: number;
  headers: Record<string, string>;
  body: Uint8Array;
}

/** Where the app's files are: the project itself, or a folder that holds only what is packed. */
export interface Boots {
  folder: string;
  boot(words?: string[], appFolder?: string): Promise<Desktop>;
}

/** What Electron gives the built preload: its own require, and a bridge into the page's window. */
function preloadScript(appFolder: string): string {
  const source = readFileSync(join(appFolder, "out", "preload", "preload.cjs"), "utf8");
  return `(() => {
    const listeners = {};
    window.__fromMain = (channel) => listeners[channel]?.({});
    // Electron clones what crosses; what cannot be cloned fails here as it would there.
    const cross = (kind, channel, words) => window.__toMain(kind, channel, structuredClone(words));
    const electron = {
      contextBridge: { exposeInMainWorld: (name, api) =>
        Object.defineProperty(window, name, { value: Object.freeze(api), enumerable: true }) },
      ipcRenderer: {
        invoke: async (channel, ...words) => cross("invoke", channel, words),
        send: (channel, ...words) => void cross("send", channel, words),
        on: (channel, listener) => { listeners[channel] = listener; },
      },
    };
    const require = (name) => { if (name !== "electron") throw new Error("no module " + name); return electron; };
    (() => {
${source}
})();
  })();`;
}

async function bootDesktop(page: Page, folder: string, words: string[], appFolder: string): Promise<Desktop> {
  // The window is ready before the app can ask it to load anything.
  await page.exposeBinding("__toMain", ({ frame }, kind: string, channel: string, sent: unknown[]) => {
    if (desktop.deaf && kind === "invoke") throw new Error("nobody answers");
    return ask({ do: kind, channel, words: sent, frame: frameOf(frame) });
  });
  await page.addInitScript(preloadScript(appFolder));
  page.on("pageerror", (error) => desktop.faults.push(error.message));
  page.on("console", (message) => {
    if (message.type() === "error") desktop.faults.push(message.text());
  });
  const child: ChildProcess = fork(join(root, "test", "security", "electron-boot.mjs"), words, {
    env: { ...process.env, FLOCWRIGHT_FOLDER: folder, STAND_IN_ROOT: appFolder },
    serialization: "advanced",
    stdio: ["ignore", "ignore", "inherit", "ipc"],
  });
  const waiting = new Map<number, { answer(value: unknown): void; refuse(error: Error): void }>();
  const told: Record<string, () => void> = {};
  const said = (word: string) => new Promise<void>((resolve) => (told[word] = resolve));
  const [ready, closed, quit] = [said("ready"), said("closed"), said("quit")];
  let last = 0;
  // A page may still be loading when the app has gone: then nobody answers it, which is no fault.
  const ask = (message: object): Promise<unknown> =>
    new Promise((resolve, reject) => {
      if (!child.connected) return reject(new Error("the app has gone"));
      last += 1;
      waiting.set(last, { answer: resolve, refuse: reject });
      child.send({ id: last, ...message }, (error) => (error ? reject(error) : null));
    });

  const server = createServer((request, response) => {
    const path = request.url ?? "/";
    void ask({ do: "page", url: `${appOrigin}${path}`, method: request.method }).then(
      (answer) => {
        const { status, headers, body } = answer as PageAnswer;
        desktop.asked.push({
          method: request.method ?? "",
          path,
          status,
          policy: headers["content-security-policy"] ?? "",
        });
        response.writeHead(status, headers).end(body);
      },
      () => response.destroy(),
    );
  });
  const origin = await listen(server);
  const toApp = (url: string) => (url.startsWith(`${origin}/`) ? appOrigin + url.slice(origin.length) : url);

  const desktop: Desktop = {
    page,
    asked: [],
    faults: [],
    deaf: false,
    crash: async () => void (await ask({ do: "crash" })),
    pressClose: async () => void (await ask({ do: "close" })),
    press: async (button) => void (await ask({ do: "press", button })),
    second: async (line) => void (await ask({ do: "second", words: line })),
    seen: async () => (await ask({ do: "seen" })) as Awaited<ReturnType<Desktop["seen"]>>,
    closed,
    quit,
    end() {
      child.kill("SIGKILL");
      server.closeAllConnections();
    },
  };
  child.on(
    "message",
    (message: { id?: number; answer?: unknown; say?: string; url?: string; channel?: string }) => {
      if (message.id !== undefined) {
        waiting.get(message.id)?.answer(message.answer);
        waiting.delete(message.id);
      } else if (message.say === "load")
        void page.goto(message.url!.replace(appOrigin, origin)).catch(() => null);
      else if (message.say === "send")
        void page
          .evaluate((channel) => {
            (window as unknown as { __fromMain?(channel: string): void }).__fromMain?.(channel);
          }, message.channel!)
          .catch(() => null);
      else told[message.say ?? ""]?.();
    },
  );
  // Whoever still waits for an app that has gone is told so, or its page would never come to rest.
  child.once("exit", () => {
    for (const one of waiting.values()) one.refuse(new Error("the app has gone"));
    waiting.clear();
    server.close();
    server.closeAllConnections();
  });
  const frameOf = (frame: Frame) => ({ url: toApp(frame.url()), parent: frame.parentFrame() ? {} : null });
  await ready;
  await page.waitForURL(`${origin}/**`);
  return desktop;
}

async function listen(server: Server): Promise<string> {
  await new Promise<void>((resolve) => server.listen(0, "127.0.0.1", resolve));
  return `http://127.0.0.1:${(server.address() as AddressInfo).port}`;
}

/** A test that boots the desktop entry, as often as it likes, on a folder of its own. */
export const test = base.extend<{ desktop: Boots }>({
  desktop: async ({ browser }, use) => {
    const built = await ensureBuilt();
    if (!built.ok) throw new Error(built.message);
    const folder = mkdtempSync(join(tmpdir(), "flocwright-desktop-"));
    const running: Desktop[] = [];
    await use({
      folder,
      async boot(words = [], appFolder = root) {
        const page = await browser.newPage({ viewport: { width: 1280, height: 800 }, locale: "en-GB" });
        const app = await bootDesktop(page, folder, words, appFolder);
        running.push(app);
        return app;
      },
    });
    for (const app of running) {
      app.end();
      // A page that was being loaded anew while its app ended does not always come to rest; its browser ends anyway.
      await Promise.race([app.page.close(), new Promise((resolve) => setTimeout(resolve, 5000))]);
    }
    rmSync(folder, { recursive: true, force: true });
  },
});

export { expect } from "@playwright/test";
