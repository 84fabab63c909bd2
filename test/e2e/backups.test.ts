import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import type { Page } from "@playwright/test";
import { expect, test } from "./app.ts";

const room = (page: Page, name: string) =>
  page.getByRole("navigation").getByRole("link", { name: new RegExp(`^${name}`) });

test("a backup is made, restored, and the restore taken back; a damaged study offers its backups", async ({
  app,
  page,
}) => {
  let host = await app.host("safe.flocwright", true);
  await page.goto(host.url);
  await room(page, "Record").click();
  const backups = page.getByRole("region", { name: "Backups" });
  await backups.getByRole("button", { name: "Back up now" }).click();
  await expect(backups.getByText(/made by hand/)).toBeVisible();
  await room(page, "Bench").click();
  const cell = page.getByLabel(/^jar 4, turbidity/);
  await cell.fill("999");
  await cell.press("Tab");
  await expect(page.getByRole("status").filter({ hasText: /^saved/ })).toBeVisible();
  await page.getByRole("button", { name: "Details of jar 4" }).click();
  await page.getByText("Who changed this jar, and when").click();
  await expect(
    page.getByText(/nobody named: Changed reading of jar 4: result from .* to .*999/),
  ).toBeVisible();

  await room(page, "Record").click();
  await backups.getByRole("button", { name: /Restore the backup of .*made by hand/ }).click();
  await backups.getByRole("button", { name: "Restore it" }).click();
  await expect(backups.getByText(/^Restored\./)).toBeVisible();
  await room(page, "Bench").click();
  await expect(cell).toHaveValue("146");
  await room(page, "Record").click();
  await backups.getByRole("button", { name: /what stood here before a restore/ }).click();
  await backups.getByRole("button", { name: "Restore it" }).click();
  await expect(backups.getByText(/^Restored\./)).toBeVisible();
  await room(page, "Bench").click();
  await expect(cell).toHaveValue("999");
  await host.kill();

  // a page of the file is spoilt: the study does not open, and its backups are offered
  const path = join(app.folder, "safe.flocwright");
  const bytes = readFileSync(path);
  bytes.fill(0x33, 4096, 7000);
  writeFileSync(path, bytes);
  host = await app.host("other.flocwright", true);
  await page.goto(host.url);
  await room(page, "Record").click();
  await page.getByRole("button", { name: "Close and open another" }).click();
  await page.getByRole("button", { name: /^safe.flocwright/ }).click();
  await expect(page.getByRole("alert")).toContainText(/damaged/);
  const help = page.getByRole("group", { name: "What can be done about safe.flocwright" });
  await help
    .getByRole("button", { name: /made by itself|before a restore/ })
    .first()
    .click();
  await expect(room(page, "Sample")).toContainText("TS 2.48");
});
