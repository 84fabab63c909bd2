import type { Page } from "@playwright/test";
import { expect, test } from "./app.ts";

const rooms = ["sample", "bench", "curves", "dose", "plant", "record"];

/**
 * Metric units that have a US customary counterpart in `src/units/display.ts`, after a number or at the end of a head.
 * mL, g, mg/L and s are left out: laboratory glassware, balances and watches read in them in either system.
 */
const metricOnly =
  /(?:^|[\s(\d])(kg\/t|m³\/h|m³|°C|kg\/h|L\/h|kg\/L|kg\/y|L\/y|kg\/h·m|kPa|L|m|kg)(?=$|[\s.,;:)])/;

/** What stays metric while a study shows US customary units, each with its reason. */
const allowed: { line: RegExp; why: string }[] = [
  {
    line: /dried at 105 °C|ashed at 550 °C|drying at 103 to 105 °C/,
    why: "temperatures named by the standard methods",
  },
  { line: /CST at 20 °C/, why: "the name of a corrected reading" },
  { line: /per kg$|EUR\/kg|price.*per kg/i, why: "prices are per kilogram, as bought" },
  { line: /kg\/ha|t\/ha/, why: "limits on land stay metric" },
];

async function lines(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    for (const one of document.querySelectorAll("main details")) (one as HTMLDetailsElement).open = true;
    const words = (document.body.innerText ?? "").split("\n");
    const named = [...document.querySelectorAll("[aria-label], [aria-valuetext], [title]")].flatMap(
      (element) =>
        ["aria-label", "aria-valuetext", "title"].flatMap((name) => element.getAttribute(name) ?? []),
    );
    return [...words, ...named].map((line) => line.replace(/\s+/g, " ").trim());
  });
}

test("US customary units hold in every room at once, and no metric unit is left over", async ({
  app,
  watched: page,
}) => {
  test.setTimeout(120_000);
  const host = await app.host("units.flocwright", true);
  await page.goto(host.url);
  const visit = async (room: string) => {
    await page.locator(`[data-room="${room}"]`).click();
    await expect(page.locator(`[data-room="${room}"].here`)).toBeVisible();
    await page.waitForTimeout(room === "curves" || room === "dose" || room === "bench" ? 2500 : 600);
  };
  // The check itself must be able to fail: in metric units every room but the record's shows some.
  for (const room of ["bench", "curves", "dose", "plant"]) {
    await visit(room);
    expect((await lines(page)).some((line) => metricOnly.test(line))).toBe(true);
  }
  await visit("record");
  await page.getByLabel("Units").selectOption("us");
  const left: string[] = [];
  for (const room of rooms) {
    await visit(room);
    for (const line of await lines(page))
      if (metricOnly.test(line) && !allowed.some((one) => one.line.test(line))) left.push(`${room}: ${line}`);
  }
  expect(left).toEqual([]);

  await visit("dose");
  await expect(page.getByText("10.4 lb/short ton").first()).toBeVisible();
  await visit("curves");
  await expect(page.getByText(/^10\.4 lb\/short ton, 10\.0 to 10\.9;/).first()).toBeVisible();
  await page.getByLabel("Series").first().selectOption({ label: "C-40 then E-42" });
  await page.waitForTimeout(2000);
  for (const room of ["curves", "dose"]) {
    await visit(room);
    for (const line of await lines(page))
      if (metricOnly.test(line) && !allowed.some((one) => one.line.test(line)))
        left.push(`pair ${room}: ${line}`);
  }
  expect(left).toEqual([]);
});
