// @vitest-environment jsdom
import { describe, expect, test } from "vitest";
import { surfaceMean } from "../../../src/curve/surface-bands.ts";
import { limitsPlot } from "../../../src/report/limits-plot.ts";
import { paperDocument } from "../../../src/report/paper.ts";
import { filtrationTest } from "../../filtration-test.ts";
import { residualsOf } from "../../../src/report/residual-plot.ts";
import { fitSeries } from "../../../src/report/series-fits.ts";
import { sliceCurve, slicePlot } from "../../../src/report/slice-plot.ts";
import { trialReport } from "../../../src/report/trial-report.ts";
import type { Command } from "../../../src/study/commands.ts";
import type { StudyState } from "../../../src/study/schema/records.ts";
import { demo, edited, paperInput, twoPolymers } from "./studies.ts";
import { parsed } from "./page-text.ts";

const report = (state: StudyState, series = Object.keys(state.series).sort()) =>
  parsed(
    paperDocument(trialReport({ ...paperInput(state), fits: series.map((id) => fitSeries(state, id)) })),
  );
const labels = (page: Document) =>
  [...page.querySelectorAll("svg")].map((svg) => svg.getAttribute("aria-label")!);
const labelled = (page: Document, start: string) => labels(page).filter((label) => label.startsWith(start));
const figureOf = (page: Document, start: string) =>
  [...page.querySelectorAll("figure")].find((figure) =>
    // a photo is a figure without a drawing
    figure.querySelector("svg")?.getAttribute("aria-label")?.startsWith(start),
  )!;
const texts = (figure: Element) => [...figure.querySelectorAll("text")].map((text) => text.textContent);
const reading = (id: string, jarId: string, result: Record<string, unknown>): Command => ({
  do: "add",
  kind: "reading",
  record: { id, jarId, result },
});
const whole = report(demo);

describe("the report of the demo", () => {
  test("draws the residuals of every suggested model, the limits, the cost, the slices and the pump's line", () => {
    expect(labelled(whole, "Residuals of ")).toHaveLength(5);
    expect(labelled(whole, "Where the limits hold. Working window: 4.12 to 7.05 kg/t")).toHaveLength(1);
    expect(labelled(whole, "Cost against dose.")).toHaveLength(1);
    expect(labelled(whole, "Along A.")).toHaveLength(2);
    expect(labelled(whole, "Along B.")).toHaveLength(2);
    expect(labelled(whole, "Pump line of Neat pump P1. 8 draw-downs")).toHaveLength(1);
    expect(labels(whole).filter((label) => /^(Drainage|Filtration)/.test(label))).toEqual([]);
  });
  test("says under each what it shows and where its numbers stand, once for each drawing", () => {
    for (const start of ["Where the limits hold", "Cost against dose", "Pump line of"]) {
      const { textContent } = figureOf(whole, start).querySelector("figcaption")!;
      expect(textContent!.startsWith(`${start}`)).toBe(true);
      expect(textContent).toMatch(/table above\.$/);
    }
    expect(new Set(labels(whole)).size).toBe(labels(whole).length);
    for (const svg of whole.querySelectorAll("svg")) expect(svg.closest("figure")).not.toBeNull();
  });
  test("marks the approved dose and today's on the limits, on the cost the approved one", () => {
    expect(texts(figureOf(whole, "Where the limits hold"))).toEqual(
      expect.arrayContaining([
        "turbidity at most 80 NTU",
        "cake TS at least 18.5 %",
        "capture at least 98 %",
        "Working window",
        "approved 5.2",
        "plant today 6.4",
      ]),
    );
    expect(texts(figureOf(whole, "Cost against dose"))).toEqual(
      expect.arrayContaining(["5.2 kg/t (10.4 lb/short ton)", "cost, EUR/t dry solids", "disposal"]),
    );
  });
  test("says where the plant's runs are drawn", () => {
    expect(whole.body.textContent).toContain("Runs are the diamonds on the bench curves");
  });
});

