import AxeBuilder from "@axe-core/playwright";
import { readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { writeNewStudy } from "../../main/service/opening.ts";
import type { Command } from "../../src/study/commands.ts";
import { demoCommands } from "../../src/study/demo.ts";
import { expect, runVerb, test } from "./app.ts";
import type { Page } from "@playwright/test";

const set = (kind: "study" | "stream" | "product", id: string, fields: Record<string, unknown>): Command => ({
  do: "set",
  kind,
  id,
  fields,
});

/** Three invented studies beside the demo, and a file that is none. */
function fill(folder: string): void {
  const write = (i: number, commands: Command[]) => {
    const day = `2026-0${i + 1}-10T08:00:00Z`;
    const written = writeNewStudy(
      join(folder, `works ${i}.flocwright`),
      [...demoCommands(day), ...commands],
      "",
      day,
    );
    if (!written.ok) throw new Error(written.message);
  };
  write(1, [
    set("study", "study", { name: "Northern works" }),
    set("stream", "stream-1", { label: "Digester 1", sludgeClass: "digested" }),
    set("product", "product-1", { label: "Flocculant E-50 (invented)" }),
  ]);
  write(2, [
    set("study", "study", { name: "<b>Southern</b> works" }),
    set("stream", "stream-1", { label: "Settled sludge", sludgeClass: "primary" }),
    set("product", "product-1", { pricePerKgNeat: 2 }),
  ]);
  write(3, [set("study", "study", { name: "Western works", currency: "CHF" })]);
  writeFileSync(join(folder, "old notes.flocwright"), "jar,dose\n1,2\n");
}

const names = (page: Page) => page.locator("tbody th .line").allTextContents();
const read = (page: Page) =>
  expect(page.getByRole("button", { name: "Read again" })).toBeVisible({ timeout: 30_000 });

async function axe(page: Page, where: string): Promise<string[]> {
  const { violations } = await new AxeBuilder({ page })
    .withTags(["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa"])
    .analyze();
  return violations.flatMap(({ id, nodes }) =>
    nodes.map((node) => `${where}: ${id}: ${node.target.join(" ")}`),
  );
}

test("a folder of studies is searched, sorted and compared, by keyboard and from the start and the record", async ({
  app,
  watched: page,
}) => {
  fill(app.folder);
  const host = await app.host("demo.flocwright", true);
  const before = readFileSync(join(app.folder, "works 2.flocwright"));
  await page.goto(host.url);
  await page.locator('[data-room="record"]').click();
  await page.getByRole("button", { name: "Search and compare studies" }).click();
  await read(page);

  // eight series of four studies and one file that is none, which is named with its sentence
  await expect(page.getByRole("status").filter({ hasText: "series found" })).toContainText(
    "8 series found in 4 studies",
  );
  await expect(page.getByRole("heading", { name: "1 file could not be read" })).toBeVisible();
  await expect(page.getByText("old notes.flocwright")).toBeVisible();
  await expect(page.locator("tbody").getByText("<b>Southern</b> works").first()).toBeVisible();

  await page.getByRole("checkbox", { name: "only with an approved dose" }).check();
  await expect(page.locator("tbody tr")).toHaveCount(4);
  const northern = page.locator("tbody tr").filter({ hasText: "Northern works" });
  await expect(northern).toContainText("digested");
  await expect(northern).toContainText("5.2");
  await expect(northern).toContainText("4.9 to 5.5");
  await expect(northern).toContainText("Jon R.");
  await expect(page.locator("tbody tr").filter({ hasText: "Southern" })).toContainText("out of date");

  // the cheaper polymer comes first of its currency; the franc study is its own group
  await page.getByRole("button", { name: /^Cost/ }).click();
  await expect
    .poll(() => names(page))
    .toEqual(["Western works", "<b>Southern</b> works", "Demo: blended sludge, line 2", "Northern works"]);
  await expect(page.getByRole("columnheader", { name: /^Cost/ })).toHaveAttribute("aria-sort", "ascending");
  await page.getByRole("button", { name: /^Date/ }).click();
  await expect(page.getByRole("columnheader", { name: /^Date/ })).toHaveAttribute("aria-sort", "descending");
  await expect
    .poll(async () => (await names(page)).slice(1))
    .toEqual(["Western works", "<b>Southern</b> works", "Northern works"]);

  // by words, by class, by product; and the way out of a search that finds nothing
  const box = page.getByRole("searchbox");
  await box.fill("NORTH e-50");
  await expect.poll(() => names(page)).toEqual(["Northern works"]);
  await box.fill("no such thing");
  await expect(page.getByText("No series answers this search")).toBeVisible();
  await page.getByRole("button", { name: "Clear the search" }).click();
  await expect(page.locator("tbody tr")).toHaveCount(8);
  await page.getByLabel("Sludge class").selectOption("primary");
  await expect(page.locator("tbody tr")).toHaveCount(2);
  await page.getByLabel("Sludge class").selectOption({ label: "any" });
  await page.getByRole("combobox", { name: "Product" }).selectOption("Flocculant E-50 (invented)");
  await expect.poll(() => names(page)).toEqual(["Northern works", "Northern works"]);
  await page.getByRole("combobox", { name: "Product" }).selectOption({ label: "any" });

  // two rows side by side, chosen and opened with the keyboard alone
  const beside = page.getByRole("button", { name: /^Side by side/ });
  await expect(beside).toBeDisabled();
  await page.getByRole("checkbox", { name: "Choose Northern works, E-42 alone" }).focus();
  await page.keyboard.press("Space");
  await page.getByRole("checkbox", { name: "Choose Western works, E-42 alone" }).focus();
  await page.keyboard.press("Space");
  await beside.focus();
  await page.keyboard.press("Enter");
  await expect(page.getByRole("heading", { name: "2 series side by side" })).toBeFocused();
  const line = (words: string) =>
    page.locator("tbody tr").filter({ has: page.getByRole("rowheader", { name: words }) });
  await expect(line("Approved dose").locator("td")).toHaveText(["5.2", "5.2"]);
  await expect(line("Sludge").first().locator("td")).toHaveText(["digested", "primary and excess, blended"]);
  await expect(page.getByText("These costs do not compare")).toBeVisible();
  // the same jars give the same curves, so neither is praised
  await expect(page.locator(".best")).toHaveCount(0);
  await page.getByRole("button", { name: "Open Northern works, E-42 alone" }).focus();
  await page.keyboard.press("Enter");
  await expect(page.locator('[data-room="dose"].here')).toBeVisible();
  await expect(page.getByRole("button", { name: "Northern works" })).toBeVisible();

  // the others were only looked at: no lock, no journal, not a byte changed
  expect(
    readdirSync(app.folder)
      .filter((name) => !name.endsWith(".flocwright"))
      .sort(),
  ).toEqual(["flocwright-recent.json", "flocwright-studies.index", "works 1.flocwright.lock"]);
  expect(readFileSync(join(app.folder, "works 2.flocwright")).equals(before)).toBe(true);
  await page.getByRole("button", { name: "Northern works" }).click();
  await page.getByRole("link", { name: "Search and compare studies" }).click();
  await expect(page.getByRole("link", { name: "Back to the start" })).toBeVisible();
  await read(page);
  await expect(page.locator("tbody tr")).toHaveCount(8);
  await page.getByRole("link", { name: "Back to the start" }).click();
  await expect(page.getByRole("heading", { name: "New study" })).toBeVisible();
});

test("studies that bear the same name are told apart by their files", async ({ app, watched: page }) => {
  await runVerb(["demo", join(app.folder, "copy.flocwright")]);
  const host = await app.host("demo.flocwright", true);
  await page.goto(`${host.url}#/studies`);
  await read(page);
  const named = (file: string) =>
    page.getByRole("checkbox", { name: `Choose Demo: blended sludge, line 2, E-42 alone, ${file}` });
  await named("copy.flocwright").check();
  await named("demo.flocwright").check();
  await expect(page.getByText("E-42 alone · invented · copy.flocwright")).toBeVisible();
  await page.getByRole("button", { name: /^Side by side/ }).click();
  await expect(page.getByText("E-42 alone · invented · demo.flocwright")).toBeVisible();
});

for (const theme of ["light", "dark"] as const)
  test(`the comparison breaks no rule of WCAG 2.2 AA as far as axe can see, ${theme}`, async ({
    app,
    watched: page,
  }) => {
    await page.emulateMedia({ colorScheme: theme });
    await page.setViewportSize({ width: 1280, height: 800 });
    fill(app.folder);
    const host = await app.host("demo.flocwright", true);
    await page.goto(host.url);
    await page.locator('[data-room="record"]').click();
    await page.getByRole("button", { name: "Search and compare studies" }).click();
    await read(page);
    const faults = await axe(page, "list");
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(1280);
    await page.getByRole("searchbox").fill("no such thing");
    await expect(page.getByText("No series answers this search")).toBeVisible();
    faults.push(...(await axe(page, "nothing found")));
    await page.getByRole("searchbox").fill("");
    for (const name of ["Northern works", "Western works"])
      await page.getByRole("checkbox", { name: `Choose ${name}, E-42 alone` }).check();
    await page.getByRole("button", { name: /^Side by side/ }).click();
    faults.push(...(await axe(page, "side by side")));
    expect(faults).toEqual([]);
  });
