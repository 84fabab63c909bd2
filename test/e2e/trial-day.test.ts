import { join } from "node:path";
import type { Page } from "@playwright/test";
import { expect, test } from "./app.ts";
import { draftsIn } from "./in-file.ts";
import { pressButton, tabTo, type } from "./keyboard.ts";

const strip = (page: Page, name: string) =>
  page.getByRole("navigation").getByRole("link", { name: new RegExp(`^${name}`) });

/** What an invented sludge answers at a dose: turbidity with its valley near 5, cake that saturates. */
const turbidity = (dose: number, twin: number) =>
  Math.round(Math.exp(3.8 + 0.16 * (dose - 5) ** 2) * (1 + 0.06 * twin));
const cake = (dose: number, twin: number) => (21 - 11 * Math.exp(-0.4 * dose) + 0.15 * twin).toFixed(2);

test("a trial day by keyboard alone: plan, make-down, run, over range, a mistake, a killed program, the curve", async ({
  app,
  watched: page,
}) => {
  test.setTimeout(180_000);
  let host = await app.host("day.flocwright", true);
  await page.goto(host.url);
  await expect(strip(page, "Sample")).toContainText("TS 2.48");

  // a stock of one's own, made down step by step
  await page.keyboard.press("Control+1");
  await pressButton(page, "Add a stock solution");
  const card = page.getByRole("article").first();
  await tabTo(page, card.getByLabel("Neat product weighed in"));
  await page.keyboard.type("1.19");
  await page.keyboard.press("Tab");
  await page.keyboard.type("500");
  await page.keyboard.press("Tab");
  await expect(card.getByText(/was wanted/)).toBeVisible();
  await tabTo(page, card.getByLabel("Neat product weighed in"), "Shift+Tab");
  await page.keyboard.press("ControlOrMeta+A");
  await page.keyboard.type("2.381");
  await page.keyboard.press("Enter");
  await expect(card.getByText(/was wanted/)).toHaveCount(0);
  await tabTo(page, card.getByRole("button", { name: "Mixing started: now" }));
  await page.keyboard.press("Enter");
  await expect(card.getByText(/ageing, usable in/)).toBeVisible();

  // six doses in duplicate, one jar without polymer, a standard for each six
  await page.keyboard.press("Control+2");
  await pressButton(page, "Start another series");
  await expect(strip(page, "Bench")).toContainText("no jars yet");
  for (const name of ["floc grade", "CST"]) {
    await tabTo(page, page.getByRole("checkbox", { name }));
    await page.keyboard.press("Space");
  }
  await type(page, /Drained volume counts at/, "0.6");
  await tabTo(page, page.locator("summary", { hasText: "Mixing" }));
  await page.keyboard.press("Enter");
  await type(page, /Fast mixing for/, "0.6");
  await type(page, /Slow mixing for/, "");
  await type(page, /Lowest dose/, "2");
  await type(page, /Highest dose/, "8");
  await pressButton(page, /^Lay out these 15 jars/);
  await expect(strip(page, "Bench")).toContainText("15 jars");

  await pressButton(page, "Run the jars");
  const heading = page.getByRole("heading", { name: /^Jar \d+/ });
  const seen = new Map<string, number>();

  async function runJar(
    options: { corrected?: boolean; stopAtTurbidity?: boolean } = {},
  ): Promise<{ name: string; typed: string; cakeText: string }> {
    await expect(page.getByText(/^Invert the bucket/)).toBeVisible();
    const name = (await heading.textContent())!.replace(/\s+/g, " ").trim();
    const words = (await page.locator(".top .dose").textContent())!;
    const dose = words.includes("no polymer") ? 0 : Number(/[\d.]+/.exec(words)![0]);
    const twin = seen.get(words) ?? 0;
    seen.set(words, twin + 1);
    await page.keyboard.press("Enter");
    if (dose > 0) {
      await expect(page.getByLabel(/injected of solution A/)).toBeFocused();
      await page.keyboard.press("Enter");
    }
    await expect(page.getByText(/stop mixing, Enter/).first()).toBeVisible();
    await page.keyboard.press("Enter");
    await expect(page.getByText(/Pour onto the wetted sieve/)).toBeVisible();
    await page.keyboard.press("Enter");
    await expect(page.getByText(/read the volume now/).first()).toBeVisible();
    await page.keyboard.type(String(Math.round(40 + 25 * dose)));
    await page.keyboard.press("Enter");
    await expect(page.getByLabel(/^turbidity/)).toBeFocused();
    if (options.stopAtTurbidity) {
      const typed = String(turbidity(dose, twin));
      await page.keyboard.type(typed);
      return { name, typed, cakeText: cake(dose, twin) };
    }
    if (dose === 0) await page.keyboard.press("+");
    else if (options.corrected) {
      await page.keyboard.type("9");
      await page.keyboard.press("Enter");
      await expect(page.getByLabel(/^cake TS/)).toBeFocused();
      await page.keyboard.press("-");
      await expect(page.getByLabel(/^turbidity/)).toHaveValue("9");
      await page.keyboard.type(String(turbidity(dose, twin)));
      await page.keyboard.press("Enter");
    } else {
      await page.keyboard.type(String(turbidity(dose, twin)));
      await page.keyboard.press("Enter");
    }
    await expect(page.getByLabel(/^cake TS/)).toBeFocused();
    await page.keyboard.type(cake(dose, twin));
    await page.keyboard.press("Enter");
    return { name, typed: "", cakeText: "" };
  }

  for (let i = 0; i < 6; i++) {
    const { name } = await runJar({ corrected: i === 2 });
    await expect(heading).not.toHaveText(new RegExp(`^${name}$`));
  }
  const halfWay = await runJar({ stopAtTurbidity: true });
  // the draft is written soon after the last key
  await expect.poll(() => draftsIn(join(app.folder, "day.flocwright"))).toContain(halfWay.typed);
  const jarsBefore = await strip(page, "Bench").textContent();
  await host.kill("SIGKILL");

  host = await app.host("day.flocwright", false);
  await page.goto(host.url);
  await expect(strip(page, "Sample")).toContainText("TS 2.48");
  await page.keyboard.press("Control+2");
  await expect(strip(page, "Bench")).toHaveText(jarsBefore!);
  // the run goes on at the very jar and number, with what was being typed
  await expect(heading).toHaveText(new RegExp(halfWay.name.split(" ").slice(0, 2).join(" ")));
  const cell = page.getByLabel(/^turbidity/);
  await expect(cell).toHaveValue(halfWay.typed);
  await expect(cell).toBeFocused();
  await page.keyboard.press("Enter");
  await expect(page.getByLabel(/^cake TS/)).toBeFocused();
  await page.keyboard.type(halfWay.cakeText);
  await page.keyboard.press("Enter");
  for (let i = 7; i < 15; i++) await runJar();

  await expect(page.getByRole("heading", { name: "All 15 jars are read" })).toBeVisible();
  await expect(strip(page, "Bench")).toContainText("all read");
  await expect(strip(page, "Curves")).toContainText(/kg\/t/);
  await pressButton(page, "To the grid");
  await expect(page.locator("[data-column='turbidity'] input").first()).toBeVisible();
  // The rows come a few at a time.
  await expect(page.locator("[data-column='turbidity'] input")).toHaveCount(15);
  const values = await page
    .locator("[data-column='turbidity'] input")
    .evaluateAll((inputs) => inputs.map((input) => (input as HTMLInputElement).value));
  expect(values).toHaveLength(15);
  expect(values.filter((value) => value === ">1000")).toHaveLength(1);
  expect(values).not.toContain("9");
  expect(values.every((value) => value !== "")).toBe(true);
});
