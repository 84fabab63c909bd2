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
    expect(faults).toEqual([]);
  });
