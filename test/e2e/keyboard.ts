import type { Locator, Page } from "@playwright/test";
import { expect } from "./app.ts";

/** More steps than any room has controls: what is not reached by then is not reachable. */
const mostSteps = 260;

/** Moves the focus with one key alone until it stands on the target; fails where it never does. */
export async function tabTo(page: Page, target: Locator, key = "Tab"): Promise<void> {
  await expect(target).toBeVisible();
  for (let i = 0; i < mostSteps; i++) {
    if (await target.evaluate((element) => element === document.activeElement)) return;
    await page.keyboard.press(key);
  }
  throw new Error(`the keyboard alone does not reach ${String(target)}`);
}

/** Reaches a button and presses it with Enter. */
export async function pressButton(page: Page, name: string | RegExp): Promise<void> {
  await tabTo(page, page.getByRole("button", { name }).first());
  await page.keyboard.press("Enter");
}

/** Reaches an entry, replaces what stands there and leaves it with Tab. */
export async function type(page: Page, label: string | RegExp, text: string): Promise<void> {
  await tabTo(page, page.getByLabel(label).first());
  await page.keyboard.press("ControlOrMeta+A");
  if (text === "") await page.keyboard.press("Delete");
  else await page.keyboard.type(text);
  await page.keyboard.press("Tab");
}
