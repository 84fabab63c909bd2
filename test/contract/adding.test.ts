import { spawnSync } from "node:child_process";
import { cpSync, mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import Papa from "papaparse";
import { afterAll, beforeAll, expect, test } from "vitest";

// Carries out the steps of DEVELOPERS.md ("Adding a model", "Adding a response") to the letter in a copy of the
// sources: the files it prints, and the lines it gives for the registries, nothing else.

const root = join(import.meta.dirname, "..", "..");
let copy = "";
const touched: string[] = [];

function carryOut(page: string): void {
  for (const [, path, body] of page.matchAll(/```ts\n\/\/ (src\/\S+\.ts)\n([\s\S]*?)```/g)) {
    const file = join(copy, path!);
    touched.push(path!);
    if (!/\/(registry|all)\.ts$/.test(path!)) {
      writeFileSync(file, body!);
      continue;
    }
    const [importLine, name] = body!.trim().split("\n");
    const before = readFileSync(file, "utf8");
    const list = /\n( +)\]?\w+,\n(?= *[\]}])/.exec(before)!;
    const end = list.index + list[0].length;
    writeFileSync(file, `${importLine}\n${before.slice(0, end)}${list[1]}${name}\n${before.slice(end)}`);
  }
}

const run = (...args: string[]) =>
  spawnSync(process.execPath, args, { cwd: copy, encoding: "utf8", maxBuffer: 1e8 });

beforeAll(() => {
  copy = mkdtempSync(join(tmpdir(), "flocwright-adding-"));
  for (const part of ["src", "main", "package.json", "tsconfig.json", "docs"])
    cpSync(join(root, part), join(copy, part), { recursive: true });
  symlinkSync(join(root, "node_modules"), join(copy, "node_modules"));
  carryOut(readFileSync(join(root, "DEVELOPERS.md"), "utf8"));
});
afterAll(() => rmSync(copy, { recursive: true, force: true }));

test("the page touches one folder for a model and one for a response", () => {
  expect(touched).toEqual([
    "src/curve/models/hyperbola.ts",
    "src/curve/models/registry.ts",
    "src/responses/odour.ts",
    "src/responses/registry.ts",
    "src/responses/german/odour.ts",
    "src/responses/german/all.ts",
  ]);
});

test("the sources with both are of one type", { timeout: 300_000 }, () => {
  const config = { extends: "./tsconfig.json", include: ["src"] };
  writeFileSync(join(copy, "tsconfig.adding.json"), JSON.stringify(config));
  const types = run(join(root, "node_modules", "typescript", "bin", "tsc"), "-p", "tsconfig.adding.json");
  expect(types.stdout).toBe("");
  expect(types.status).toBe(0);
});

test(
  "the terminal analyses the new response, with the new model among the others",
  { timeout: 60_000 },
  () => {
    // y = 900 - 800 x / (1 + x), each with a small step up or down: no source, made up here
    const doses = [0.5, 0.5, 1, 1, 2, 2, 4, 4, 8, 8, 16, 16];
    const rows = doses.map((x, i) => `${x},${900 - (800 * x) / (1 + x) + (i % 2 ? 4 : -4)}`);
    writeFileSync(join(copy, "odour.csv"), `dose_a_kg_per_t,odour_ou_per_m3\n${rows.join("\n")}\n`);
    const analysed = run("main/headless.ts", "analyse", "odour.csv");
    expect(analysed.stderr).toBe("");
    const { responses } = JSON.parse(analysed.stdout) as {
      responses: { name: string; scale: string; fits: { model: string; status: string }[] }[];
    };
    expect(responses.map(({ name, scale }) => [name, scale])).toEqual([["odour_ou_per_m3", "log"]]);
    expect(responses[0]!.fits.find(({ model }) => model === "hyperbola")?.status).toBe("converged");

    const fit = run(
      ...["main/headless.ts", "fit", "odour.csv", "--x", "dose_a_kg_per_t", "--y", "odour_ou_per_m3"],
      ...["--model", "hyperbola"],
    );
    const report = JSON.parse(fit.stdout) as {
      parameters: { name: string; value: number }[];
      optimum: { dose: number; kind: string; intervals: { low: number | null }[] };
    };
    const value = (name: string) => report.parameters.find((one) => one.name === name)!.value;
    expect(value("start")).toBeCloseTo(900, -1);
    expect(value("half")).toBeCloseTo(1, 1);
    expect(report.optimum.kind).toBe("knee");
    expect(report.optimum.dose).toBeCloseTo(19 * value("half"), 6);
  },
);

