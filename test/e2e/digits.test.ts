import type { Locator, Page } from "@playwright/test";
import { expect, test } from "./app.ts";

const rooms = ["sample", "bench", "curves", "dose", "plant"];
/** more significant digits than any derived number may show (`src/units/digits.ts`) */
const most = 5;

/** What a room says: its own text, and what its marks and charts are read aloud as; entries hold what was entered. */
async function texts(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    for (const one of document.querySelectorAll("main details")) (one as HTMLDetailsElement).open = true;
    const named = [...document.querySelectorAll("[aria-label], [aria-valuetext], [title]")].flatMap(
      (element) =>
        ["aria-label", "aria-valuetext", "title"].flatMap((name) => element.getAttribute(name) ?? []),
    );
    return [...(document.body.innerText ?? "").split("\n"), ...named];
  });
}

function significantDigits(number: string): number {
  const digits = number.replace(".", "").replace(/^0+/, "");
  return (number.includes(".") ? digits : digits.replace(/0+$/, "")).length;
}

/** What no engineer would print: too many digits, or a number that is none. */
function faults(lines: string[]): string[] {
  return lines.filter(
    (line) =>
      /\b(NaN|Infinity|undefined|null)\b/.test(line) ||
      (line.match(/\d+(?:\.\d+)?/g) ?? []).some((number) => significantDigits(number) > most),
  );
}

test("no room shows a derived number with digits that nobody could know", async ({ app, watched: page }) => {
  test.setTimeout(120_000);
  // The check itself must be able to fail.
  expect(faults(["79.7613 mL/min", "0.00000067", "1035 L/h", "NaN %", "366100 EUR"])).toEqual([
    "79.7613 mL/min",
    "NaN %",
  ]);
  const host = await app.host("digits.flocwright", true);
  await page.goto(host.url);
  const sweep = async (where: string) => {
    const left: string[] = [];
    for (const room of rooms) {
      await page.locator(`[data-room="${room}"]`).click();
      await expect(page.locator(`[data-room="${room}"].here`)).toBeVisible();
      await page.waitForTimeout(room === "sample" || room === "plant" ? 600 : 2500);
      const said = await texts(page);
      expect(said.some((line) => /\d\.\d/.test(line))).toBe(true);
      left.push(...faults(said).map((line) => `${where} ${room}: ${line}`));
    }
    return left;
  };
  const found = await sweep("metric");
  await page.locator('[data-room="record"]').click();
  await page.getByLabel("Units").selectOption("us");
  found.push(...(await sweep("US")));
  await page.getByLabel("Series").first().selectOption({ label: "C-40 then E-42" });
  found.push(...(await sweep("pair")));
  expect(found).toEqual([]);
});

test("a dose typed by hand is told as it was typed, wherever it is told", async ({ app, watched: page }) => {
  test.setTimeout(120_000);
  const host = await app.host("typed.flocwright", true);
  await page.goto(host.url);
  await page.locator('[data-room="dose"]').click();
  const dose = page.getByRole("textbox", { name: /^Dose, active/ });
  await expect(page.locator(".slider strong")).toBeVisible();
  await dose.fill("55");
  await dose.press("Tab");
  await expect(page.getByText(/The jars were dosed from .* none is picked there/)).toBeVisible();
  await dose.fill("5.275");
  await dose.press("Tab");
  await expect(dose).toHaveValue("5.275");
  await expect(page.locator(".slider strong")).toHaveText("5.275 kg/t");
  await page.getByRole("textbox", { name: "Reason" }).fill("Between two jars that settled well.");
  await page.getByRole("textbox", { name: "Name" }).fill("Kim");
  await page.getByRole("button", { name: "Approve this dose" }).click();
  await expect(page.locator(".decided .big")).toHaveText("5.275 kg/t");
  await expect(page.locator('[data-room="dose"]')).toContainText("5.275 kg/t");
  await page.locator('[data-room="plant"]').click();
  await expect(page.locator("p.dose").first()).toContainText("5.275");
  for (const [room, told] of [
    ["sheet", "5.275 kg/t (10.55 lb/short ton)"],
    ["report", "5.275 kg/t (10.55 lb/short ton)"],
  ] as const) {
    await page.goto(`${new URL(host.url).origin}/#/${room}`);
    await expect(page.getByText(told).first()).toBeVisible({ timeout: 30_000 });
  }
});

/** Where the decimal mark of each cell of a column stands, in pixels, and the text that would be copied. */
const marksOf = (table: Locator, column: number) =>
  table.evaluate((element, at) => {
    const cells = [...(element as HTMLTableElement).tBodies[0]!.rows].flatMap((row) => row.cells[at] ?? []);
    return cells.map((cell) => {
      const walker = document.createTreeWalker(cell, NodeFilter.SHOW_TEXT);
      let left: number | null = null;
      for (let node = walker.nextNode(); node && left === null; node = walker.nextNode()) {
        const mark = /\d(?=[.,]\d)/.exec(node.textContent ?? "");
        if (!mark) continue;
        const range = document.createRange();
        range.setStart(node, mark.index + 1);
        range.setEnd(node, mark.index + 2);
        left = range.getBoundingClientRect().left;
      }
      return { text: cell.innerText.trim(), left };
    });
  }, column);

test("numbers of a column stand under each other at the mark, and are copied as they are", async ({
  app,
  watched: page,
}) => {
  test.setTimeout(90_000);
  const host = await app.host("lined.flocwright", true);
  await page.goto(host.url);
  await page.locator('[data-room="dose"]').click();
  const rules = page.getByRole("region", { name: /rules/i }).getByRole("table");
  await expect(rules.getByText(/to/).first()).toBeVisible();
  for (const column of [1, 2, 5, 6]) {
    const cells = (await marksOf(rules, column)).filter(({ left }) => left !== null);
    const decimals = new Set(cells.map(({ text }) => /\d\.(\d+)/.exec(text)![1]!.length));
    // The check itself must be able to fail: these end unevenly.
    if (column < 3) expect(decimals.size).toBeGreaterThan(1);
    for (const { text, left } of cells) {
      expect(text).toMatch(/^\d+\.\d+( to \d+\.\d+)?$/);
      expect(Math.abs(left! - cells[0]!.left!), `${text} in column ${column}`).toBeLessThan(0.6);
    }
  }
});
