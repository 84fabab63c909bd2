import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import type { Page } from "@playwright/test";
import { writeDemo } from "../../main/service/standalone.ts";
import { demoCommands } from "../../src/study/demo.ts";
import { readSheetFile } from "../../src/exchange/sheet-file.ts";
import { gridCommand } from "../bench/grid.ts";
import { writeLargeStudy } from "../bench/large-study.ts";
import { expect, runVerb, test } from "./app.ts";

const room = (page: Page, name: string) =>
  page.getByRole("navigation").getByRole("link", { name: new RegExp(`^${name}`) });

/** Goes to the import with a file of so many jars that adding them takes a while. */
async function chooseMany(page: Page, folder: string, rows: number): Promise<void> {
  const lines = Array.from({ length: rows }, (_, i) => `many ${i},${10 + (i % 40) / 2},${20 + (i % 60)}`);
  const file = join(folder, "many.csv");
  writeFileSync(file, ["jar,syringe_a_ml,turbidity_ntu", ...lines].join("\n"));
  await room(page, "Record").click();
  await page.getByRole("button", { name: "Import or export" }).click();
  await page.getByLabel("Choose a CSV file or a workbook").setInputFiles(file);
  await page.getByLabel("Stock solution of polymer A").selectOption({ index: 1 });
}

test("an import of many jars says how far it is, and cancelled half way it adds nothing", async ({
  app,
  watched: page,
}) => {
  const host = await app.host("many.flocwright", true);
  await page.goto(host.url);
  await chooseMany(page, app.folder, 50_000);
  await page.getByRole("button", { name: /^Add 50000 jars/ }).click({ timeout: 30_000 });
  await expect(
    page.getByRole("status").filter({ hasText: /Adding the jars: \d+ of 100001 records/ }),
  ).toBeVisible();
  await page.getByRole("button", { name: "Cancel" }).click();
  await expect(page.getByRole("status").filter({ hasText: "Cancelled. Nothing was added." })).toBeVisible();
  await expect(page.getByRole("progressbar")).toHaveCount(0);
  await expect(room(page, "Bench")).toContainText("13 jars");
  // The file is still there to be added, and undo knows of nothing that was added.
  await expect(page.getByRole("button", { name: /^Add 50000 jars/ })).toBeEnabled();
  await host.kill();
  const { out } = await runVerb(["inspect", join(app.folder, "many.flocwright")]);
  expect(JSON.parse(out)).toMatchObject({ series: 2, jars: 24, history: "whole" });
});

test("many jars are one step: added whole, taken back whole", async ({ app, watched: page }) => {
  const host = await app.host("whole.flocwright", true);
  await page.goto(host.url);
  await chooseMany(page, app.folder, 1500);
  await page.getByRole("button", { name: /^Add 1500 jars/ }).click();
  await expect(page.getByText("Added 1500 jars with 1500 readings to many.")).toBeVisible();
  await page.reload();
  await room(page, "Record").click();
  // the history is told in short, with the whole count
  await expect(page.getByText(/3.?001 records/).first()).toBeVisible();
  await page.getByRole("button", { name: "Undo" }).click();
  // what is taken back is shown once the host has it on disk
  await expect(page.getByLabel("Series").first().getByRole("option", { name: "many" })).toHaveCount(0);
  await host.kill();
  const { out } = await runVerb(["inspect", join(app.folder, "whole.flocwright")]);
  expect(JSON.parse(out)).toMatchObject({ series: 2, jars: 24, history: "whole" });
});

test("a report that takes a while says so, can be cancelled, and is made when it is asked for again", async ({
  app,
  watched: page,
}) => {
  const path = join(app.folder, "report.flocwright");
  const written = writeDemo(path, (at) => [...demoCommands(at), gridCommand()], new Date().toISOString());
  if (!written.ok) throw new Error(written.message);
  const host = await app.host("report.flocwright", false);
  await page.goto(host.url);
  await room(page, "Record").click();
  await page.getByRole("button", { name: "Report", exact: true }).click();
  await expect(page.getByRole("status").filter({ hasText: /Making the report/ })).toBeVisible();
  await page.getByRole("button", { name: "Cancel" }).click();
  await expect(
    page.getByRole("status").filter({ hasText: "The report was cancelled. Nothing was changed." }),
  ).toBeVisible();
  await expect(page.getByRole("heading", { name: /^Trial report/ })).toHaveCount(0);
  await page.getByRole("button", { name: "Make the report" }).click();
  await expect(page.getByRole("heading", { name: /^Trial report/ })).toBeVisible({ timeout: 40_000 });
});

