import { spawn } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Browser, Page } from "playwright";
import { createDispatcher } from "../../main/dispatch.ts";
import { closeContext, createContext, openAtStart } from "../../main/service.ts";
import type { SimpleCommand } from "../../src/study/commands.ts";
import { largest, writeLargeStudy } from "./large-study.ts";

export interface ScaleFigures {
  /** opening through the service, with the answer as text, ms */
  opens: number[];
  /** study.apply there and back through the dispatcher, ms: a jar's syringe, then a reading's value */
  jarEdits: number[];
  readingEdits: number[];
  /** from the host's start to the sample's solids in the strip, ms */
  starts: number[];
  /** from leaving a cell to the frame in which the strip shows it, ms */
  stripEdits: number[];
  /** from leaving a cell of the bench table to its new dose, ms */
  doseEdits: number[];
}

const context = (folder: string) =>
  createContext({
    host: "loopback",
    version: "bench",
    now: () => new Date().toISOString(),
    folder,
    dialogs: null,
  });

async function serviceFigures(path: string, folder: string, figures: ScaleFigures): Promise<void> {
  for (let round = 0; round < 5; round++) {
    const service = context(folder);
    const start = performance.now();
    const opened = openAtStart(service, path);
    const text = JSON.stringify(opened);
    figures.opens.push(performance.now() - start);
    if (!opened.ok || text.length < 1e6) throw new Error("the large study did not open");
    closeContext(service);
  }
  const service = context(folder);
  const opened = openAtStart(service, path);
  if (!opened.ok) throw new Error(opened.message);
  const call = createDispatcher(service);
  let { seq } = opened.value;
  const edit = async (command: SimpleCommand): Promise<number> => {
    const start = performance.now();
    const answer = await call("study.apply", { command, afterSeq: seq, by: "Mara T." });
    const took = performance.now() - start;
    if (!answer.ok) throw new Error(answer.message);
    ({ seq } = answer.value as { seq: number });
    return took;
  };
  for (let i = 0; i < 40; i++) {
    const jar = `large-${(i * 37) % largest.series}-${i % largest.jarsPerSeries}`;
    figures.jarEdits.push(
      await edit({ do: "set", kind: "jar", id: jar, fields: { syringeAMl: 20 + i / 10 } }),
    );
    const result = { kind: "turbidity", value: 60 + i, dilution: 1 };
    figures.readingEdits.push(await edit({ do: "set", kind: "reading", id: `${jar}-1`, fields: { result } }));
  }
  closeContext(service);
}

/** Leaves the focused cell and answers how long until what `selector` shows (nearest to the cell) has changed. */
const leaveCell = (page: Page, selector: string, near: string | null) =>
  page.evaluate(
    async ([aim, around]) => {
      const input = document.activeElement as HTMLInputElement;
      const shown = (around ? input.closest(around)! : document).querySelector(aim!)!;
      const before = shown.textContent;
      const start = performance.now();
      input.blur();
      while (shown.textContent === before && performance.now() - start < 10_000)
        await new Promise((resolve) => requestAnimationFrame(resolve));
      return performance.now() - start;
    },
    [selector, near] as const,
  );

async function browserFigures(
  browser: Browser,
  root: string,
  path: string,
  figures: ScaleFigures,
): Promise<void> {
  for (let round = 0; round < 2; round++) {
    const began = performance.now();
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
    await page.locator('[data-room="sample"]').getByText("TS 2.48").waitFor({ timeout: 60_000 });
    figures.starts.push(performance.now() - began);
    await page.locator("header select").first().selectOption("large-7");
    for (let i = 0; i < 10; i++) {
      await page.getByLabel("dish 1, dried at 105 °C, g").fill(i % 2 === 0 ? "47.56" : "47.5336");
      figures.stripEdits.push(await leaveCell(page, '[data-room="sample"]', null));
    }
    await page.locator('[data-room="bench"]').click();
    const cells = page.locator("[data-row] [data-column='syringeA'] input");
    await cells.first().waitFor({ timeout: 60_000 });
    await page.waitForTimeout(2000);
    for (let i = 0; i < 10; i++) {
      await cells.nth(3).fill(String(20 + i / 10 + round));
      figures.doseEdits.push(await leaveCell(page, ".computed .main", "tr"));
    }
    await page.close();
    host.kill("SIGTERM");
    await new Promise((resolve) => host.once("exit", resolve));
  }
}

/** Figures of a study with 20,000 jars and 100,000 changes, through the service and, where there is one, in a browser. */
export async function scaleFigures(root: string, browser: Browser | null): Promise<ScaleFigures> {
  const folder = mkdtempSync(join(tmpdir(), "flocwright-scale-"));
  const path = join(folder, "large.flocwright");
  const figures: ScaleFigures = {
    opens: [],
    jarEdits: [],
    readingEdits: [],
    starts: [],
    stripEdits: [],
    doseEdits: [],
  };
  try {
    writeLargeStudy(path, largest, new Date().toISOString());
    await serviceFigures(path, folder, figures);
    if (browser) await browserFigures(browser, root, path, figures);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
  return figures;
}
