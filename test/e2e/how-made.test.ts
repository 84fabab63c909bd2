import type { Page } from "@playwright/test";
import { expect, test } from "./app.ts";

const how = (page: Page, title: RegExp) =>
  page.getByRole("button", { name: new RegExp(`^How was this made: ${title.source}`) });

test("rows of numbers say how they were made: formula, inputs with units, source", async ({
  app,
  watched: page,
}) => {
  const host = await app.host("made.flocwright", true);
  await page.goto(host.url);
  await page.locator('[data-room="dose"]').click();
  for (const title of [
    /cheapest dose within all limits/,
    /cost of a tonne of dry solids/,
    /range of the quoted dose/,
  ])
    await expect(how(page, title)).toBeVisible();
  // by keys alone
  await how(page, /cost of a tonne of dry solids/).focus();
  await page.keyboard.press("Enter");
  const told = page.getByRole("dialog");
  await expect(told).toContainText("dose x price / active share");
  await expect(told).toContainText(/disposal of wet cake.*EUR\/t/s);
  await expect(told).toContainText("Source: mass balance");
  await page.keyboard.press("Escape");
  await expect(told).toBeHidden();

  await page.locator('[data-room="plant"]').click();
  await expect(page.locator('[data-room="plant"].here')).toBeVisible();
  await page.evaluate(() => {
    for (const one of document.querySelectorAll("main details")) (one as HTMLDetailsElement).open = true;
  });
  await expect(how(page, /settings at .* % TS/)).toHaveCount(5);
  await expect(how(page, /flow of draw-down/).first()).toBeAttached();
  await expect(how(page, /limits of the drift watch/)).toBeAttached();
  await page.getByRole("button", { name: "Open Trial 1, settled" }).click();
  for (const way of [
    /dose by draw-down/,
    /dose by container's loss of mass/,
    /dose by pump line at the setting/,
  ])
    await expect(how(page, way)).toBeVisible();
  await how(page, /dose by draw-down/).click();
  await expect(page.getByRole("dialog")).toContainText(/caught in the run.*\d+ mL/s);
  await expect(page.getByRole("dialog")).not.toContainText("active by pump line");
});
