import { writeFileSync } from "node:fs";
import { join } from "node:path";
import type { Locator, Page } from "@playwright/test";
import { writeNewStudy } from "../../main/service/opening.ts";
import type { SimpleCommand } from "../../src/study/commands.ts";
import { demoCommands } from "../../src/study/demo.ts";
import { expect, test } from "./app.ts";

// Each state is the demo with what comes after it left away, so that what is missing is known.
const at = "2026-03-10T08:00:00Z";
const parts = demoCommands(at)
  .flatMap((command) => (command.do === "together" ? command.commands : [command as SimpleCommand]))
  .flatMap((command) => (command.do === "add" ? [command] : []));
type Part = (typeof parts)[number];
const sludge = (part: Part) => ["study", "stream", "sample", "dish"].includes(part.kind);
const polymer = (part: Part) => sludge(part) || ["product", "stock"].includes(part.kind);
const series = (part: Part) => part.kind === "series" && part.record["id"] === "series-1";
const jars = (part: Part) => part.kind === "jar" && part.record["seriesId"] === "series-1";
const read = (part: Part) => part.kind === "reading" && String(part.record["jarId"]).startsWith("jar-1-");
const few = (part: Part) => /jar-1-0[1-3]/.test(String(part.record["jarId"] ?? part.record["id"]));

type App = { folder: string; host(fileName: string, demo: boolean): Promise<{ url: string }> };

