// Opens Flocwright: Electron where its runtime is or can be installed, else the same screens in a browser's app window.
import { spawn, spawnSync } from "node:child_process";
import { existsSync, mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { ensureBuilt } from "../main/hosts/loopback/build.ts";
import { endBrowser, endWithWindow } from "../main/hosts/loopback/app-window.ts";
import { endGracefully } from "../main/hosts/loopback/ending.ts";
import { startLoopback } from "../main/hosts/loopback/server.ts";
import { loopbackSupport } from "../main/hosts/loopback/support.ts";
import { createContext, openDemoAtStart } from "../main/service.ts";
import { findBrowser, quietFlags } from "./browser.mjs";

const root = join(import.meta.dirname, "..");
const installSeconds = 60;

function electronPath() {
  const folder = join(root, "node_modules", "electron");
  const note = join(folder, "path.txt");
  if (!existsSync(note)) return null;
  const path = join(folder, "dist", readFileSync(note, "utf8").trim());
  return existsSync(path) ? path : null;
}

function installElectron() {
  const script = join(root, "node_modules", "electron", "install.js");
  if (!existsSync(script)) return;
  spawnSync(process.execPath, [script], { cwd: root, stdio: "ignore", timeout: installSeconds * 1000 });
}

function hasDisplay() {
  return process.platform !== "linux" || Boolean(process.env.DISPLAY || process.env.WAYLAND_DISPLAY);
}

async function openLoopback(pagesFolder) {
  const context = createContext(loopbackSupport(null));
  const opened = await openDemoAtStart(context);
  if (!opened.ok) console.error(opened.message);
  const browser = hasDisplay() ? findBrowser() : null;
  const running = await startLoopback(context, { port: 0, pagesFolder, once: browser !== null });
  if (!browser) {
    endGracefully(context, running);
    console.log(
      `${hasDisplay() ? "No browser was found" : "There is no display"}: open ${running.url} in a browser. Ctrl+C ends.`,
    );
    return;
  }
  const profile = mkdtempSync(join(tmpdir(), "flocwright-"));
  const child = spawn(
    browser,
    [`--app=${running.url}`, `--user-data-dir=${profile}`, "--window-size=1280,800", ...quietFlags()],
    { stdio: "ignore" },
  );
  const end = endGracefully(context, running, async () => {
    await endBrowser(child);
    rmSync(profile, { recursive: true, force: true, maxRetries: 5 });
  });
  child.on("error", () => console.log(`The browser could not be started: open ${running.url} in one.`));
  endWithWindow(child, running.windows, end);
}

const built = await ensureBuilt();
if (!built.ok) {
  console.error(built.message);
  process.exit(1);
}
let electron = electronPath();
if (!electron && hasDisplay() && process.env.FLOCWRIGHT_HOST !== "browser") {
  installElectron();
  electron = electronPath();
}
if (electron && hasDisplay() && process.env.FLOCWRIGHT_HOST !== "browser") {
  const child = spawn(electron, [root], { stdio: "inherit" });
  // The desktop window saves and closes by itself when it is asked to; this process goes with it.
  for (const signal of ["SIGINT", "SIGTERM", "SIGHUP"]) process.on(signal, () => child.kill(signal));
  child.on("exit", (code) => process.exit(code ?? 0));
} else {
  console.log(
    "Electron's runtime is not used here: the same screens are served to this machine only, in a browser.",
  );
  await openLoopback(built.value);
}
