import { spawnSync } from "node:child_process";
import { existsSync, mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { ensureBuilt } from "../../main/hosts/loopback/build.ts";

const root = join(import.meta.dirname, "..", "..");
let folder = "";
let seen: Record<string, unknown> = {};

function drive(env: Record<string, string> = {}): Record<string, unknown> {
  const result = spawnSync(process.execPath, [join(import.meta.dirname, "electron-driver.mjs")], {
    env: { ...process.env, FLOCWRIGHT_FOLDER: folder, ...env },
    encoding: "utf8",
  });
  if (result.status !== 0) throw new Error(result.stderr);
  return JSON.parse(result.stdout.trim().split("\n").at(-1)!) as Record<string, unknown>;
}

beforeAll(async () => {
  const built = await ensureBuilt();
  if (!built.ok || !existsSync(join(root, "out", "main", "electron.js")))
    throw new Error("the desktop entry is not built");
  folder = mkdtempSync(join(tmpdir(), "flocwright-electron-"));
  seen = drive();
}, 60_000);
afterAll(() => rmSync(folder, { recursive: true, force: true }));

describe("the built desktop entry under a stand-in for the electron module", () => {
  test("its window is isolated, sandboxed and without node", () => {
    expect(seen["webPreferences"]).toMatchObject({
      contextIsolation: true,
      sandbox: true,
      nodeIntegration: false,
      webviewTag: false,
    });
    expect(seen["loaded"]).toEqual(["flocwright://app/index.html"]);
    expect(seen["schemes"]).toEqual([
      { scheme: "flocwright", privileges: { standard: true, secure: true, supportFetchAPI: true } },
    ]);
  });
  test("goes nowhere else: no popup, navigation, redirect, webview or permission", () => {
    expect(seen).toMatchObject({
      popup: { action: "deny" },
      navigateAway: true,
      navigateLookalike: true,
      navigateHome: false,
      redirectAway: true,
      webview: true,
      permission: false,
      permissionCheck: false,
    });
  });
  test("its protocol serves the build under a strict policy and nothing outside it", () => {
    expect(seen["index"]).toMatchObject({
      status: 200,
      policy: expect.stringContaining("script-src 'self'") as string,
    });
    expect((seen["index"] as { policy: string }).policy).not.toMatch(/unsafe|\*/);
    for (const name of ["traversal", "encodedTraversal", "otherHost"])
      expect(seen[name], name).toMatchObject({ status: 404 });
  });
  test("answers its own top frame only, on one channel", () => {
    expect(seen["channels"]).toEqual(["flocwright:call"]);
    expect(seen["about"]).toMatchObject({ ok: true, value: { host: "electron", dialogs: true } });
    expect(seen["unknownCall"]).toMatchObject({ ok: false, code: "bad-input" });
    for (const name of ["foreignFrame", "childFrame", "noFrame"])
      expect(seen[name], name).toMatchObject({ ok: false, code: "refused" });
  });
  test("prints its window into the PDF that its own dialog names, and nowhere else", () => {
    expect(seen).toMatchObject({
      pdfCancelled: { ok: true, value: { saved: false } },
      pdfSaved: { ok: true, value: { saved: true } },
      pdfFile: "%PDF- of the stand-in",
      pdfNowhere: {
        ok: false,
        code: "refused",
        message: expect.stringMatching(/could not be written/) as string,
      },
      pdfOddSize: { ok: false, code: "bad-input" },
      pdfForeign: { ok: false, code: "refused" },
    });
    // a cancelled dialog prints nothing; a name from the page cannot leave the folder the person chooses
    expect(seen["printed"]).toEqual([
      expect.objectContaining({ pageSize: "Letter", printBackground: true }),
      expect.objectContaining({ pageSize: "A4" }),
    ]);
    for (const asked of seen["saves"] as object[])
      expect(asked).toEqual({
        ofWindow: true,
        filters: [{ name: "PDF", extensions: ["pdf"] }],
        defaultPath: "Setting sheet  a b c.pdf",
      });
  });
  test("the preload exposes one function over that channel", () => {
    expect(seen["exposed"]).toEqual({ flocwright: ["call"] });
    expect(seen["invoked"]).toEqual([["flocwright:call", "host.about", { x: 1 }]]);
  });
  test("a crashed page is loaded anew onto the same study; quitting frees the lock", () => {
    expect(seen).toMatchObject({
      lockedWhileOpen: true,
      reloadedAfterCrash: ["flocwright://app/index.html"],
      afterReload: true,
      quits: 1,
      lockedAfterQuit: false,
    });
  });
  test("a second instance hands over and quits without a window", () => {
    expect(seen["focusedBySecond"]).toBe(true);
    expect(drive({ STAND_IN_SECOND: "yes" })).toEqual({ windows: 0, quits: 1 });
  });
});

function electronRuntime(): string | null {
  const note = join(root, "node_modules", "electron", "path.txt");
  if (!existsSync(note)) return null;
  const path = join(root, "node_modules", "electron", "dist", readFileSync(note, "utf8").trim());
  return existsSync(path) ? path : null;
}

test.skipIf(electronRuntime() === null)(
  "the real Electron starts and says its version (skipped where its runtime is absent)",
  () => {
    const result = spawnSync(electronRuntime()!, ["--version"], { encoding: "utf8", timeout: 20_000 });
    expect(result.stdout).toMatch(/^v\d+\./);
  },
);
