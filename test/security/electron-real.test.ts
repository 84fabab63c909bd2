import { existsSync, mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { _electron, type ElectronApplication, type Page } from "playwright";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { ensureBuilt } from "../../main/hosts/loopback/build.ts";
import { contentPolicy } from "../../main/hosts/loopback/policy.ts";
import { contract } from "../../src/contract.ts";

const root = join(import.meta.dirname, "..", "..");

/** Electron's own program where its runtime is installed, else null. */
function electronRuntime(): string | null {
  const note = join(root, "node_modules", "electron", "path.txt");
  if (!existsSync(note)) return null;
  const path = join(root, "node_modules", "electron", "dist", readFileSync(note, "utf8").trim());
  return existsSync(path) ? path : null;
}

const runtime = electronRuntime();
const display =
  process.platform !== "linux" || Boolean(process.env["DISPLAY"] ?? process.env["WAYLAND_DISPLAY"]);

// Written against Electron's documents; where the runtime is absent nothing here has been run.
describe.skipIf(runtime === null || !display)(
  "the real Electron (skipped where its runtime or a display is absent)",
  () => {
    let folder = "";
    let app: ElectronApplication;
    let page: Page;
    const lock = () => join(folder, "Demo (invented).flocwright.lock");

    beforeEach(async () => {
      const built = await ensureBuilt();
      if (!built.ok) throw new Error(built.message);
      folder = mkdtempSync(join(tmpdir(), "flocwright-real-"));
      app = await _electron.launch({
        executablePath: runtime!,
        args: [...(process.getuid?.() === 0 ? ["--no-sandbox"] : []), root],
        env: { ...(process.env as Record<string, string>), FLOCWRIGHT_FOLDER: folder },
      });
      page = await app.firstWindow();
    }, 60_000);
    afterEach(async () => {
      await app.close().catch(() => undefined);
      rmSync(folder, { recursive: true, force: true });
    });

    test("starts on the screens, served by its own protocol under the strict policy", async () => {
      await page.getByRole("heading", { name: "Flocwright" }).waitFor();
      expect(page.url()).toMatch(/^flocwright:\/\/app\/index\.html/);
      const policy = await page.evaluate(async () =>
        (await fetch("flocwright://app/index.html")).headers.get("content-security-policy"),
      );
      expect(policy).toBe(contentPolicy);
      const inline = await page.evaluate(() => {
        const script = document.createElement("script");
        script.textContent = "window.wentThrough = true";
        document.body.append(script);
        return "wentThrough" in window;
      });
      expect(inline).toBe(false);
    });
    test("the preload exposes the contract and nothing of node", async () => {
      const seen = await page.evaluate(() => ({
        calls: Object.keys((window as unknown as { flocwright: object }).flocwright),
        node: ["require", "process", "module", "Buffer", "electron"].filter((name) => name in window),
      }));
      expect(seen).toEqual({ calls: Object.keys(contract), node: [] });
    });
    test("goes nowhere else and opens nothing", async () => {
      const before = page.url();
      await page.evaluate(() => {
        window.open("https://example.invalid/");
        location.href = "https://example.invalid/";
      });
      await page.waitForTimeout(500);
      expect(page.url()).toBe(before);
      expect(app.windows()).toHaveLength(1);
    });
    test("writes a study, and quitting gives its lock back", async () => {
      await page.getByRole("button", { name: "Open the invented demo" }).click();
      await page
        .getByRole("navigation")
        .getByRole("link", { name: /^Sample/ })
        .waitFor();
      expect(existsSync(lock())).toBe(true);
      await app.close();
      expect(existsSync(lock())).toBe(false);
      expect(existsSync(join(folder, "Demo (invented).flocwright"))).toBe(true);
    });
  },
);
