import type { Page } from "@playwright/test";
import { expect, test } from "./app.ts";

const room = (page: Page, name: string) =>
  page.getByRole("navigation").getByRole("link", { name: new RegExp(`^${name}`) });

test("a trial is planned, laid out as one step, and taken back as one", async ({ app, watched: page }) => {
  const host = await app.host("plan.flocwright", true);
  await page.goto(host.url);
  await room(page, "Bench").click();
  await page.getByRole("button", { name: "Start another series" }).click();
  await expect(room(page, "Bench")).toContainText("no jars yet");
  const lowest = page.getByRole("textbox", { name: "Lowest dose kg/t" });
  await lowest.fill("0");
  await lowest.press("Tab");
  await expect(
    page.getByText("Lowest dose must be above 0: a jar without polymer is added apart."),
  ).toBeVisible();
  await lowest.fill("3");
  await lowest.press("Tab");
  // six doses in duplicate, one no-polymer jar, one standard for each six
  await page.getByRole("button", { name: "Lay out these 15 jars" }).click();
  await expect(room(page, "Bench")).toContainText("15 jars");
  await expect(page.getByLabel(/^jar 1, syringe A/)).not.toHaveValue("");
  await page.getByRole("button", { name: "Undo" }).click();
  await expect(room(page, "Bench")).toContainText("no jars yet");
});