test(
  "typed in the jar table it is checked, fitted and reported, in English where its German is missing",
  { timeout: 60_000 },
  () => {
    writeFileSync(
      join(copy, "through.ts"),
      `
import { applyCommand } from "./src/study/commands.ts";
import { demoCommands } from "./src/study/demo.ts";
import { emptyState } from "./src/study/schema/records.ts";
import { seriesChain } from "./src/study/derive/jars.ts";
import { jarColumns } from "./src/study/bench-table/jar-columns.ts";
import { readingColumns } from "./src/responses/registry.ts";
import { fitSeries } from "./src/report/series-fits.ts";
import { trialReport } from "./src/report/trial-report.ts";
import { german } from "./src/words/german/all.ts";
import { speak } from "./src/words/language.ts";

const now = "2026-05-04T12:00:00.000Z";
let state = emptyState();
let ids = 0;
const apply = (command) => {
  const done = applyCommand(state, command);
  if (!done.ok) throw new Error(done.message);
  state = done.value.state;
};
demoCommands(now).forEach(apply);
const chain = seriesChain(state, "series-1");
const columns = jarColumns({
  series: chain.series, readings: readingColumns, mark: ".", doseUnit: "kg/t",
  doseToShown: (v) => v, doseToCanonical: (v) => v, newId: () => "new-" + ++ids, now: () => now,
});
const odour = columns.find(({ key }) => key === "odour");
for (const [i, jar] of chain.jars.entries()) {
  const commands = odour.commands(jar, String(800 / (i + 1)));
  if (!commands.ok) throw new Error(commands.message);
  commands.value.forEach(apply);
}
const refused = odour.commands(chain.jars[0], "-3");
const fits = fitSeries(state, "series-1");
const paper = trialReport({
  state, now, utcOffsetMin: 0, version: "0", history: { changes: 1, head: "0".repeat(64), whole: true },
  fits: [fits],
});
const html = JSON.stringify(paper);
const { responseOdour, ...withoutOdour } = german;
const askedIn = (table) => {
  speak("german", table);
  const [column] = readingColumns.filter(({ key }) => key === "odour");
  return [column.label, column.ask];
};
console.log(JSON.stringify({
  asked: odour.label + ", " + odour.unit,
  refused: refused.ok ? applyCommand(state, refused.value[0]).message : refused.message,
  fitted: fits.analysis.responses.map(({ name }) => name),
  inReport: /odour, OU/.test(html) && html.includes("Odour"),
  german: askedIn(german),
  untranslated: askedIn(withoutOdour),
}));
`,
    );
    const through = run("through.ts");
    expect(through.stderr).toBe("");
    const said = JSON.parse(through.stdout) as Record<string, unknown>;
    expect(said).toMatchObject({ asked: "odour, OU/m³", inReport: true });
    expect(said["refused"]).toMatch(/must be above 0/);
    expect(said["fitted"]).toContain("odour_ou_per_m3");
    expect(said).toMatchObject({
      german: ["Geruch", "Geruch über dem Filtrat ablesen"],
      untranslated: ["odour", "Read the odour over the filtrate"],
    });
  },
);

test("a file with it is imported into a study, and exported again", { timeout: 60_000 }, () => {
  writeFileSync(join(copy, "in.csv"), "jar,syringe_a_ml,odour_ou_per_m3\n40,12.5,432.1\n41,25,98.7\n");
  expect(run("main/headless.ts", "demo", "demo.flocwright").status).toBe(0);
  const taken = run(
    ...["main/headless.ts", "import", "in.csv", "--into", "demo.flocwright", "--series", "E-42 alone"],
  );
  expect(JSON.parse(taken.stdout)).toMatchObject({ rows: 2, errors: [] });
  const given = run(
    ...["main/headless.ts", "export", "demo.flocwright", "--format", "csv", "--out", "out.csv"],
  );
  expect(given.stderr).toBe("");
  const { data } = Papa.parse<Record<string, string>>(
    readFileSync(join(copy, "out.csv"), "utf8").replace("\uFEFF", ""),
    { header: true },
  );
  expect(data.map((row) => row["odour_ou_per_m3"]).filter(Boolean)).toEqual(["432.1", "98.7"]);
});