/** Opens a study that holds these parts of the demo, changed by `change`. */
async function open(
  app: App,
  page: Page,
  keep: (part: Part) => boolean,
  change: (part: Part) => Part = (part) => part,
): Promise<void> {
  const written = writeNewStudy(join(app.folder, "part.flocwright"), parts.filter(keep).map(change), "", at);
  if (!written.ok) throw new Error(written.message);
  const host = await app.host("part.flocwright", false);
  await page.goto(host.url);
  // Only when the first room stands does another address count.
  await expect(page).toHaveURL(/#\/sample$/);
  await expect(page.locator("#room").getByRole("heading").first()).toBeVisible();
}

const go = (page: Page, place: string) => page.evaluate((to) => (location.hash = `#/${to}`), place);

/** Presses the one next action of a place and looks whether it ends at the entry of what is missing. */
async function leads(page: Page, place: string, action: string, entry: Locator): Promise<void> {
  await go(page, place);
  await page.locator("#room").getByRole("button", { name: action, exact: true }).click();
  await expect(entry).toBeFocused();
}

test("every empty room and paper leads to the first sample", async ({ app, watched: page }) => {
  await open(app, page, (part) => part.kind === "study");
  const first = page.getByRole("button", { name: "Add the first sample" });
  for (const [place, title] of [
    ["bench", "The bench needs a sample first"],
    ["curves", "Curves come from the jars"],
    ["dose", "A dose is picked from curves"],
    ["plant", "The plant comes last"],
    ["sheet", "The setting sheet comes last"],
    ["report", "The report has nothing to tell yet"],
    ["exchange", "Import jars and readings"],
  ] as const) {
    await go(page, place);
    await expect(page.getByRole("heading", { name: title, exact: true })).toBeVisible();
    await leads(page, place, "Take down the sample", first);
  }
  await go(page, "record");
  await expect(page.getByText("enter who works on this study")).toBeVisible();
});

test("a sample alone leads to the polymer from every room that waits for it", async ({
  app,
  watched: page,
}) => {
  await open(
    app,
    page,
    (part) => sludge(part) || series(part),
    (part) => (part.kind === "series" ? { ...part, record: { ...part.record, stockAId: null } } : part),
  );
  const product = page.getByRole("button", { name: "Add a product" });
  for (const place of ["bench", "curves", "dose", "plant", "sheet", "report", "exchange"])
    await leads(page, place, "Say what the polymer is", product);
  await expect(page.getByText("A dose counts active polymer only").last()).toBeVisible();
  // The running of jars covers the guide's line, so it has to say it by itself.
  await go(page, "bench");
  await page.getByRole("button", { name: "Run the jars" }).click();
  await expect(page.getByRole("heading", { name: "No jars yet" })).toBeVisible();
  await page.getByRole("button", { name: "Say what the polymer is" }).click();
  await expect(product).toBeFocused();
});

test("a series without jars leads to its plan, and jars without readings to the first empty cell", async ({
  app,
  watched: page,
}) => {
  await open(app, page, (part) => polymer(part) || series(part));
  const layOut = page.getByRole("button", { name: /^Lay out these \d+ jars$/ });
  for (const place of ["curves", "dose", "plant", "sheet", "report"])
    await leads(page, place, "Start a series and lay out its doses", layOut);
  await page.keyboard.press("Enter");
  for (const place of ["curves", "dose", "plant", "sheet", "report"])
    await leads(
      page,
      place,
      "Read the jars",
      page
        .getByLabel(/^jar \d+, turbidity/)
        .first()
        .or(page.locator("td :focus"))
        .and(page.locator(":focus")),
    );
});

test("too few jars for a curve lead to more jars, and past the curve to a dose by judgement", async ({
  app,
  watched: page,
}) => {
  await open(app, page, (part) => polymer(part) || series(part) || ((jars(part) || read(part)) && few(part)));
  const layOut = page.getByRole("button", { name: /^Lay out these \d+ jars$/ });
  for (const place of ["curves", "dose"]) await leads(page, place, "Plan more jars", layOut);
  const dose = page.getByRole("textbox", { name: /^Dose, active/ });
  for (const place of ["plant", "sheet", "report"])
    await leads(page, place, "Pick a dose and approve it", dose);
});

test("a fit without limits, prices and decision leads to each of them", async ({ app, watched: page }) => {
  await open(
    app,
    page,
    (part) => polymer(part) || series(part) || jars(part) || read(part),
    (part) =>
      part.kind === "product" ? { ...part, record: { ...part.record, pricePerKgNeat: null } } : part,
  );
  await leads(page, "dose", "Enter a limit", page.getByLabel("Filtrate turbidity at most"));
  await leads(page, "dose", "Go to the price", page.getByLabel(/^Price/).first());
  for (const place of ["plant", "sheet", "report"])
    await leads(
      page,
      place,
      "Pick a dose and approve it",
      page.getByRole("textbox", { name: /^Dose, active/ }),
    );
});

test("an approved dose leads to the feed, then to make-down and pump", async ({ app, watched: page }) => {
  const decided = (part: Part) =>
    polymer(part) || series(part) || jars(part) || read(part) || part.kind === "decision";
  await open(app, page, decided);
  for (const place of ["plant", "sheet"])
    await leads(page, place, "Enter the feed", page.getByRole("button", { name: "Add usual feed" }));
  const makeDown = page.getByRole("button", { name: /^Say how .* is made down/ });
  await leads(page, "plant", "Go to the make-down", makeDown);
  await page.getByRole("button", { name: "Add usual feed" }).click();
  await page.getByLabel(/^Flow/).first().fill("12");
  await page.keyboard.press("Tab");
  for (const place of ["plant", "sheet"]) await leads(page, place, "Make-down and pump", makeDown);
});

test("an import says what is open on its own page, and goes there", async ({ app, watched: page }) => {
  await open(app, page, polymer);
  await go(page, "exchange");
  const choose = page.getByLabel("Choose a CSV file or a workbook");
  const put = async (name: string, text: string) => {
    writeFileSync(join(app.folder, name), text);
    await choose.setInputFiles(join(app.folder, name));
  };
  await put("open.csv", "Jar;Dose (kg/t);Turbidity NTU\n1;2;400\n2;4;60\n");
  await page.getByRole("button", { name: "Say what the columns are" }).click();
  await expect(page.getByLabel("Dose (kg/t): unit")).toBeFocused();
  await page.getByLabel("Dose (kg/t): unit").selectOption("ml-solution");
  await page.getByRole("button", { name: "Say where the jars belong" }).click();
  await expect(page.locator("#room select:focus, #room input:focus")).toBeVisible();

  // A file that gives nothing: the button opens the choice of another.
  await put("none.csv", "");
  const asked = page.waitForEvent("filechooser");
  await page.getByRole("button", { name: "Choose the file again" }).click();
  await asked;
});
