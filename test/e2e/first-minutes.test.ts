import type { Page } from "@playwright/test";
import { expect, test } from "./app.ts";

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
    await page.evaluate(() => undefined);
    await guide(page).getByRole("button", { name: "Take me there" }).click();
    await expect(page.getByLabel(new RegExp(`^jar ${number}, turbidity`))).toBeFocused();
    await type(page, String(turbidity(planned, jar)));
  }
  await step(page, "Pick a dose and approve it");
  expect(await led(page)).toContain("Dose, active");
  await type(page, "6");
  await page.keyboard.press("Tab");
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
  await expect(guide(page)).toHaveCount(0);
  await expect(page.getByRole("status").filter({ hasText: "The guide is done" })).toHaveCount(1);
});
