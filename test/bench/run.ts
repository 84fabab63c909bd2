// npm run bench [-- --json]: prints each figure as a JSON line with its median and 95th percentile. Never part of the tests.
import { spawn } from "node:child_process";
import { responseSpecs } from "../../src/responses/registry.ts";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { chromium } from "playwright";
import { findBrowser, quietFlags } from "../../scripts/browser.mjs";
import { analyseJars } from "../../src/curve/analyse.ts";
import { gridFigures } from "./grid.ts";
import { libraryFigures, scaleFigures, type ScaleFigures } from "./scale.ts";
import { longTaskFigures } from "./long-tasks.ts";
import { printCoverage } from "./coverage.ts";
import { compareWithYardstick, type BenchData } from "./yardstick.ts";
import { secondOrderRow } from "../../src/curve/canonical.ts";
import { fastRefitter } from "../../src/curve/fast-refit.ts";
import { solveLeastSquares } from "../../src/curve/least-squares.ts";
import { caseBootstrap } from "../../src/curve/surface-bootstrap.ts";
import { bootstrapOptima } from "../../src/curve/bootstrap.ts";
import { fitModel } from "../../src/curve/fit.ts";
import { modelNamed, models } from "../../src/curve/models/registry.ts";
import { normalFrom, seededRandom } from "../../src/curve/random.ts";
import type { Command, SimpleCommand } from "../../src/study/commands.ts";
import { writeDemo } from "../../main/service/standalone.ts";
import { openStudyFile } from "../../main/storage/study-file.ts";
import { demoCommands } from "../../src/study/demo.ts";
import { timeImportPreviews } from "./import.ts";

const root = join(import.meta.dirname, "..", "..");
const folder = mkdtempSync(join(tmpdir(), "flocwright-bench-"));

const wantsData = process.argv.includes("--json");
const ours = { refitUs: NaN, surfaceUs: NaN };
const data: Partial<BenchData> = {};
const median = (values: number[]) => [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)]!;

function print(name: string, unit: string, values: number[], budget: number | null, more: object = {}): void {
  const sorted = [...values].sort((a, b) => a - b);
  const at = (p: number) => sorted[Math.min(sorted.length - 1, Math.floor(p * sorted.length))]!;
  console.log(
    JSON.stringify({ name, unit, runs: values.length, median: at(0.5), p95: at(0.95), budget, ...more }),
  );
}

function printScale(figures: ScaleFigures): void {
  const of = "20,000 jars, 100,000 changes";
  print(`open a study of ${of}, with the answer as text`, "ms", figures.opens, 2000);
  print(`a jar's edit acknowledged, ${of}`, "ms", figures.jarEdits, 50);
  print(`a reading's edit acknowledged, ${of}`, "ms", figures.readingEdits, 50);
  if (figures.starts.length === 0) return;
  print(`host start to first usable screen, ${of}`, "ms", figures.starts, null);
  print(`edit to updated strip, ${of}`, "ms", figures.stripEdits, 50);
  print(`edit in the bench table to its dose, ${of}`, "ms", figures.doseEdits, 100);
}

async function timed(runs: number, work: () => unknown): Promise<number[]> {
  const values: number[] = [];
  for (let i = 0; i < runs; i++) {
    const start = performance.now();
    await work();
    values.push(performance.now() - start);
  }
  return values;
}

const doses24 = Array.from({ length: 24 }, (_, i) => 2 + (10 * Math.floor(i / 2)) / 11);
const normal = normalFrom(seededRandom(11));
const valley24 = doses24.map((x, i) => ({
  x,
  y: Math.exp(6.6 - 2.8 * Math.exp(-((x - 6.4) ** 2) / (2 * 1.9 ** 2)) + 0.08 * normal()),
  row: i + 2,
}));

// All models with their intervals on a 24-jar series.
print(
  "all models with intervals, 24 jars",
  "ms",
  await timed(15, () =>
    Object.values(models).forEach((model) => fitModel(model!, valley24, { scale: "log", influence: false })),
  ),
  60,
);
print(
  "analyse one response, 24 jars",
  "ms",
  await timed(10, () =>
    analyseJars(
      valley24.map((point, i) => ({
        row: i + 1,
        jar: String(i),
        doseA: point.x,
        doseB: 0,
        block: null,
        order: null,
        readings: { turbidity_ntu: { value: point.y, censored: null } },
      })),
      { name: "", responses: responseSpecs, number: String, jar: String },
    ),
  ),
  null,
);

