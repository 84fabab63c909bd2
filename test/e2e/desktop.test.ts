import { cpSync, existsSync, mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Page } from "@playwright/test";
import { contentPolicy } from "../../main/hosts/loopback/policy.ts";
import { contract } from "../../src/contract.ts";
import { runVerb } from "./app.ts";
import { expect, test } from "./desktop.ts";
import { draftsIn, turbidities } from "./in-file.ts";

const root = join(import.meta.dirname, "..", "..");
const demoFile = "Demo (invented).flocwright";

const room = (page: Page, name: string) =>
  page.getByRole("navigation").getByRole("link", { name: new RegExp(`^${name}`) });
const cell = (page: Page, jar: number) => page.getByLabel(new RegExp(`^jar ${jar}, turbidity`)).first();

async function openDemo(page: Page): Promise<void> {
  await page.getByRole("button", { name: "Open the invented demo" }).click();
  // Writing the demo is some dozen durable transactions, which a busy disk makes slow.
  await expect(room(page, "Bench")).toBeVisible({ timeout: 25_000 });
  await room(page, "Bench").click();
  await expect(cell(page, 4)).toBeVisible();
}

test("the built entry and preload carry an edit from the real screens into the study file", async ({
  desktop,
}) => {
  const app = await desktop.boot();
  const { page } = app;
  await openDemo(page);
  expect(await page.evaluate(() => Object.keys(window.flocwright!))).toEqual(Object.keys(contract));
  await cell(page, 4).fill("144.5");
  await cell(page, 4).press("Tab");
  await expect(page.getByRole("status").filter({ hasText: /^saved \d/ })).toBeVisible();
  const file = join(desktop.folder, demoFile);
  expect(turbidities(file)).toContain(144.5);
  for (const name of ["Sample", "Curves", "Dose", "Plant", "Record"]) {
    await room(page, name).click();
    await expect(page).toHaveURL(new RegExp(`#/${name.toLowerCase()}`));
    await expect(page.locator("main")).toContainText(/\w{4}/);
  }
  await page.getByRole("button", { name: "Undo" }).click();
  await expect.poll(() => turbidities(file)).not.toContain(144.5);

  // Everything shown came from the entry's own list of pages, under the one policy; nothing else was asked for.
  expect(app.asked.length).toBeGreaterThan(3);
  for (const one of app.asked)
    expect(one).toMatchObject({ method: "GET", status: 200, policy: contentPolicy });
  expect(app.faults).toEqual([]);
  const inline = await page.evaluate(() => {
    const script = document.createElement("script");
    script.textContent = "window.wentThrough = true";
    document.body.append(script);
    return "wentThrough" in window;
  });
  expect(inline).toBe(false);
  await app.pressClose();
  await app.quit;
  expect(existsSync(`${file}.lock`)).toBe(false);
});

test("a crashed page comes back onto its study, its room's numbers and its refused text", async ({
  desktop,
}) => {
  const app = await desktop.boot();
  const { page } = app;
  await openDemo(page);
  await cell(page, 4).fill("141");
  await cell(page, 4).press("Tab");
  await cell(page, 5).fill("12 abc");
  await cell(page, 5).press("Tab");
  await expect(page.getByText(/is more than a number/)).toBeVisible();
  const file = join(desktop.folder, demoFile);
  await expect.poll(() => turbidities(file)).toContain(141);
  await expect.poll(() => draftsIn(file)).toContain("12 abc");
  const loads = () => app.asked.filter(({ path }) => path === "/index.html").length;
  const before = loads();
  // The page of before is shown until the new one has begun: only then is anything pressed.
  const again = page.waitForEvent("domcontentloaded");
  await app.crash();
  await again;
  expect(loads()).toBe(before + 1);
  await room(page, "Bench").click();
  await expect(cell(page, 4)).toHaveValue("141");
  await expect(cell(page, 5)).toHaveValue("12 abc");
  await expect(page.getByText(/is more than a number/)).toBeVisible();
  // A page that crashes over and over is not loaded for ever: the third time within a minute the person is asked.
  await app.press(1);
  await app.crash();
  await app.crash();
  await app.closed;
  expect((await app.seen()).messages[0]?.message).toMatch(/stopped several times/);
});

