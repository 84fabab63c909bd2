import type { Page } from "@playwright/test";
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
