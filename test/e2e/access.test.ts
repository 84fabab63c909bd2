import { expect, test } from "./app.ts";
import { axeFaults, looks } from "./axe.ts";

const rooms = ["sample", "bench", "curves", "dose", "plant", "record"];
/** what is reached from a room, by its address */
const beside = ["exchange", "studies", "sheet", "report"];

for (const [look, media] of Object.entries(looks))
  test(`no room breaks WCAG 2.2 AA as far as axe can see, ${look}`, async ({ app, watched: page }) => {
    test.setTimeout(120_000);
    await page.emulateMedia(media);
    const host = await app.host("access.flocwright", true);
    await page.goto(host.url);
    const faults: string[] = [];
    const only = look === "light" ? "all" : "colour";
    const view = async (where: string) => faults.push(...(await axeFaults(page, where, only)));
    for (const room of rooms) {
      await page.locator(`[data-room="${room}"]`).click();
      await expect(page.locator(`[data-room="${room}"].here`)).toBeVisible();
      await page.waitForTimeout(room === "curves" || room === "dose" ? 1200 : 300);
      await view(room);
    }
    for (const room of beside) {
      await page.evaluate((name) => (location.hash = `#/${name}`), room);
      await page.waitForTimeout(400);
      await view(room);
    }
    await page.keyboard.press("F1");
    await expect(page.getByRole("region", { name: "Keys and words" })).toBeFocused();
    await view("keys and words");
    await page.keyboard.press("Escape");
    await page.locator('[data-room="sample"]').click();
    await page.getByRole("button", { name: "How was this made: Total solids", exact: true }).click();
    await expect(page.getByRole("dialog")).toBeVisible();
    await view("how a number was made");
    await page.keyboard.press("Escape");
    // the bench once more, with a jar's details open and then in run mode
    await page.locator('[data-room="bench"]').click();
    await page.getByRole("button", { name: "Details of jar 5" }).click();
    for (const name of ["Filtration test (specific resistance)", "Cake dish"])
      await page.locator("summary", { hasText: name }).click();
    // A cell scrolled half under the jar's name is no small target, it is scrolled away.
    await page.locator(".scroll:has(table.grid)").evaluate((element) => (element.scrollLeft = 0));
    await view("jar details");
    await page.getByRole("button", { name: "Start another series" }).click();
    await page.getByRole("button", { name: /^Lay out these/ }).click();
    await page.getByRole("button", { name: "Run the jars" }).click();
    await page.keyboard.press("Enter");
    await view("run mode, a timer");
    await page.keyboard.press("*");
    await view("run mode, leaving out");
    await page.keyboard.press("*");
    await page.keyboard.press("c");
    await page.waitForTimeout(400);
    await view("run mode, curves");
    // no study at all
    await page.locator('[data-room="record"]').click();
    await page.getByRole("button", { name: "Close and open another" }).click();
    await page.getByLabel("Name of the study").waitFor();
    await view("start");
    expect(faults).toEqual([]);
  });
