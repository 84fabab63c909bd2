import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import AxeBuilder from "@axe-core/playwright";
import type { Page } from "@playwright/test";
import { writeWorkbook } from "../../src/exchange/workbook-out.ts";
import { expect, runVerb, test } from "./app.ts";

const room = (page: Page, name: string) =>
  page.getByRole("navigation").getByRole("link", { name: new RegExp(`^${name}`) });

async function openExchange(page: Page): Promise<void> {
  await room(page, "Record").click();
  await page.getByRole("button", { name: "Import or export" }).click();
  await expect(page.getByRole("heading", { name: "Import jars and readings" })).toBeVisible();
}

const trial = [
  "Jar;Dose (kg/t);Turbidity NTU;Cake TS %;Remarks",
  "1;0;>1000;9,8;no polymer",
  "2;2,5;447,5;14,94;",
  "3;3,5;abc;16,88;typed badly",
  "4;4,5;66,25;18,2;",
  "4;4,5;64;;same jar again",
].join("\r\n");

test("a sheet with semicolons, decimal commas and a bad row is matched, looked at, added and taken back", async ({
  app,
  watched: page,
}) => {
  const host = await app.host("import.flocwright", true);
  const file = join(app.folder, "tuesday.csv");
  writeFileSync(file, trial);
  await page.goto(host.url);
  await openExchange(page);
  await page.getByLabel("Choose a CSV file or a workbook").setInputFiles(file);

  // what was found, and what is still open
  await expect(page.getByText("5 rows, cells apart by semicolons.")).toBeVisible();
  await expect(page.getByLabel("Jar: taken for")).toHaveValue("jar");
  await expect(page.getByLabel("Turbidity NTU: taken for")).toHaveValue("turbidity_ntu");
  await expect(page.getByLabel("Dose (kg/t): unit")).toHaveValue("");
  await expect(page.getByText("Column Dose (kg/t): choose the unit of this dose.")).toBeVisible();
  const add = page.getByRole("button", { name: /^Add (the|\d+) jars?/ });
  await expect(add).toBeDisabled();

  // unit, then basis: nothing is assumed
  await page.getByLabel("Dose (kg/t): unit").selectOption("kg-per-t");
  await expect(page.getByText(/choose whether this dose is active polymer or product/)).toBeVisible();
  await page.getByLabel("Dose (kg/t): basis").selectOption("active");

  // the bad row is named with its row and column, and keeps everything out
  await expect(page.getByRole("alert").filter({ hasText: "1 row cannot be read" })).toBeVisible();
  const faults = page.getByRole("region", { name: "Rows that cannot be read" });
  await expect(faults.getByRole("row", { name: /4 Turbidity NTU "abc" is not a number/ })).toBeVisible();
  await expect(page.getByText("decimal comma")).toBeVisible();
  await expect(add).toBeDisabled();

  // a new series never falls into one that is there already
  await page.getByLabel("Name of the new series").fill("E-42 alone");
  await expect(page.getByText('There is already a series called "E-42 alone"')).toBeVisible();
  await page.getByLabel("Name of the new series").fill("tuesday");
  await expect(faults).toBeVisible();

  // leaving it out
  await page.getByLabel("Leave 1 bad row out and add the others").check();
  await expect(
    page.getByText(
      "5 rows in the file, 4 of them would be added: 3 jars with 7 readings, in the new series tuesday.",
    ),
  ).toBeVisible();
  for (const colorScheme of ["light", "dark"] as const) {
    await page.emulateMedia({ colorScheme });
    await page.waitForTimeout(200);
    const found = await new AxeBuilder({ page })
      .withTags(["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa"])
      .analyze();
    expect(found.violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.target.join(" ")}`)).toEqual([]);
  }
  await add.click();
  await expect(page.getByText("Added 3 jars with 7 readings to tuesday.")).toBeVisible();

  await expect(page.getByRole("button", { name: "Go to the Bench" })).toBeFocused();

  // the jars on the Bench, with the dose active as it was said
  await page.getByRole("button", { name: "Go to the Bench" }).click();
  await expect(room(page, "Bench")).toContainText(/Bench\s*3 jars/);
  await expect(page.getByLabel(/^jar 1, turbidity/)).toHaveValue(">1000");
  await expect(page.locator('[data-row="1"] td.computed').first()).toContainText("2.5");

  // one undo takes all of it back
  await page.getByRole("button", { name: "Undo" }).click();
  await expect(room(page, "Bench")).toContainText(/Bench\s*13 jars/);
  await host.kill();
  const { out } = await runVerb(["inspect", join(app.folder, "import.flocwright")]);
  expect(JSON.parse(out)).toMatchObject({ series: 2, history: "whole" });
});

test("a broken file is one sentence, a workbook offers its sheets, cancel leaves nothing behind", async ({
  app,
  watched: page,
}) => {
  const host = await app.host("import-more.flocwright", true);
  await page.goto(host.url);
  await openExchange(page);
  const choose = page.getByLabel("Choose a CSV file or a workbook");
  await choose.setInputFiles({
    name: "x.xlsx",
    mimeType: "",
    buffer: Buffer.from("PK\u0003\u0004 cut short"),
  });
  await expect(page.getByRole("alert")).toContainText("Is damaged or cut short");

  const book = await writeWorkbook([
    {
      name: "notes",
      rows: [
        ["about", "this"],
        ["x", "y"],
      ],
    },
    {
      name: "day 1",
      rows: [["Trial of Tuesday"], [], ["jar", "syringe_a_ml", "cst_s"], ["7", 12.5, 40.5], ["8", 20, 22]],
    },
  ]);
  await choose.setInputFiles({ name: "book.xlsx", mimeType: "", buffer: Buffer.from(book) });
  await page.getByLabel("Sheet").selectOption({ label: "day 1 (5 lines)" });
  await expect(page.getByLabel("Heads are on line")).toHaveValue("3");
  await expect(page.getByRole("button", { name: "Add 2 jars with 2 readings" })).toBeEnabled();
  await page.getByRole("button", { name: "Cancel" }).click();
  await expect(page.getByRole("button", { name: /^Add/ })).toHaveCount(0);
  await expect(page.getByText("book.xlsx")).toHaveCount(0);
});

test("an exported table comes back through the screen without a choice to make", async ({
  app,
  watched: page,
}) => {
  const host = await app.host("export.flocwright", true);
  await page.goto(host.url);
  await openExchange(page);
  for (const [button, ending] of [
    ["Jars and readings as CSV", "csv"],
    ["Whole study as a workbook (.xlsx)", "xlsx"],
    ["Whole study as JSON", "json"],
  ] as const) {
    const [download] = await Promise.all([
      page.waitForEvent("download"),
      page.getByRole("button", { name: button }).click(),
    ]);
    expect(download.suggestedFilename()).toBe(`export.${ending}`);
    await download.saveAs(join(app.folder, `out.${ending}`));
  }
  expect(readFileSync(join(app.folder, "out.csv"), "utf8")).toMatch(/^series,sample,stock_a/);
  expect(JSON.parse(readFileSync(join(app.folder, "out.json"), "utf8"))).toMatchObject({
    format: "flocwright-study",
  });

  // under another name of the series, so that its jars are new
  const text = readFileSync(join(app.folder, "out.csv"), "utf8").replaceAll("E-42 alone,", "Copy of it,");
  const lines = text.split("\r\n").filter((line, index) => index === 0 || line.startsWith("Copy of it,"));
  writeFileSync(join(app.folder, "copy.csv"), lines.join("\r\n"));
  await page.getByLabel("Choose a CSV file or a workbook").setInputFiles(join(app.folder, "copy.csv"));
  await expect(page.getByText(/in the new series Copy of it\.$/)).toBeVisible();
  await page.getByRole("button", { name: /^Add \d+ jars with/ }).click();
  await expect(page.getByText("Added 13 jars with 79 readings to Copy of it.")).toBeVisible();
});

test("an instrument's readings come to the jars that are there, by their names", async ({
  app,
  watched: page,
}) => {
  const host = await app.host("again.flocwright", true);
  await page.goto(host.url);
  await room(page, "Bench").click();
  await page.getByRole("button", { name: "Import jars" }).click();
  await page.getByLabel("Choose a CSV file or a workbook").setInputFiles({
    name: "meter.csv",
    mimeType: "text/csv",
    buffer: Buffer.from("jar,turbidity_ntu\n2,440\n3,530\n"),
  });
  await expect(page.getByText("There is no dose column")).toBeVisible();
  await page.getByLabel("Add the jars to").selectOption("E-42 alone");
  await page.getByLabel("Rows of jars that are there already add their readings to them").check();
  await page.getByRole("button", { name: "Add 2 readings" }).click();
  await expect(page.getByText("Added 2 readings to E-42 alone.")).toBeVisible();
  await expect(room(page, "Bench")).toContainText(/Bench\s*13 jars/);
});

test("a file dropped on the import is read, and one dropped elsewhere changes nothing", async ({
  app,
  watched: page,
}) => {
  const host = await app.host("dropped.flocwright", true);
  await page.goto(host.url);
  await openExchange(page);
  const files = await page.evaluateHandle(() => {
    const transfer = new DataTransfer();
    transfer.items.add(new File(["jar,dose_a_kg_per_t,turbidity_ntu\n91,3,40\n"], "dropped.csv"));
    return transfer;
  });
  const stray = await page.getByRole("region", { name: "Export" }).evaluate((card, dataTransfer) => {
    const event = new DragEvent("drop", { dataTransfer, bubbles: true, cancelable: true });
    card.dispatchEvent(event);
    return event.defaultPrevented;
  }, files);
  expect(stray).toBe(true);
  await expect(page.getByRole("heading", { name: /dropped\.csv/ })).toBeHidden();
  await page.getByRole("region", { name: "Import jars" }).dispatchEvent("drop", { dataTransfer: files });
  await expect(page.getByRole("heading", { name: /dropped\.csv/ })).toBeVisible();
});
