import { mkdirSync, mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { chromium, type BrowserContext, type Page } from "@playwright/test";
import { ensureBuilt } from "../../main/hosts/loopback/build.ts";
import { startLoopback } from "../../main/hosts/loopback/server.ts";
import { closeContext, createContext, openDemoAtStart } from "../../main/service.ts";
import { findBrowser, quietFlags } from "../../scripts/browser.mjs";
import { expect, test } from "./app.ts";

const room = (page: Page, name: string) =>
  page.getByRole("navigation").getByRole("link", { name: new RegExp(`^${name}`) });
const cell = (page: Page, jar: number) => page.getByLabel(new RegExp(`^jar ${jar}, turbidity`)).first();

/** A second window of the browser that the first one was opened in. */
async function secondWindow(context: BrowserContext, url: string): Promise<Page> {
  const page = await context.newPage();
  await page.goto(url);
  return page;
}

test("a second window follows the first, edit by edit, and both go on editing", async ({
  app,
  watched: page,
}) => {
  const host = await app.host("two.flocwright", true);
  await page.goto(host.url);
  const other = await secondWindow(page.context(), host.url);
  for (const one of [page, other]) await room(one, "Bench").click();
  await cell(page, 4).fill("151");
  await cell(page, 4).press("Tab");
  await expect(cell(other, 4)).toHaveValue("151", { timeout: 6000 });
  await cell(other, 5).fill("152");
  await cell(other, 5).press("Tab");
  await expect(cell(page, 5)).toHaveValue("152", { timeout: 6000 });
  // One undo line for both: the first window takes the second one's edit back, then its own.
  await page.getByRole("button", { name: "Undo" }).click();
  await page.getByRole("button", { name: "Undo" }).click();
  await expect(cell(other, 4)).toHaveValue("146", { timeout: 6000 });
  // Text that is being typed here is not touched by what arrives from there.
  await cell(other, 6).fill("15");
  await cell(page, 6).fill("161");
  await cell(page, 6).press("Tab");
  await page.waitForTimeout(2500);
  await expect(cell(other, 6)).toHaveValue("15");
});

test("a window whose study was left in another one edits nothing, keeps its text and says so", async ({
  app,
  watched: page,
}) => {
  const host = await app.host("left.flocwright", true);
  await page.goto(host.url);
  const other = await secondWindow(page.context(), host.url);
  await room(other, "Bench").click();
  await cell(other, 4).fill("15");
  await room(page, "Record").click();
  await page.getByRole("button", { name: "Close and open another" }).click();
  await page.getByLabel("Name of the study").fill("Another one");
  await page.getByRole("button", { name: "Start a new study" }).click();
  await expect(room(page, "Sample")).toBeVisible();

  await expect(other.getByText(/Another window opened another study/).first()).toBeVisible({ timeout: 6000 });
  await cell(other, 4).press("Tab");
  await expect(cell(other, 4)).toHaveValue("15");
  await expect(room(page, "Bench")).not.toContainText("jars");
  await other.getByRole("button", { name: "Load this window anew" }).click();
  await expect(other.getByRole("button", { name: "Another one" })).toBeVisible();
});

test("undo in a window that has not seen the other one's edits yet leaves both with the same numbers", async ({
  app,
  watched: page,
}) => {
  const host = await app.host("gap.flocwright", true);
  await page.goto(host.url);
  const other = await secondWindow(page.context(), host.url);
  for (const one of [page, other]) await room(one, "Bench").click();
  // The second window looks for changes only while it is visible: here it is made not to look at all.
  await other.evaluate(() => Object.defineProperty(document, "visibilityState", { value: "hidden" }));
  for (const [jar, text] of [
    [4, "171"],
    [5, "172"],
    [6, "173"],
  ] as const) {
    await cell(page, jar).fill(text);
    await cell(page, jar).press("Tab");
    await expect(page.getByRole("status").filter({ hasText: /^saved \d/ })).toBeVisible();
  }
  await expect(cell(other, 4)).toHaveValue("146");
  await other.evaluate(() => dispatchEvent(new KeyboardEvent("keydown", { key: "y", ctrlKey: true })));
  await expect(cell(other, 5)).toHaveValue("172");
  await page.getByRole("button", { name: "Undo" }).click();
  await expect(cell(page, 6)).not.toHaveValue("173");
  const back = await cell(page, 6).inputValue();
  await other.evaluate(() => dispatchEvent(new KeyboardEvent("keydown", { key: "z", ctrlKey: true })));
  await expect(cell(other, 6)).toHaveValue(back);
  await expect(cell(other, 4)).toHaveValue("171");
  await expect(cell(page, 4)).toHaveValue("171");
});

// The page rightly complains while its host is dead, so its complaints are not watched here.
test("a window whose host is gone says so by itself, and asks before unsaved work is closed", async ({
  app,
  page,
}) => {
  const host = await app.host("gone.flocwright", true);
  await page.goto(host.url);
  await room(page, "Bench").click();
  await expect(cell(page, 4)).toBeVisible();
  await host.kill("SIGKILL");
  await expect(page.getByText(/does not answer/).first()).toBeVisible({ timeout: 6000 });
  await cell(page, 4).fill("138");
  await cell(page, 4).press("Tab");
  await expect(page.getByText("not saved yet", { exact: true })).toBeVisible();
  const asked = new Promise<string>((resolve) =>
    page.on("dialog", (dialog) => {
      resolve(dialog.type());
      void dialog.dismiss();
    }),
  );
  await page.close({ runBeforeUnload: true });
  expect(await asked).toBe("beforeunload");
  await expect(cell(page, 4)).toHaveValue("138");
});

test("the host knows how many browsers show it, and when the last window went, also by a kill", async () => {
  test.setTimeout(90_000);
  const built = await ensureBuilt();
  if (!built.ok) throw new Error(built.message);
  const folder = mkdtempSync(join(tmpdir(), "flocwright-windows-"));
  mkdirSync(join(folder, "shelf"));
  const context = createContext({
    host: "loopback",
    version: "0",
    now: () => new Date().toISOString(),
    folder: join(folder, "shelf"),
    dialogs: null,
  });
  await openDemoAtStart(context);
  const host = await startLoopback(context, { port: 0, pagesFolder: built.value, once: false });
  const profile = await chromium.launchPersistentContext(join(folder, "profile"), {
    executablePath: findBrowser() ?? undefined,
    args: quietFlags(),
  });
  try {
    const open = () => host.windows.open();
    const first = await secondWindow(profile, host.url);
    await expect.poll(open).toBe(1);
    const second = await secondWindow(profile, host.url);
    await expect(room(second, "Sample")).toBeVisible();
    // One connection a browser, however many windows: the browser allows few to one host.
    expect(open()).toBe(1);
    let ended = 0;
    host.windows.whenNone(3000, () => (ended += 1));
    await first.close();
    await expect.poll(open).toBe(1);
    await second.reload();
    await expect.poll(open).toBe(1);
    await second.waitForTimeout(3500);
    expect(ended).toBe(0);

    const started = Date.now();
    const pid = Number((await profileProcess(profile)) ?? NaN);
    process.kill(pid, "SIGKILL");
    await expect.poll(open, { timeout: 5000 }).toBe(0);
    await expect.poll(() => ended, { timeout: 8000 }).toBe(1);
    expect(Date.now() - started).toBeGreaterThanOrEqual(3000);
  } finally {
    await profile.close().catch(() => undefined);
    closeContext(context);
    await host.close();
    rmSync(folder, { recursive: true, force: true, maxRetries: 5 });
  }
});

/** The process of a browser that a test started, by the browser's own account. */
async function profileProcess(profile: BrowserContext): Promise<number | undefined> {
  const session = await profile.browser()!.newBrowserCDPSession();
  const { processInfo } = await session.send("SystemInfo.getProcessInfo");
  return processInfo.find(({ type }) => type === "browser")?.id;
}
