import { existsSync, renameSync } from "node:fs";
import { join } from "node:path";
import type { Page } from "@playwright/test";
import { expect, test } from "./app.ts";
import { tabTo } from "./keyboard.ts";

const guide = (page: Page) => page.getByRole("region", { name: "Guide" });

/** Presses the guide's button and answers what it put the focus on, in the words a screen reader would say. */
async function led(page: Page): Promise<string> {
  await guide(page).getByRole("button", { name: "Take me there" }).click();
  let words = "";
  await expect(async () => {
    words = await page.evaluate(() => {
      const focused = document.activeElement;
      if (!(focused instanceof HTMLElement)) return "";
      if (focused instanceof HTMLInputElement || focused instanceof HTMLSelectElement)
        return focused.labels?.[0]?.textContent?.replace(/\s+/g, " ").trim() ?? "";
      return focused.id === "room" || focused === document.body || focused.closest("[aria-label=Guide]")
        ? ""
        : (focused.getAttribute("aria-label") ?? focused.textContent?.trim() ?? "");
    });
    expect(words).not.toBe("");
  }).toPass({ timeout: 5000 });
  return words;
}

/** Types into whatever has the focus and leaves it, as somebody does who only looks where the guide points. */
async function type(page: Page, text: string): Promise<void> {
  await page.keyboard.type(text);
  await page.keyboard.press("Tab");
}

const step = (page: Page, title: string) =>
  expect(guide(page).getByText(title, { exact: true }).first()).toBeVisible();

/** Filtrate turbidity of an invented sludge with its best dose near 6 kg/t. */
const turbidity = (dose: number, twice: number) =>
  Math.round(30 + 14 * (dose - 6) ** 2 + (twice % 2 === 0 ? 0 : 3));

test("a new study is led from the start screen to an approved dose and a pump setting by the guide alone", async ({
  app,
  watched: page,
}) => {
  test.setTimeout(180_000);
  const host = await app.host("led.flocwright", true);
  await page.goto(host.url);
  // The demo is complete: nothing is left for a guide to ask.
  await expect(page.getByRole("navigation").first()).toBeVisible();
  await expect(guide(page)).toHaveCount(0);
  await page.getByRole("button", { name: /^Demo: / }).click();
  await page.getByLabel("Name of the study").fill("Led by the guide");
  await page.getByRole("button", { name: "Start a new study" }).click();

  await expect(guide(page)).toContainText("Step 1 of 11");
  expect(await led(page)).toBe("Add the first sample");
  await page.keyboard.press("Enter");
  await step(page, "Weigh the dishes");
  for (const [words, mass] of [
    ["dish 1, empty dish", "50.1"],
    ["dish 1, with wet sludge", "80.3"],
    ["dish 1, dried at 105 °C", "51.0"],
  ] as const) {
    expect(await led(page)).toContain(words);
    await type(page, mass);
  }
  await step(page, "Say what the polymer is");
  // What is announced is the step, once.
  await expect(
    page.getByRole("status").filter({ hasText: "Step 3 of 11: Say what the polymer is." }),
  ).toHaveCount(1);
  expect(await led(page)).toBe("Add a product");
  await page.keyboard.press("Enter");
  expect(await led(page)).toContain("Active share of the neat product");
  await type(page, "40");
  await step(page, "Make the stock solution");
  expect(await led(page)).toBe("Add a stock solution");
  await page.keyboard.press("Enter");
  expect(await led(page)).toContain("Neat product weighed in");
  await type(page, "2.5");
  expect(await led(page)).toContain("Whole solution");
  await type(page, "500");

  // Left, and taken up again: what is done follows from the study, and only whether it is hidden is kept.
  await step(page, "Start a series and lay out its doses");
  await guide(page).getByRole("button", { name: "Hide the guide" }).click();
  await expect(guide(page)).toHaveCount(0);
  await page.waitForTimeout(300);
  await page.reload();
  await expect(page.getByRole("navigation").first()).toBeVisible();
  await expect(guide(page)).toHaveCount(0);
  await page.keyboard.press("F1");
  await page.getByRole("button", { name: "Show the guide" }).click();
  await page.keyboard.press("Escape");
  await expect(guide(page)).toContainText("Step 5 of 11");
  await guide(page).getByRole("button", { name: "All steps" }).click();
  await expect(guide(page).getByRole("listitem").filter({ hasText: "Weigh the dishes" })).toContainText(
    "done",
  );
  await guide(page).getByRole("button", { name: "All steps" }).click();

  // By the key alone from here.
  await page.keyboard.press("F2");
  await expect(page.getByRole("button", { name: "Start the first series" })).toBeFocused();
  await page.keyboard.press("Enter");
  expect(await led(page)).toMatch(/^Lay out these \d+ jars$/);
  await page.keyboard.press("Enter");
  await step(page, "Read the jars");
  const jars = await page.locator("table.grid tbody tr").count();
  expect(jars).toBeGreaterThan(8);
  for (let jar = 0; jar < jars; jar++) {
    const words = await led(page);
    expect(words).toMatch(/^jar \d+, turbidity/);
    const number = /^jar (\d+)/.exec(words)![1]!;
    const planned = Number(await page.getByLabel(new RegExp(`^jar ${number}, planned dose A`)).inputValue());
    await guide(page).getByRole("button", { name: "Take me there" }).click();
    await expect(page.getByLabel(new RegExp(`^jar ${number}, turbidity`))).toBeFocused();
    await type(page, String(turbidity(planned, jar)));
  }
  await step(page, "Pick a dose and approve it");
  expect(await led(page)).toContain("Dose, active");
  await type(page, "6");
  await tabTo(page, page.getByLabel("Reason"));
  await type(page, "in the middle of the valley");
  await type(page, "A. Tester");
  await page.keyboard.press("Enter");
  await expect(page.locator('[data-room="dose"]')).toContainText("approved");

  await step(page, "Enter the feed");
  expect(await led(page)).toBe("Add usual feed");
  await page.keyboard.press("Enter");
  expect(await led(page)).toContain("Flow");
  await type(page, "12");
  await step(page, "Make-down and pump");
  expect(await led(page)).toMatch(/^Say how .* is made down/);
  await page.keyboard.press("Enter");
  expect(await led(page)).toContain("Density, neat");
  await type(page, "1.05");
  // Asked for after the approval, since only the pump's rates need it: the dose stays approved.
  await expect(page.locator('[data-room="dose"]')).toContainText("approved");
  expect(await led(page)).toContain("Solution strength, active");
  await type(page, "0.2");
  expect(await led(page)).toBe("Add a pump");
  await page.keyboard.press("Enter");
  for (const [setting, amount] of [
    ["20", "30"],
    ["90", "157"],
  ] as const) {
    expect(await led(page)).toBe("Add a draw-down");
    await page.keyboard.press("Enter");
    await expect(page.getByLabel(/^draw-down \d, setting/).last()).toBeFocused();
    await type(page, setting);
    await type(page, amount);
  }
  await expect(page.locator('[data-room="plant"]')).toContainText("mL/min");
  await expect(page.locator('[data-room="plant"]')).not.toContainText("out of date");
  await expect(page.locator('[data-room="dose"]')).toContainText("approved");
  await expect(page.getByRole("status").filter({ hasText: "The guide is done" })).toHaveCount(1);
  // The settings stand above the draw-downs that made them: the guide's last word leads there, and it is gone.
  await guide(page).getByRole("button", { name: "See the settings" }).click();
  const settings = page.getByRole("region", { name: "Settings", exact: true });
  await expect(settings).toBeFocused();
  await expect(settings).toContainText("kg/t active = 15 kg/t as supplied");
  await expect(guide(page)).toHaveCount(0);
});

