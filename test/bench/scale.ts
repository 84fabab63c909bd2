import { spawn } from "node:child_process";
import { copyFileSync, mkdtempSync, rmSync, utimesSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Browser, Page } from "playwright";
import { createDispatcher } from "../../main/dispatch.ts";
import { closeContext, createContext, openAtStart, type Context } from "../../main/service.ts";
import { writeNewStudy } from "../../main/service/opening.ts";
import type { SimpleCommand } from "../../src/study/commands.ts";
import { demoCommands } from "../../src/study/demo.ts";
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

/** Opens a study and writes the answer with all its parts as text; how long that is. */
async function openAsText(service: Context, path: string): Promise<number> {
  const opened = openAtStart(service, path);
  if (!opened.ok) throw new Error(opened.message);
  let { length } = JSON.stringify(opened);
  const call = createDispatcher(service);
  const { later, seq } = opened.value;
  for (const kind of later)
    for (let from = 0, more = true; more;) {
      const answer = await call("study.records", { kind, seq, from });
      if (!answer.ok) throw new Error(answer.message);
      length += JSON.stringify(answer).length;
      const part = answer.value as { records: unknown[]; more: boolean };
      from += part.records.length;
      ({ more } = part);
    }
  return length;
}

async function serviceFigures(path: string, folder: string, figures: ScaleFigures): Promise<void> {
  for (let round = 0; round < 5; round++) {
    const service = context(folder);
    const start = performance.now();
    const length = await openAsText(service, path);
    figures.opens.push(performance.now() - start);
    if (length < 1e6) throw new Error("the large study did not open");
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

export interface LibraryFigures {
  /** reading all studies the first time, ms in all */
  first: number[];
  /** one call of that reading, ms: what an edit may have to wait */
  slices: number[];
  /** looking through a folder in which nothing changed, ms */
  again: number[];
  /** one search over the whole index, ms */
  searches: number[];
  studies: number;
}

/** Figures of a folder of studies, each the invented demo with one approved series, searched through its index. */
export async function libraryFigures(studies: number): Promise<LibraryFigures> {
  const folder = mkdtempSync(join(tmpdir(), "flocwright-library-"));
  const figures: LibraryFigures = { first: [], slices: [], again: [], searches: [], studies };
  try {
    const template = join(folder, "template");
    const written = writeNewStudy(template, demoCommands("2026-01-01T12:00:00Z"), "", "2026-01-01T12:00:00Z");
    if (!written.ok) throw new Error(written.message);
    const settled = new Date(Date.now() - 3.6e6);
    for (let i = 0; i < studies; i++) {
      const path = join(folder, `study ${i}.flocwright`);
      copyFileSync(template, path);
      utimesSync(path, settled, settled);
    }
    const ask = async (service: Context, name: string, input: object) => {
      const answer = await createDispatcher(service)(name, input);
      if (!answer.ok) throw new Error(answer.message);
      return answer.value as { state: string; toRead: number; found: number };
    };
    const refresh = async (service: Context): Promise<number> => {
      const start = performance.now();
      for (let step = "start"; ; step = "go-on") {
        const sliceStart = performance.now();
        const { state, toRead } = await ask(service, "library.refresh", { step });
        if (toRead > 0) figures.slices.push(performance.now() - sliceStart);
        if (state === "done") return performance.now() - start;
      }
    };
    figures.first.push(await refresh(context(folder)));
    for (let round = 0; round < 5; round++) {
      const service = context(folder);
      figures.again.push(await refresh(service));
      for (const text of ["", "jon", "mixed e-42", "nothing like it"]) {
        const start = performance.now();
        const { found } = await ask(service, "library.search", { text });
        figures.searches.push(performance.now() - start);
        if (text === "" && found !== 2 * studies) throw new Error(`${found} series in ${studies} studies`);
      }
    }
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
  return figures;
}
