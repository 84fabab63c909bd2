import type { Page } from "@playwright/test";
import { expect, test } from "./app.ts";
import { makeNamesLong } from "./long-names.ts";

/** 1280 x 800 as it is, at 125 % and at 200 % */
const sizes = [
  { width: 1280, height: 800 },
  { width: 1024, height: 640 },
  { width: 640, height: 400 },
];
const rooms = ["sample", "bench", "curves", "dose", "plant", "record", "exchange", "studies"];

/** What is cut off, out of reach or hidden under something while it has the focus. */
async function faultsOf(page: Page): Promise<string[]> {
  return page.evaluate(async () => {
    const found: string[] = [];
    const named = (element: Element) =>
      `<${element.tagName.toLowerCase()} class="${element.getAttribute("class") ?? ""}"> ${(element.getAttribute("aria-label") ?? element.textContent ?? "").trim().replace(/\s+/g, " ").slice(0, 70)}`;
    const shown = (element: Element) =>
      element.checkVisibility({ visibilityProperty: true }) && !element.closest(".visually-hidden, .skip");
    /** the nearest box that can be scrolled sideways to bring the element into view */
    const scroller = (element: Element): Element | null => {
      for (let box = element.parentElement; box && box.id !== "app"; box = box.parentElement) {
        const reachable = /auto|scroll/.test(getComputedStyle(box).overflowX);
        if (reachable && !box.matches("main, .shell")) return box;
      }
      return null;
    };

    for (const box of [document.documentElement, ...document.querySelectorAll(".shell, main")])
      if (box.scrollWidth > box.clientWidth + 1)
        found.push(
          `scrolls sideways by ${box.scrollWidth - box.clientWidth}: ${[...box.querySelectorAll("*")]
            .filter((one) => one.getBoundingClientRect().right > innerWidth + 1 && !scroller(one))
            .slice(-3)
            .map(named)
            .join(", ")}`,
        );

    for (const element of document.querySelectorAll("#app *")) {
      if (!shown(element) || element.closest("svg, select, .page")) continue;
      const style = getComputedStyle(element);
      const cuts = /hidden|clip/.test(`${style.overflowX} ${style.overflowY}`);
      const full = (element.textContent ?? "").trim();
      const tooWide = element.scrollWidth > element.clientWidth + 1;
      const tooHigh = element.scrollHeight > element.clientHeight + 1;
      const told = element.closest("[title]")?.getAttribute("title")?.includes(full) ?? false;
      if (cuts && full !== "" && (tooWide || tooHigh) && !told && !element.matches("input, textarea"))
        found.push(`cut: ${named(element)}`);
    }

    const words = document.createTreeWalker(document.querySelector("#app")!, NodeFilter.SHOW_TEXT);
    while (words.nextNode()) {
      const parent = words.currentNode.parentElement!;
      if (!words.currentNode.textContent!.trim() || !shown(parent)) continue;
      if (parent.closest("svg, select, .page, [title]") || scroller(parent)) continue;
      const range = document.createRange();
      range.selectNodeContents(words.currentNode);
      const { right, left } = range.getBoundingClientRect();
      if (right > innerWidth + 1 || left < -1) found.push(`text outside the window: ${named(parent)}`);
      const card = parent.closest(".card, .button, td, th, .segment");
      if (card && right > card.getBoundingClientRect().right + 1)
        found.push(`text runs out of its box: ${named(parent)}`);
    }

    const controls = document.querySelectorAll<HTMLElement>(
      "#app :is(button, input, select, textarea, a[href], summary, [tabindex='0'])",
    );
    for (const control of controls) {
      if (!shown(control) || control.matches(":disabled, [tabindex='-1']")) continue;
      control.focus();
      if (document.activeElement !== control) continue;
      const box = control.getBoundingClientRect();
      if (!scroller(control) && (box.right > innerWidth + 1 || box.left < -1))
        found.push(`control outside the window: ${named(control)}`);
      const points = [0.5, 0.06, 0.94].flatMap((x) =>
        [0.5, 0.1, 0.9].map((y) => [box.left + box.width * x, box.top + box.height * y] as const),
      );
      const seen = points.some(([x, y]) => {
        const top = document.elementFromPoint(x, y);
        return top !== null && (control.contains(top) || top.closest("label")?.contains(control));
      });
      if (!seen) found.push(`focused and not to be seen: ${named(control)}`);
    }
    (document.activeElement as HTMLElement | null)?.blur();
    return [...new Set(found)];
  });
}

test("nothing is cut off, out of reach or hidden at 100, 125 and 200 %, with long names", async ({
  app,
  watched: page,
}) => {
  test.setTimeout(120_000);
  const host = await app.host("long.flocwright", true);
  await page.goto(host.url);
  await expect(page.locator('[data-room="sample"]')).toContainText("TS 2.48");
  await makeNamesLong(page);
  await expect(page.locator('[data-room="curves"]')).toContainText("fitted");
  const faults: string[] = [];
  const look = async (where: string) => {
    await page.evaluate(() => document.querySelectorAll("details").forEach((one) => (one.open = true)));
    for (const size of sizes) {
      await page.setViewportSize(size);
      await page.waitForTimeout(150);
      for (const fault of await faultsOf(page)) faults.push(`${where} ${size.width}: ${fault}`);
    }
    await page.setViewportSize(sizes[0]!);
  };
  for (const room of rooms) {
    await page.evaluate((name) => (location.hash = `#/${name}`), room);
    await page.waitForTimeout(room === "curves" || room === "dose" ? 900 : 300);
    await look(room);
  }
  await page.keyboard.press("F1");
  await expect(page.getByRole("region", { name: "Keys and words" })).toBeFocused();
  await look("keys and words");
  await page.keyboard.press("Escape");
  await page.evaluate(() => (location.hash = "#/bench"));
  await page
    .getByRole("button", { name: /^Details of jar/ })
    .first()
    .click();
  await look("jar details");
  await page.getByRole("button", { name: "Run the jars" }).click();
  await expect(page.getByRole("heading", { name: /jars are read/ })).toBeVisible();
  await look("run mode, finished");
  expect(faults).toEqual([]);
});
