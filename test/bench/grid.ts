import { spawn } from "node:child_process";
import { join } from "node:path";
import type { Browser } from "playwright";
import type { Command, SimpleCommand } from "../../src/study/commands.ts";
import { demoCommands } from "../../src/study/demo.ts";
import { writeDemo } from "../../main/service/standalone.ts";

const jarCount = 500;

/** One step that adds many read jars to the demo's first series. */
export function gridCommand(): Command {
  const jars: SimpleCommand[] = Array.from({ length: jarCount }, (_, i) => ({
    do: "add",
    kind: "jar",
    record: {
      id: `grid-${i}`,
      seriesId: "series-1",
      label: `g${i}`,
      order: i + 100,
      syringeAMl: 12 + (i % 30),
      plannedDoseAKgPerT: 2,
    },
  }));
  const readings: SimpleCommand[] = Array.from({ length: jarCount }, (_, i) => ({
    do: "add",
    kind: "reading",
    record: {
      id: `gridr-${i}`,
      jarId: `grid-${i}`,
      result: { kind: "turbidity", value: 50 + (i % 50), dilution: 1 },
    },
  }));
  return { do: "together", label: "many jars", commands: [...jars, ...readings] };
}

/** Figures of the bench table with 500 jars: frames while it scrolls, and an edit in it, as they are seen on screen. */
export async function gridFigures(
  browser: Browser,
  root: string,
  folder: string,
): Promise<{ frames: number[]; edits: number[]; cells: number }> {
  const path = join(folder, "grid.flocwright");
  const written = writeDemo(path, (at) => [...demoCommands(at), gridCommand()], new Date().toISOString());
  if (!written.ok) throw new Error(written.message);
  const host = spawn(
    process.execPath,
    [join(root, "main", "headless.ts"), "host", "--study", path, "--port", "0", "--no-window"],
    { cwd: root, stdio: ["ignore", "pipe", "inherit"] },
  );
  const url = await new Promise<string>((resolve) =>
    host.stdout.once("data", (chunk) => resolve((JSON.parse(String(chunk)) as { url: string }).url)),
  );
  const page = await browser.newPage({ viewport: { width: 1280, height: 800 } });
  await page.goto(url);
  await page.locator('[data-room="bench"]').click();
  await page.getByLabel(/^jar 1, turbidity/).waitFor();
  await page.waitForTimeout(3000);
  const frames = await page.evaluate(async () => {
    const scroller = document.querySelector<HTMLElement>(".scroll:has(table.grid)")!;
    const times: number[] = [];
    let last = performance.now();
    for (let i = 0; i < 120; i++) {
      scroller.scrollTop += 140;
      await new Promise((resolve) => requestAnimationFrame(resolve));
      const now = performance.now();
      times.push(now - last);
      last = now;
    }
    return times;
  });
  const edits: number[] = [];
  for (let i = 0; i < 10; i++) {
    const cell = page.locator("[data-row] [data-column='syringeA'] input").nth(10);
    await cell.fill(String(20 + i / 10));
    edits.push(
      await page.evaluate(async () => {
        const input = document.activeElement as HTMLInputElement;
        const dose = input.closest("tr")!.querySelector(".computed .main")!;
        const before = dose.textContent;
        const start = performance.now();
        input.blur();
        while (dose.textContent === before && performance.now() - start < 5000)
          await new Promise((resolve) => requestAnimationFrame(resolve));
        return performance.now() - start;
      }),
    );
  }
  const cells = await page.locator("table.grid input").count();
  await page.close();
  host.kill("SIGTERM");
  await new Promise((resolve) => host.once("exit", resolve));
  return { frames, edits, cells };
}
