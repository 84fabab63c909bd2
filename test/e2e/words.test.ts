import AxeBuilder from "@axe-core/playwright";
import type { Page } from "@playwright/test";
import { glossary, meaningOf } from "../../renderer/help/glossary.ts";
import { expect, test } from "./app.ts";

const room = async (page: Page, name: string) => {
  await page.locator(`[data-room="${name}"]`).click();
  await expect(page.locator(`[data-room="${name}"].here`)).toBeVisible();
};
const word = (page: Page, text: string) => page.locator("button.term", { hasText: text }).first();
const note = (page: Page) => page.getByRole("tooltip");

for (const theme of ["light", "dark"] as const)
  test(`a marked word says what it means on hover, focus and a press, and lets itself be sent away, ${theme}`, async ({
    app,
    watched: page,
  }) => {
    await page.emulateMedia({ colorScheme: theme });
    const host = await app.host("words.flocwright", true);
    await page.goto(host.url);
    await room(page, "sample");
    const stock = word(page, "stock solutions");
    await expect(note(page)).toHaveCount(0);

    // Hover: it may be pointed at itself, and stays until the pointer is gone (WCAG 1.4.13).
    await stock.hover();
    await expect(note(page)).toContainText(meaningOf("stock solution"));
    await note(page).hover();
    await page.waitForTimeout(500);
    await expect(note(page)).toBeVisible();
    await page.keyboard.press("Escape");
    await expect(note(page)).toHaveCount(0);
    await page.mouse.move(2, 790);

    // Focus by the keyboard: at once, gone with Escape while the focus stays, and gone when it moves on.
    await page.getByRole("button", { name: "Add a sample" }).focus();
    await word(page, "Total solids").focus();
    await page.keyboard.press("Shift+Tab");
    await page.keyboard.press("Tab");
    await expect(word(page, "Total solids")).toBeFocused();
    await expect(note(page)).toContainText("Total solids; their volatile share");
    const found = await new AxeBuilder({ page })
      .withTags(["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa"])
      .analyze();
    expect(found.violations.map(({ id, nodes }) => `${id} ${nodes[0]?.target.join(" ")}`)).toEqual([]);
    await page.keyboard.press("Escape");
    await expect(note(page)).toHaveCount(0);
    await expect(word(page, "Total solids")).toBeFocused();
    await page.keyboard.press("Enter");
    await expect(note(page)).toBeVisible();
    await page.keyboard.press("Tab");
    await expect(note(page)).toHaveCount(0);
    // A press keeps it though the pointer goes.
    await stock.click();
    await page.mouse.move(2, 790);
    await page.waitForTimeout(500);
    await expect(note(page)).toBeVisible();
    await stock.click();
    await expect(note(page)).toHaveCount(0);

    // Nothing leaves the window, and every room marks some words.
    for (const name of ["bench", "curves", "dose", "plant"]) {
      await room(page, name);
      await page.waitForTimeout(name === "curves" || name === "dose" ? 1200 : 300);
      if (name === "curves")
        for (const summary of await page.locator("summary", { hasText: "Models compared" }).all())
          await summary.click();
      if (name === "plant")
        for (const summary of await page.locator("details.fold > summary").all()) await summary.click();
      const marked = await page.locator("button.term:visible").all();
      expect(marked.length, name).toBeGreaterThan(0);
      for (const one of marked.slice(0, 6)) {
        await one.scrollIntoViewIfNeeded();
        await one.click();
        const box = (await note(page).boundingBox())!;
        expect(box.x, name).toBeGreaterThanOrEqual(0);
        expect(box.x + box.width, name).toBeLessThanOrEqual(1280);
        expect(box.y + box.height, name).toBeLessThanOrEqual(800);
        await page.keyboard.press("Escape");
      }
    }
    await page.keyboard.press("F1");
    const panel = page.getByRole("region", { name: "Keys and words" });
    await expect(panel.locator("dl.words dt")).toHaveCount(glossary.length);
  });