test("closing waits for the last edit and keeps text that was still being typed", async ({ desktop }) => {
  const app = await desktop.boot();
  await openDemo(app.page);
  await cell(app.page, 4).fill("143");
  await cell(app.page, 4).press("Tab");
  await cell(app.page, 6).fill("91");
  await app.pressClose();
  await app.quit;
  const file = join(desktop.folder, demoFile);
  expect(turbidities(file)).toContain(143);
  expect(draftsIn(file)).toContain("91");
  expect((await app.seen()).messages).toEqual([]);

  // Started on that file, as by a double click: the text is offered again.
  const again = await desktop.boot([file]);
  await room(again.page, "Bench").click();
  await expect(cell(again.page, 4)).toHaveValue("143");
  await expect(cell(again.page, 6)).toHaveValue("91");
  await expect(again.page.getByText(/Not accepted yet/).first()).toBeVisible();
});

test("what cannot be saved holds the window until the person says so", async ({ desktop }) => {
  const app = await desktop.boot();
  await openDemo(app.page);
  app.deaf = true;
  await cell(app.page, 4).fill("142");
  await cell(app.page, 4).press("Tab");
  await expect(app.page.getByText("not saved yet", { exact: true })).toBeVisible();
  await app.press(0);
  await app.pressClose();
  await expect.poll(async () => (await app.seen()).messages.length).toBe(1);
  expect((await app.seen()).messages[0]?.message).toMatch(/not saved yet/);
  expect((await app.seen()).quits).toBe(0);
  app.deaf = false;
  await expect(app.page.getByRole("status").filter({ hasText: /^saved \d/ })).toBeVisible();
  await app.pressClose();
  await app.quit;
  expect(turbidities(join(desktop.folder, demoFile))).toContain(142);
});

test("a page that does not answer cannot keep its window open", async ({ desktop }) => {
  const app = await desktop.boot();
  await app.page.goto("about:blank");
  const started = Date.now();
  await app.pressClose();
  await app.closed;
  expect(Date.now() - started).toBeGreaterThan(4000);
  expect(Date.now() - started).toBeLessThan(9000);
});

test("a second start hands its study over to the window that is open, which saves first", async ({
  desktop,
}) => {
  const other = join(desktop.folder, "other.flocwright");
  expect((await runVerb(["demo", other])).code).toBe(0);
  const app = await desktop.boot();
  await openDemo(app.page);
  await cell(app.page, 4).fill("139");
  await cell(app.page, 4).press("Tab");
  await app.second(["flocwright", "--flag", other]);
  await expect.poll(() => existsSync(`${other}.lock`)).toBe(true);
  expect(turbidities(join(desktop.folder, demoFile))).toContain(139);
  // The study before is let go once the other one is safely open.
  await expect.poll(() => existsSync(join(desktop.folder, `${demoFile}.lock`))).toBe(false);
  await room(app.page, "Bench").click();
  await expect(cell(app.page, 4)).toHaveValue("146");
  await app.second(["flocwright", join(desktop.folder, "nowhere.flocwright")]);
  await expect.poll(async () => (await app.seen()).errors.length).toBe(1);
  await expect(cell(app.page, 4)).toHaveValue("146");
});

test("the packed files alone are enough: no module beside them is needed", async ({ desktop }) => {
  const packed = mkdtempSync(join(tmpdir(), "flocwright-packed-"));
  cpSync(join(root, "out"), join(packed, "out"), { recursive: true });
  cpSync(join(root, "package.json"), join(packed, "package.json"));
  const app = await desktop.boot([], packed);
  await openDemo(app.page);
  expect(app.faults).toEqual([]);
  await app.pressClose();
  await app.quit;
  rmSync(packed, { recursive: true, force: true });
});