describe("nothing is drawn where nothing is behind it", () => {
  const set = (kind: "product" | "targets", id: string, fields: Record<string, unknown>): Command => ({
    do: "set",
    kind,
    id,
    fields,
  });
  test("no price, no limits, no draw-downs, no runs", () => {
    const unpriced = report(edited(demo, set("product", "product-1", { pricePerKgNeat: null })), [
      "series-1",
    ]);
    expect(labelled(unpriced, "Cost against dose")).toEqual([]);
    const free = { turbidityAtMost: null, cakeAtLeastPct: null, captureAtLeastPct: null };
    const unlimited = report(edited(demo, set("targets", "targets-1", free)), ["series-1"]);
    expect(labelled(unlimited, "Where the limits hold")).toEqual([]);
    const remove = (kind: "drawDown" | "plantRun" | "runDose"): Command[] =>
      Object.keys(demo[kind]).map((id) => ({ do: "remove", kind, id }));
    const bare = report(edited(demo, ...remove("runDose"), ...remove("drawDown"), ...remove("plantRun")), [
      "series-1",
    ]);
    expect(labelled(bare, "Pump line")).toEqual([]);
    expect(bare.body.textContent).not.toContain("Runs are the diamonds");
  });
  test("one drainage time a jar makes no curve, re-reads at that time neither", () => {
    const reread = edited(demo, reading("again", "jar-1-04", { kind: "drained", ml: 101, atS: 10 }));
    expect(labelled(report(reread, ["series-1"]), "Drainage")).toEqual([]);
  });
});

describe("what the jars were read of over time", () => {
  const filtration = filtrationTest(2);
  const page = report(
    edited(
      demo,
      reading("d-4", "jar-1-04", { kind: "drained", ml: 171.5, atS: 60 }),
      reading("d-5", "jar-1-05", { kind: "drained", ml: 240, atS: 60 }),
      reading("srf-4", "jar-1-04", filtration),
    ),
    ["series-1"],
  );
  test("drainage of all jars in one drawing, each named where it ends", () => {
    const figure = figureOf(page, "Drainage of the jars");
    expect(labelled(page, "Drainage")).toEqual([
      "Drainage of the jars. Most drained from jar 5: 240 mL at 60 s; least from jar 4: 171.5 mL at 60 s",
    ]);
    expect(texts(figure)).toEqual(expect.arrayContaining(["jar 4", "jar 5", "time, s"]));
    expect(figure.textContent).toContain("jar 5: 240 mL at 60 s");
    expect(figure.querySelectorAll("path > title")).toHaveLength(4);
  });
  test("a filtration test with its line, and the pairs in a table", () => {
    expect(labelled(page, "Filtration of jar 4. Points 2 to 4 lie on a line with R² 1.0000")).toHaveLength(1);
    const table = [...page.querySelectorAll("table")].find(({ caption }) =>
      caption?.textContent?.startsWith("Filtration tests"),
    )!;
    expect([...table.tBodies[0]!.rows[0]!.cells].map(({ textContent }) => textContent)).toEqual([
      "4",
      "20 at 12; 40 at 40; 60 at 84; 80 at 144",
      "points 2 to 4",
    ]);
  });
});

test("limits: each row holds its spans, the window stands lowest, the marks over all", () => {
  const plot = limitsPlot({
    tested: { low: 2, high: 8 },
    bars: [
      { mean: [{ low: 3, high: 8 }], bound: [{ low: 4, high: 7 }] },
      { mean: [], bound: [] },
    ],
    names: ["one", "other"],
    window: [{ low: 4, high: 7 }],
    sentence: "",
    doseAxis: "dose",
    marks: [{ dose: 5, name: "approved 5", look: "here" }],
  });
  expect(plot.y.named).toEqual([
    { value: 2.5, text: "one" },
    { value: 1.5, text: "other" },
    { value: 0.5, text: "Working window" },
  ]);
  expect(plot.bands!.map(({ look, points }) => [look, ...points.map(({ x }) => x)])).toEqual([
    ["layer-1", 3, 8],
    ["layer-3", 4, 7],
    ["layer-3", 4, 7],
  ]);
  expect(plot.bands!.map(({ points }) => (points[0]!.low + points[0]!.high) / 2)).toEqual([2.5, 2.5, 0.5]);
  expect(plot.y.high).toBeGreaterThan(3);
});