test("how a number was made opens by keyboard, and the focus comes back to its button", async ({
  app,
  watched: page,
}) => {
  const host = await app.host("made.flocwright", true);
  await page.goto(host.url);
  const button = page.getByRole("button", { name: /^How was this made/ }).first();
  await button.focus();
  await page.keyboard.press("Enter");
  const dialog = page.getByRole("dialog", { name: /^How was this made/ });
  await expect(dialog).toContainText("Source:");
  await expect(button).toHaveAttribute("aria-expanded", "true");
  await page.keyboard.press("Escape");
  await expect(dialog).toHaveCount(0);
  await expect(button).toBeFocused();
  await button.click();
  await dialog.getByRole("button", { name: "Close" }).click();
  await expect(button).toBeFocused();
  // Pressed again, the button itself closes what it opened.
  await button.click();
  await expect(dialog).toBeVisible();
  await button.click();
  await expect(dialog).toHaveCount(0);
});

test("an export of a large study says how far it is, cancelled it gives no file, and again it gives it whole", async ({
  app,
  watched: page,
}) => {
  test.slow();
  const series = 240;
  writeLargeStudy(
    join(app.folder, "large.flocwright"),
    { series, jarsPerSeries: 50, changes: 60_000 },
    new Date().toISOString(),
  );
  const host = await app.host("large.flocwright", false);
  await page.goto(host.url);
  await room(page, "Record").click({ timeout: 30_000 });
  await page.getByRole("button", { name: "Import or export" }).click();
  const card = page.getByRole("region", { name: "Export" });
  const workbook = card.getByRole("button", { name: "Whole study as a workbook (.xlsx)" });
  const given: string[] = [];
  page.on("download", (download) => given.push(download.suggestedFilename()));

  await workbook.click();
  await expect(
    card.getByRole("status").filter({ hasText: /(Working out the jars|Writing the file): \d+ of \d+/ }),
  ).toBeVisible();
  await expect(card.getByRole("progressbar")).toBeVisible();
  await expect(workbook).toBeDisabled();
  await card.getByRole("button", { name: "Cancel" }).click();
  await expect(card.getByRole("status").filter({ hasText: "Cancelled. No file was written." })).toBeVisible();
  await expect(card.getByRole("progressbar")).toHaveCount(0);
  await page.waitForTimeout(1500);
  expect(given).toEqual([]);

  const downloaded = page.waitForEvent("download", { timeout: 60_000 });
  await workbook.click();
  const file = await (await downloaded).path();
  await expect(
    card.getByRole("status").filter({ hasText: "large.xlsx was given to your downloads." }),
  ).toBeVisible();
  expect(given).toEqual(["large.xlsx"]);
  const read = await readSheetFile(new Uint8Array(readFileSync(file)), "large.xlsx");
  if (!read.ok) throw new Error(read.message);
  // the demo's jars with all their readings, those of the large series, and the heads
  const [jars] = read.value.sheets;
  expect(jars!.sheet).toBe("jars");
  expect(jars!.rows.filter(({ cells }) => String(cells[0]).startsWith("Large ")).length).toBe(series * 50);
});

test("the reading of a large file says how far it is, and cancelled it leaves the study as it was", async ({
  app,
  watched: page,
}) => {
  const host = await app.host("preview.flocwright", true);
  await page.goto(host.url);
  await chooseMany(page, app.folder, 45_000);
  await expect(page.getByRole("status").filter({ hasText: /Reading the rows: \d+ of 45000/ })).toBeVisible({
    timeout: 30_000,
  });
  await expect(page.getByRole("progressbar")).toBeVisible();
  await page.getByRole("button", { name: "Cancel" }).click();
  await expect(page.getByRole("status").filter({ hasText: "Cancelled. Nothing was added." })).toBeVisible();
  await expect(page.getByRole("progressbar")).toHaveCount(0);
  await expect(page.getByRole("button", { name: /^Add/ })).toHaveCount(0);
  await expect(room(page, "Bench")).toContainText("13 jars");
  // The same file can be chosen again, and is then read to its end.
  await page.getByLabel("Choose a CSV file or a workbook").setInputFiles(join(app.folder, "many.csv"));
  await page.getByLabel("Stock solution of polymer A").selectOption({ index: 1 });
  await expect(page.getByRole("button", { name: /^Add 45000 jars/ })).toBeEnabled({ timeout: 60_000 });
});
