// What stands still while a large study is exported, and while a file is previewed beside it.
import type { Page } from "playwright";
import type { LongTasks } from "./long-tasks.ts";

type Watch = (name: string, page: Page, work: () => Promise<void>) => Promise<LongTasks>;

const press = (page: Page, name: string | RegExp) => page.getByRole("button", { name }).first().click();

/** Exports of an open study in both forms of a table, and the preview of a file of many rows beside it. */
export async function exchangeTasks(
  page: Page,
  file: string,
  watch: Watch,
  tell: (figure: LongTasks) => void,
): Promise<void> {
  await page.locator('[data-room="record"]').click();
  await press(page, "Import or export");
  for (const name of ["Jars and readings as CSV", "Whole study as a workbook (.xlsx)", "Whole study as JSON"])
    tell(
      await watch(`of a study of 20,000 jars: ${name}`, page, async () => {
        const given = page.waitForEvent("download", { timeout: 180_000 });
        await press(page, name);
        await given;
      }),
    );
  const add = page.getByRole("button", { name: /^Add 10.?000 jars/ });
  tell(
    await watch("beside 20,000 jars, preview 10,000 rows", page, async () => {
      await page.locator("input[type=file]").setInputFiles(file);
      await page.getByLabel("Stock solution of polymer A").selectOption({ index: 1 });
      await add.waitFor({ timeout: 180_000 });
    }),
  );
  tell(
    await watch("beside 20,000 jars, preview 10,000 rows a second time", page, async () => {
      await page.getByRole("textbox", { name: "Name of the new series" }).fill("Another name");
      await page.waitForTimeout(400);
      await add.and(page.locator(":enabled")).waitFor({ timeout: 180_000 });
    }),
  );
}

/** Begins a report and ends it once its first series is being fitted: by then the worker has the study. */
export async function reportBegun(
  page: Page,
  watch: Watch,
  tell: (figure: LongTasks) => void,
): Promise<void> {
  await page.locator('[data-room="record"]').click();
  tell(
    await watch("begin the report of a study of 20,000 jars", page, async () => {
      await press(page, /^Report$/);
      await page.getByRole("progressbar").waitFor({ timeout: 120_000 });
      await press(page, "Cancel");
    }),
  );
}
