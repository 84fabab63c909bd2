import { spawnSync } from "node:child_process";
import { existsSync, mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { ensureBuilt } from "../../main/hosts/loopback/build.ts";
import { contentPolicy } from "../../main/hosts/loopback/policy.ts";
import { contract } from "../../src/contract.ts";

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
      nodeIntegrationInWorker: false,
      nodeIntegrationInSubFrames: false,
      webSecurity: true,
      allowRunningInsecureContent: false,
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
      device: false,
      frameAway: true,
      frameInside: true,
      navigateRoom: false,
      navigateFile: true,
      navigateScript: true,
    });
  });
  test("asks the network for nothing and hands out only what the page made", () => {
    expect(seen["requests"]).toEqual({
      "flocwright://app/assets/index.js": false,
      "blob:flocwright://app/1": false,
      "data:image/png;base64,": false,
      "https://example.invalid/": true,
      "http://127.0.0.1:80/": true,
      "file:///etc/hostname": true,
      "ws://127.0.0.1/": true,
      "blob:https://example.invalid/1": true,
      "flocwright://elsewhere/index.html": true,
    });
    expect(seen["downloads"]).toEqual({
      "blob:flocwright://app/1": false,
      "data:image/png;base64,": false,
      "https://example.invalid/x": true,
      "data:text/html,x": true,
    });
    expect(seen["spellChecker"]).toBe(false);
    expect(JSON.stringify(seen["menus"])).not.toMatch(/help|devtools|reload/i);
  });
  test("its menu speaks the system's language from the start, where it is one of ours", () => {
    expect(seen["menus"]).toContain("View");
    const german = drive({ STAND_IN_LOCALE: "de-AT" })["menus"];
    expect(german).toContain("Ansicht");
    expect(german).not.toContain("View");
  });
  test("its protocol serves the build under a strict policy and nothing outside it", () => {
    expect(seen["index"]).toMatchObject({
      status: 200,
      policy: expect.stringContaining("script-src 'self'") as string,
    });
    expect((seen["index"] as { policy: string }).policy).toBe(contentPolicy);
    expect(contentPolicy).not.toMatch(/unsafe|\*|https?:/);
    expect(contentPolicy).toMatch(/^default-src 'none'; script-src 'self'; style-src 'self';/);
    expect(seen["posted"]).toBe(405);
    for (const name of [
      "traversal",
      "encodedTraversal",
      "otherHost",
      "backslashes",
      "doubled",
      "brokenEncoding",
      "nothing",
      "absolute",
      "listed",
    ])
      expect(seen[name], name).toMatchObject({ status: 404 });
  });
  test("answers its own top frame only, on one channel", () => {
    expect(seen["channels"]).toEqual(["flocwright:call"]);
    expect(seen["about"]).toMatchObject({ ok: true, value: { host: "electron", dialogs: true } });
    expect(seen["unknownCall"]).toMatchObject({ ok: false, code: "bad-input" });
    for (const name of ["foreignFrame", "childFrame", "noFrame", "otherPageOfOurs", "otherContents"])
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
  test("takes no path from a page: a file is named by the host's own token", () => {
    expect(seen["pathFromPage"]).toMatchObject({ ok: false, code: "refused" });
    expect(seen["pathAsName"]).toMatchObject({ ok: false, code: "bad-input" });
    // Every word a call takes in, by its schema: none is a path, a file or a folder.
    for (const [name, { input }] of Object.entries(contract))
      expect(Object.keys((input as { shape?: object }).shape ?? {}), name).not.toEqual(
        expect.arrayContaining([expect.stringMatching(/path|folder|directory/i)]),
      );
  });
  test("the preload exposes exactly the calls of the contract, each over that channel", () => {
    expect(seen["exposed"]).toEqual({ flocwright: Object.keys(contract) });
    expect(seen["invoked"]).toEqual([["flocwright:call", "host.about", { x: 1 }, "token"]]);
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