test("studies opened last say what they are about; one is opened again, a lost one says so and goes off the list", async ({
  app,
  watched: page,
}) => {
  const host = await app.host("first.flocwright", true);
  await page.goto(host.url);
  await page.getByRole("button", { name: /^Demo: / }).click();
  await page.getByLabel("Name of the study").fill("Northern line");
  await page.getByRole("button", { name: "Start a new study" }).click();
  await page.getByRole("button", { name: "Add the first sample" }).click();
  await expect(page.getByRole("status").filter({ hasText: /^saved \d/ })).toBeVisible();
  await page.getByRole("button", { name: "Northern line" }).click();

  const last = page.getByRole("region", { name: "Opened last" });
  const entries = last.getByRole("listitem");
  await expect(entries).toHaveCount(2);
  await expect(entries.nth(0)).toContainText("Northern line");
  await expect(entries.nth(0)).toContainText("sample taken down, no jars yet");
  await expect(entries.nth(1)).toContainText("Blended sludge, line 2");
  await expect(entries.nth(1)).toContainText("24 jars in 2 series; dose approved by Jon R.");
  await entries
    .nth(1)
    .getByRole("button", { name: /^Demo: / })
    .click();
  await expect(page.locator('[data-room="sample"].here')).toContainText("TS 2.48");
  await expect(last).toHaveCount(0);
  await page.getByRole("button", { name: /^Demo: / }).click();
  await last.getByRole("button", { name: "Northern line", exact: true }).click();
  // The guide stands where it was left.
  await expect(guide(page)).toContainText("Step 2 of 11");

  await page.getByRole("button", { name: "Northern line" }).click();
  renameSync(join(app.folder, "first.flocwright"), join(app.folder, "moved.away"));
  await page.reload();
  await expect(entries.nth(1)).toContainText("This file is not there any more");
  await expect(entries.nth(1)).toContainText("first.flocwright");
  await entries
    .nth(1)
    .getByRole("button", { name: /^Take Demo: .* off the list$/ })
    .click();
  await expect(entries).toHaveCount(1);
  await expect(page.getByRole("status").filter({ hasText: "Its file is untouched." })).toHaveCount(1);
  expect(existsSync(join(app.folder, "moved.away"))).toBe(true);
});

test("who knows the dose already passes over the curve: it is approved by judgement, and the guide goes on to the plant", async ({
  app,
  watched: page,
}) => {
  const host = await app.host("own.flocwright", true);
  await page.goto(host.url);
  await page.getByRole("button", { name: /^Demo: / }).click();
  await page.getByLabel("Name of the study").fill("Known dose");
  await page.getByRole("button", { name: "Start a new study" }).click();
  await page.getByRole("button", { name: "Add the first sample" }).click();
  await page.locator('[data-room="bench"]').click();
  await page.getByRole("button", { name: "Start the first series" }).click();
  await page.locator('[data-room="dose"]').click();
  const own = page.getByRole("complementary", { name: "A dose without a curve" });
  await own.getByLabel(/^Dose, active/).fill("5,5");
  await own.getByLabel(/^Dose, active/).press("Tab");
  await expect(own.getByText(/decimal mark/)).toBeVisible();
  await own.getByLabel(/^Dose, active/).fill("5.5");
  await own.getByLabel("Reason").fill("what the plant has run for years");
  await own.getByLabel("Name", { exact: true }).fill("A. Tester");
  await own.getByRole("button", { name: "Approve this dose" }).click();
  await expect(page.locator('[data-room="dose"]')).toContainText("5.5 kg/t");
  await step(page, "Enter the feed");
  await guide(page).getByRole("button", { name: "All steps" }).click();
  await expect(guide(page).getByRole("listitem").filter({ hasText: "Read the jars" })).toContainText(
    "not needed any more",
  );
});
