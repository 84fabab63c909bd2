// @vitest-environment jsdom
import { expect, test } from "vitest";
import { driftDrawing } from "../../../src/report/drift-chart.ts";
import { printedDrift } from "../../../src/report/drift-data.ts";
import { paperDocument } from "../../../src/report/paper.ts";
import { fitSeries } from "../../../src/report/series-fits.ts";
import { trialReport } from "../../../src/report/trial-report.ts";
import { runsOf } from "../../../src/study/derive/plant-runs.ts";
import { driftChain } from "../../../src/study/derive/plant-watch.ts";
import type { Command } from "../../../src/study/commands.ts";
import type { StudyState } from "../../../src/study/schema/records.ts";
import { demo, edited, paperInput } from "./studies.ts";
import { parsed, textOf } from "./page-text.ts";

const report = (state: StudyState) =>
  paperDocument(trialReport({ ...paperInput(state), fits: [fitSeries(state, "series-1")] }));
/** the demo without the routine and paired runs that it comes with */
const quiet = edited(
  demo,
  ...Object.values(demo.plantRun)
    .filter(({ kind }) => kind !== "step")
    .map(({ id }): Command => ({ do: "remove", kind: "plantRun", id })),
);

const routine = (cakes: number[]): Command[] =>
  cakes.map((cakePct, i) => ({
    do: "add",
    kind: "plantRun",
    record: {
      id: `routine-${i}`,
      seriesId: "series-1",
      label: `R${i + 1}`,
      kind: "routine",
      at: `2026-05-${String(i + 5).padStart(2, "0")}T08:00:00.000Z`,
      cakePct,
    },
  }));
const pairs = (cakes: [number, number][]): Command[] =>
  cakes.flatMap(([a, b], i) =>
    (["A", "B"] as const).map((side): Command => ({
      do: "add",
      kind: "plantRun",
      record: {
        id: `pair-${i}-${side.toLowerCase()}`,
        seriesId: "series-1",
        label: `P${i + 1}${side}`,
        kind: "comparison",
        side,
        pair: i + 1,
        cakePct: side === "A" ? a : b,
      },
    })),
  );
// the last run falls far below what the six before it scatter by
const drifting = edited(quiet, ...routine([20, 20.4, 19.8, 20.1, 20.3, 19.9, 16]));

test("the report holds the drift chart with its named limits and every run", () => {
  const html = report(drifting);
  const chart = [...parsed(html).querySelectorAll("svg")].find((svg) =>
    svg.getAttribute("aria-label")!.startsWith("Drift of the cake TS"),
  )!;
  const marks = [...chart.querySelectorAll("path")].flatMap((path) => {
    const run = path.querySelector("title")?.textContent;
    return run ? [{ run, square: path.getAttribute("d")!.includes("h10v10") }] : [];
  });
  expect(marks.map(({ square }) => square)).toEqual([false, false, false, false, false, false, true]);
  expect(marks[6]!.run).toBe("run R7: 16, a signal");
  for (const words of ["upper limit", "middle", "lower limit", "R1", "R7", "cake TS, %"])
    expect(chart.textContent).toContain(words);
  const text = textOf(html);
  expect(text).toContain("Run R7: cake TS lies below what this plant does when nothing has changed.");
  expect(text).toContain("No chart of the filtrate TSS: needs 7 runs in a row, 0 are logged.");
});

test("the drift chart's limits are those of Shewhart's individuals chart, in either system of units", () => {
  const drift = driftChain(runsOf(drifting, "series-1"), "cake");
  const chart = printedDrift(drift, "metric")!;
  const [upper, middle, lower] = chart.limits.map(({ value }) => value);
  // mean 20.0833, moving ranges .4 .6 .3 .2 .4: mean .38, 3 x .38 / 1.12838 = 1.01030
  expect(middle).toBeCloseTo(20.08333, 4);
  expect(upper! - middle!).toBeCloseTo(1.0103, 3);
  expect(middle! - lower!).toBeCloseTo(1.0103, 3);
  expect(driftDrawing(chart, String).body.html).toContain("routine runs in order of time");
});

test("the report holds paired comparisons, mixing and the limit on land", () => {
  const text = textOf(
    report(
      edited(
        quiet,
        ...pairs([
          [20, 21],
          [19.5, 20.4],
          [20.2, 21.3],
        ]),
      ),
    ),
  );
  expect(text).toMatch(/cake TS, % 3 1\.00 0\.75 to 1\.25 0\.0033 a real difference/);
  expect(text).toContain("filtrate TSS, mg/L – – – – not yet");
  // The demo's own pairs, recomputed by hand: a slow belt makes drier cake (0.7, 0.6, 0.8, 0.5; t 10.07 of 3 degrees of
  // freedom), and the filtrate's 5, -4, 11, -2 tell nothing.
  const own = textOf(report(demo));
  expect(own).toMatch(/cake TS, % 4 0\.65 0\.44 to 0\.86 0\.0021 a real difference/);
  expect(own).toMatch(/filtrate TSS, mg\/L 4 3 -8 to 13 0\.52 no difference/);
  expect(own).toContain(
    "compared in pairs: E-42 alone A: belt 3.2 m/min, pressure 4 bar. B: belt 2.6 m/min, pressure 4 bar.",
  );
  // Settings that nobody said, or that were not the same in every pair, are not told.
  expect(text).not.toMatch(/compared in pairs: E-42 alone A: /);
  expect(text).toContain("Mixing, jars against plant");
  expect(text).toMatch(/Jars, G x t [\d.]+/);
  expect(text).toMatch(/Pipe that the delay wanted needs [\d.]+ m \([\d.]+ ft\)/);
  expect(text).toContain("Cake on land: polymer per hectare");
  expect(text).toContain("Local rules govern, and this is no legal advice.");
});

test("a study without routine runs, pairs, mixing or a limit on land has no such heads", () => {
  const bare = textOf(
    report(
      edited(
        quiet,
        { do: "remove", kind: "mixing", id: "mixing-1" },
        { do: "remove", kind: "landLimit", id: "land-1" },
      ),
    ),
  );
  for (const head of [
    "Drift watch on routine runs",
    "compared in pairs",
    "Mixing, jars against plant",
    "Cake on land",
  ])
    expect(bare).not.toContain(head);
});