test("residuals are the fit's own over its scatter; a jar beyond two is named under them", () => {
  const { fit } = fitSeries(demo, "series-1").workings.find(({ analysis }) => analysis.name === "cst_s")!;
  const residuals = residualsOf(
    fit!,
    (row) => `row ${row}`,
    (_, order) => order,
  );
  expect(residuals).toHaveLength(fit!.problem.x.length);
  residuals.forEach(({ deviations, at, jar }, i) => {
    expect(deviations * fit!.estimate.residualSd!).toBeCloseTo(fit!.estimate.residuals[i]!, 10);
    expect(at).toBe(fit!.problem.order[i]);
    expect(jar).toBe(`row ${fit!.problem.rows[i]}`);
  });
  const cst = Object.values(demo.reading).find(
    ({ jarId, result }) => jarId === "jar-1-07" && result.kind === "cst",
  )!;
  const page = report(
    edited(demo, {
      do: "set",
      kind: "reading",
      id: cst.id,
      fields: { result: { kind: "cst", seconds: 60 } },
    }),
    ["series-1"],
  );
  expect(figureOf(page, "Residuals of CST").querySelector("figcaption")!.textContent).toMatch(
    /1 of 12 jars beyond 2\. Beyond 2: jar 7 at \d\.\d\.$/,
  );
});

test("slices go through the approved pair where there is one, and say the surface's own mean", () => {
  const surface = fitSeries(demo, "series-2").workings[0]!.surface!;
  const slice = sliceCurve(surface, "b", { a: 6, b: 99 });
  expect(slice.curve).toHaveLength(61);
  for (const { dose, mean, low, high } of slice.curve) {
    expect(mean).toBe(surfaceMean(surface, 6, dose));
    expect(low).toBeLessThan(mean);
    expect(high).toBeGreaterThan(mean);
  }
  const plot = slicePlot(slice, "B", {
    label: "Turbidity",
    unit: "NTU",
    log: true,
    held: "A held at 6 kg/t",
    limit: { value: 80, words: "at most 80" },
    here: { dose: 3, name: "cut at 3" },
  });
  expect(plot.y.log).toBe(true);
  expect(plot.y.low).toBeLessThan(Math.min(80, ...slice.curve.map(({ low }) => low)));
  expect(plot.sentence).toBe("Turbidity along dose B, A held at 6 kg/t, with its 95 % band");
  expect(whole.body.textContent).toContain("Cut through the pair picked by rule.");
  const approved = report(twoPolymers(20), ["series-2"]);
  expect(approved.body.textContent).toContain("Cut through the approved pair.");
  expect(labelled(approved, "Along A")[0]).toContain("B held at 3 kg/t (6 lb/short ton)");
});

test("a plant run above every jar's dose stays on the axis", () => {
  // a third of the feed at the same pump setting is three times the dose, above the highest of the jars
  const thin = edited(demo, { do: "set", kind: "plantRun", id: "run-11", fields: { feedM3PerH: 5 } });
  const figure = figureOf(report(thin, ["series-1"]), "Cake TS against dose");
  const diamond = [...figure.querySelectorAll("g")].find((one) => one.textContent === "Trial 1, settled")!;
  const at = Number(/^M(\S+) /.exec(diamond.querySelector("path")!.getAttribute("d")!)![1]);
  const [, end] = /H(\S+)$/.exec(figure.querySelector('path[stroke-width="1"]')!.getAttribute("d")!)!;
  expect(at).toBeLessThan(Number(end));
  const jars = [...figure.querySelectorAll("circle")].map((circle) => Number(circle.getAttribute("cx")));
  expect(at).toBeGreaterThan(Math.max(...jars));
});