// Bootstrap refits of the Gaussian valley; every 100th is checked against the full solver.
{
  const model = modelNamed("gaussian-valley")!;
  const fit = fitModel(model, valley24, { scale: "log", influence: false });
  const refits = 2000;
  const values = await timed(3, () =>
    bootstrapOptima(model, fit.problem, new Map(), fit.estimate, refits, 1),
  );
  ours.refitUs = (median(values) * 1000) / refits;
  const { x, y } = fit.problem;
  const { residuals, parameters } = fit.estimate;
  data.valley = { x, fitted: y.map((value, i) => value - residuals[i]!), residuals, parameters };
  print(
    "one bootstrap refit, Gaussian valley, 24 points",
    "us",
    values.map((value) => (value * 1000) / refits),
    17,
  );
}

// Every 100th refit held against the full solver, on its own resample.
{
  const model = modelNamed("gaussian-valley")!;
  const fit = fitModel(model, valley24, { scale: "log", influence: false });
  const refit = fastRefitter(fit.model.fast!, fit.problem.x);
  const random = seededRandom(5);
  const out = new Float64Array(4);
  let worst = 0;
  for (let k = 0; k < 20; k++) {
    const y = Float64Array.from(
      fit.problem.y,
      (value, i) => value - fit.estimate.residuals[i]! + fit.estimate.residuals[Math.floor(random() * 24)]!,
    );
    if (!refit(y, fit.estimate.parameters, out)) continue;
    const full = fitModel(
      model,
      fit.problem.x.map((x, i) => ({ x, y: Math.exp(y[i]!), row: i + 2 })),
      { scale: "log", influence: false, intervals: false },
    );
    if (full.report.status !== "converged") continue;
    full.estimate.parameters.forEach((value, j) => (worst = Math.max(worst, Math.abs(out[j]! / value - 1))));
  }
  if (!(worst < 1e-6)) throw new Error(`a fast refit strays from the full solver by ${worst}`);
  console.log(
    JSON.stringify({
      name: "fast refits against the full solver, largest relative difference",
      value: worst,
      limit: 1e-6,
    }),
  );
}

// A second-order surface, 30 points, by case bootstrap; every 100th draw against the QR solver.
{
  const random = seededRandom(6);
  const design = Array.from({ length: 30 }, () => secondOrderRow([2 * random() - 1, 2 * random() - 1]));
  const y = design.map(
    (row) =>
      4 - 0.2 * row[1]! - 0.3 * row[2]! + 0.4 * row[3]! + 0.5 * row[4]! + 0.2 * row[5]! + 0.1 * normal(),
  );
  const draws = 2000;
  const values = await timed(5, () => caseBootstrap(design, y, draws, seededRandom(9)));
  ours.surfaceUs = (median(values) * 1000) / draws;
  data.surface = { design, y };
  print(
    "one case bootstrap, second-order surface, 30 points",
    "us",
    values.map((value) => (value * 1000) / draws),
    16 / 3,
  );
  const again = seededRandom(9);
  const all = caseBootstrap(design, y, draws, seededRandom(9));
  let worst = 0;
  for (let draw = 0; draw < draws; draw++) {
    const picks = Array.from({ length: 30 }, () => Math.floor(again() * 30));
    if (draw % 100 !== 0 || all.length !== draws) continue;
    const exact = solveLeastSquares(
      picks.map((i) => design[i]!),
      picks.map((i) => y[i]!),
    );
    if (exact.status === "fitted")
      exact.coefficients.forEach(
        (value, j) =>
          (worst = Math.max(worst, Math.abs(all[draw]![j]! - value) / Math.max(1, Math.abs(value)))),
      );
  }
  if (!(worst < 1e-6)) throw new Error(`a surface draw strays from the QR solver by ${worst}`);
  console.log(
    JSON.stringify({
      name: "surface draws against the QR solver, largest relative difference",
      value: worst,
      limit: 1e-6,
    }),
  );
}

if (wantsData) compareWithYardstick(data as BenchData, ours);

