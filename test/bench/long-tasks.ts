// How long the screen's thread stands still in one go while long work is done: the browser's own list of long tasks.
import { spawn } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { chromium, type Browser, type Page } from "playwright";
import { writeDemo } from "../../main/service/standalone.ts";
import { findBrowser, quietFlags } from "../../scripts/browser.mjs";
import { demoCommands } from "../../src/study/demo.ts";
import { exchangeTasks, reportBegun } from "./exchange-tasks.ts";
import { gridCommand } from "./grid.ts";
import { largest, writeLargeStudy } from "./large-study.ts";
import { threadTasks } from "./thread-time.ts";

/** What somebody did, and the tasks above 50 ms that the screen's thread had meanwhile. */
export interface LongTasks {
  name: string;
  longest: number;
  count: number;
  /**
   * the most processor time that the thread itself spent in one task, above 50 ms or not: what else the machine does
   * adds to `longest` and hardly to this, and waiting (for a helper thread that collects garbage, say) is not in it
   */
  longestCpuMs: number;
  /** from the first press to the end of the work */
  wholeMs: number;
}

declare global {
  interface Window {
    longTasks: number[];
  }
}

async function onStudy<T>(
  browser: Browser,
  root: string,
  path: string,
  work: (page: Page) => Promise<T>,
): Promise<T> {
  const host = spawn(
    process.execPath,
    [join(root, "main", "headless.ts"), "host", "--study", path, "--port", "0", "--no-window"],
    { cwd: root, stdio: ["ignore", "pipe", "inherit"] },
  );
  const url = await new Promise<string>((resolve) =>
    host.stdout.once("data", (chunk) => resolve((JSON.parse(String(chunk)) as { url: string }).url)),
  );
  const page = await browser.newPage({ viewport: { width: 1280, height: 800 } });
  await page.addInitScript(() => {
    window.longTasks = [];
    new PerformanceObserver((list) => {
      for (const { duration } of list.getEntries()) window.longTasks.push(duration);
    }).observe({ type: "longtask", buffered: true });
  });
  try {
    await page.goto(url);
    await page.locator('[data-room="sample"]').getByText("TS 2.48").waitFor({ timeout: 60_000 });
    return await work(page);
  } finally {
    await page.close();
    host.kill("SIGTERM");
    await new Promise((resolve) => host.once("exit", resolve));
  }
}

/** Lets everything before come to rest, does the work, and answers what stood still meanwhile. */
async function watch(name: string, page: Page, work: () => Promise<void>): Promise<LongTasks> {
  await page.waitForTimeout(2500);
  await page.evaluate(() => (window.longTasks = []));
  let wholeMs = 0;
  const [longest] = await threadTasks(page, async () => {
    const start = performance.now();
    await work();
    wholeMs = performance.now() - start;
    await page.waitForTimeout(1500);
  });
  const tasks = await page.evaluate(() => window.longTasks);
  return {
    name,
    longest: Math.max(0, ...tasks),
    count: tasks.length,
    longestCpuMs: longest?.cpuMs ?? 0,
    wholeMs,
  };
}

/** A file of jars as a laboratory's program may write it. */
export function manyRows(rows: number): string {
  const heads = "jar,syringe_a_ml,turbidity_ntu,filtrate_tss_mg_per_l,drained_ml,cake_ts_pct";
  const lines = Array.from(
    { length: rows },
    (_, i) =>
      `jar ${i},${10 + (i % 40) / 2},${40 + (i % 500) / 8},${200 + (i % 90)},${100 + (i % 250)},${12 + (i % 70) / 10}`,
  );
  return [heads, ...lines].join("\n");
}

const showReport = async (page: Page) => {
  await page.locator('[data-room="record"]').click();
  return page.getByRole("button", { name: "Report", exact: true });
};

