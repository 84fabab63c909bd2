import AxeBuilder from "@axe-core/playwright";
import { expect, test } from "./app.ts";

const rooms = ["sample", "bench", "curves", "dose", "plant", "record"];

for (const theme of ["light", "dark"] as const)
  test(`no room breaks WCAG 2.2 AA as far as axe can see, ${theme}`, async ({ app, watched: page }) => {
    await page.emulateMedia({ colorScheme: theme });
    const host = await app.host("access.flocwright", true);
    await page.goto(host.url);
    const faults: string[] = [];
    for (const room of rooms) {
      await page.locator(`[data-room="${room}"]`).click();
      await expect(page.locator(`[data-room="${room}"].here`)).toBeVisible();
      await page.waitForTimeout(room === "curves" || room === "dose" ? 1200 : 300);
      const found = await new AxeBuilder({ page })
        .withTags(["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa"])
        .analyze();
      const here = found.violations.flatMap(({ id, nodes }) =>
        nodes.map(
          (node) => `${room}: ${id}: ${node.target.join(" ")} ${node.failureSummary?.split("\n")[1] ?? ""}`,
        ),
      );
      faults.push(...here);
    }
    // the bench once more, with a jar's details open and then in run mode
    const look = async (where: string) => {
      const found = await new AxeBuilder({ page })
        .withTags(["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa"])
        .analyze();
      for (const { id, nodes } of found.violations)
        for (const node of nodes) faults.push(`${where}: ${id}: ${node.target.join(" ")}`);
    };
    await page.keyboard.press("F1");
    await expect(page.getByRole("region", { name: "Keys and words" })).toBeFocused();
    await look("keys and words");
    await page.keyboard.press("Escape");
    await page.locator('[data-room="bench"]').click();
    await page.getByRole("button", { name: "Details of jar 5" }).click();
    for (const name of ["Filtration test (specific resistance)", "Cake dish"])
      await page.locator("summary", { hasText: name }).click();
    // A cell scrolled half under the jar's name is no small target, it is scrolled away.
    await page.locator(".scroll:has(table.grid)").evaluate((element) => (element.scrollLeft = 0));
    await look("jar details");
    await page.getByRole("button", { name: "Start another series" }).click();
    await page.getByRole("button", { name: /^Lay out these/ }).click();
    await page.getByRole("button", { name: "Run the jars" }).click();
    await page.keyboard.press("Enter");
    await look("run mode, a timer");
    await page.keyboard.press("*");
    await look("run mode, leaving out");
    await page.keyboard.press("*");
    await page.keyboard.press("c");
    await page.waitForTimeout(400);
    await look("run mode, curves");
    expect(faults).toEqual([]);
  });