// Opening a study of 2,000 jars.
{
  const path = join(folder, "large.flocwright");
  const jars: SimpleCommand[] = Array.from({ length: 2000 }, (_, i) => ({
    do: "add",
    kind: "jar",
    record: { id: `big-${i}`, seriesId: "series-1", label: `x${i}`, order: i + 100, syringeAMl: 20 },
  }));
  const readings: SimpleCommand[] = Array.from({ length: 2000 }, (_, i) => ({
    do: "add",
    kind: "reading",
    record: {
      id: `bigr-${i}`,
      jarId: `big-${i}`,
      result: { kind: "turbidity", value: 50 + (i % 50), dilution: 1 },
    },
  }));
  const more: Command[] = [{ do: "together", label: "many jars", commands: [...jars, ...readings] }];
  const written = writeDemo(path, (at) => [...demoCommands(at), ...more], new Date().toISOString());
  if (!written.ok) throw new Error(written.message);
  print(
    "open a study of 2,000 jars",
    "ms",
    await timed(7, () => {
      const file = openStudyFile(path, new Date().toISOString());
      if (!file.ok) throw new Error(file.message);
      if (!file.value.readState().ok) throw new Error("not read");
      file.value.undoRows();
      file.value.close();
    }),
    1000,
  );
}

for (const { name, values } of await timeImportPreviews(5)) print(name, "ms", values, 2000);

// In the browser: start to first usable screen, and an edit to the updated strip.
const browserPath = findBrowser();
if (browserPath) {
  const path = join(folder, "demo.flocwright");
  writeDemo(path, demoCommands, new Date().toISOString());
  const browser = await chromium.launch({ executablePath: browserPath, args: quietFlags() });
  const starts: number[] = [];
  const edits: number[] = [];
  for (let round = 0; round < 3; round++) {
    const began = performance.now();
    const host = spawn(
      process.execPath,
      [join(root, "main", "headless.ts"), "host", "--study", path, "--port", "0", "--no-window"],
      {
        cwd: root,
        stdio: ["ignore", "pipe", "inherit"],
      },
    );
    const url = await new Promise<string>((resolve) =>
      host.stdout.once("data", (chunk) => resolve((JSON.parse(String(chunk)) as { url: string }).url)),
    );
    const page = await browser.newPage({ viewport: { width: 1280, height: 800 } });
    await page.goto(url);
    await page.locator('[data-room="sample"]').getByText("TS 2.48").waitFor();
    starts.push(performance.now() - began);
    for (let i = 0; i < 10; i++) {
      // From the moment an edit is committed to the frame in which the strip shows it.
      const dish = page.getByLabel("dish 1, dried at 105 °C, g");
      await dish.fill(i % 2 === 0 ? "47.56" : "47.5336");
      edits.push(
        await page.evaluate(async () => {
          const strip = document.querySelector('[data-room="sample"]')!;
          const before = strip.textContent;
          const input = document.activeElement as HTMLInputElement;
          const start = performance.now();
          input.blur();
          while (strip.textContent === before && performance.now() - start < 5000)
            await new Promise((resolve) => requestAnimationFrame(resolve));
          return performance.now() - start;
        }),
      );
    }
    await page.close();
    host.kill("SIGTERM");
    await new Promise((resolve) => host.once("exit", resolve));
  }
  const grid = await gridFigures(browser, root, folder);
  printScale(await scaleFigures(root, browser));
  await longTaskFigures(browser, root, ({ name, longest, count, wholeMs }) =>
    print(`longest task of the screen's thread: ${name}`, "ms", [longest], 50, { tasks: count, wholeMs }),
  );
  await browser.close();
  print("one frame while a table of 500 jars scrolls", "ms", grid.frames, 50);
  print("edit in a table of 500 jars to its dose", "ms", grid.edits, 100);
  print("host start to first usable screen", "ms", starts, 5000);
  print("edit to updated strip", "ms", edits, 50);
} else {
  printScale(await scaleFigures(root, null));
  console.log(
    JSON.stringify({ name: "browser figures", skipped: "no browser of the Chromium family was found" }),
  );
}
rmSync(folder, { recursive: true, force: true });
{
  const library = await libraryFigures(500);
  const of = `a folder of ${library.studies} studies`;
  print(`read ${of} into its index for the first time`, "ms", library.first, null);
  print(`one slice of that reading`, "ms", library.slices, null);
  print(`look through ${of} of which none changed`, "ms", library.again, 1000);
  print(`search ${of}`, "ms", library.searches, 100);
}
printCoverage(200);