/** The longest tasks of import, reports, opening and editing. */
export async function longTaskFigures(
  browser: Browser,
  root: string,
  tell: (figure: LongTasks) => void,
): Promise<void> {
  const folder = mkdtempSync(join(tmpdir(), "flocwright-long-"));
  const now = new Date().toISOString();
  const demo = join(folder, "demo.flocwright");
  const grid = join(folder, "grid.flocwright");
  const large = join(folder, "large.flocwright");
  const file = join(folder, "many.csv");
  try {
    writeDemo(demo, demoCommands, now);
    writeDemo(grid, (at) => [...demoCommands(at), gridCommand()], now);
    writeLargeStudy(large, largest, now);
    writeFileSync(file, manyRows(10_000));

    await onStudy(browser, root, demo, async (page) => {
      const report = await showReport(page);
      tell(
        await watch("make the report of the demo", page, async () => {
          await report.click();
          await page.locator(".paper-room .page").waitFor({ timeout: 60_000 });
        }),
      );
    });
    await onStudy(browser, root, demo, async (page) => {
      const rooms = ["sample", "bench", "curves", "dose", "plant", "record"];
      for (const time of ["first", "second"])
        for (const room of rooms)
          tell(
            await watch(`open the ${room} room of the demo the ${time} time`, page, async () => {
              await page.locator(`[data-room="${room}"]`).click();
              await page.locator("#room").waitFor();
            }),
          );
    });
    await onStudy(browser, root, grid, async (page) => {
      await page.locator('[data-room="bench"]').click();
      const cell = page.locator("[data-row] [data-column='syringeA'] input").nth(10);
      await cell.waitFor();
      tell(
        await watch("ten edits in a table of 500 jars", page, async () => {
          for (let i = 0; i < 10; i++) {
            await cell.fill(String(20 + i / 10));
            // Left as it is left at the bench: `blur` would search for the cell first, in the same task.
            await page.keyboard.press("Tab");
            await page.waitForTimeout(400);
          }
        }),
      );
      const report = await showReport(page);
      tell(
        await watch("make the report of a study with 500 jars", page, async () => {
          await report.click();
          await page.locator(".paper-room .page").waitFor({ timeout: 120_000 });
        }),
      );
    });
    await onStudy(browser, root, demo, async (page) => {
      await page.locator('[data-room="record"]').click();
      await page
        .getByRole("button", { name: /import/i })
        .first()
        .click();
      await page.locator("input[type=file]").setInputFiles(file);
      await page.getByLabel("Stock solution of polymer A").selectOption({ index: 1 });
      const add = page.getByRole("button", { name: /^Add 10.?000 jars/ });
      await add.waitFor({ timeout: 60_000 });
      tell(
        await watch("add 10,000 rows", page, async () => {
          await add.click();
          await page.getByText(/Added 10.?000 jars/).waitFor({ timeout: 120_000 });
        }),
      );
      tell(
        await watch("look at the history of it", page, async () => {
          await page.locator('[data-room="sample"]').click();
          await page.locator('[data-room="record"]').click();
          await page
            .getByText(/10.?000 jars/)
            .first()
            .waitFor({ timeout: 60_000 });
        }),
      );
      tell(
        await watch("take 10,000 rows back", page, async () => {
          await page.getByRole("button", { name: /^Undo/ }).click();
          await page
            .locator('[data-room="bench"]')
            .getByText(/\b13 jars/)
            .waitFor({ timeout: 120_000 });
        }),
      );
    });
    await onStudy(browser, root, large, async (page) => {
      tell(
        await watch("open a study of 20,000 jars", page, async () => {
          await page.reload();
          await page.locator('[data-room="sample"]').getByText("TS 2.48").waitFor({ timeout: 60_000 });
        }),
      );
      await exchangeTasks(page, file, watch, tell);
      await reportBegun(page, watch, tell);
    });
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? "").href) {
  const browser = await chromium.launch({ executablePath: findBrowser() ?? undefined, args: quietFlags() });
  await longTaskFigures(browser, join(import.meta.dirname, "..", ".."), (one) =>
    console.log(JSON.stringify(one)),
  );
  await browser.close();
}
