// @vitest-environment jsdom
import { describe, expect, test } from "vitest";
import { methods } from "../../../src/methods/methods.ts";
import { paperDocument } from "../../../src/report/paper.ts";
import { runsSection } from "../../../src/report/runs-section.ts";
import { fitSeries } from "../../../src/report/series-fits.ts";
import { trialReport } from "../../../src/report/trial-report.ts";
import { paperWords } from "../../../src/report/words.ts";
import type { Command } from "../../../src/study/commands.ts";
import { emptyState, type StudyState } from "../../../src/study/schema/records.ts";
import { demo, edited, now, paperInput } from "./studies.ts";
import { parsed, textOf } from "./page-text.ts";

function report(state: StudyState, series = Object.keys(state.series).sort()): string {
  const input = paperInput(state);
  return paperDocument(trialReport({ ...input, fits: series.map((id) => fitSeries(state, id)) }));
}
const whole = report(demo);
const text = textOf(whole);

describe("the report of the demo holds the whole trial", () => {
  test("sample, dishes, products, stocks", () => {
    expect(text).toContain("Total solids 2.483 ± 0.014 %");
    expect(text).toContain("1 46.8812 73.1094 47.5336 47.0471");
    expect(text).toContain("pH; conductivity 6.9; not measured");
    expect(text).toContain("Flocculant E-42 (invented) lot 7 emulsion, cationic 42 ± 1");
    expect(text).toContain("E-42 at 0.2 % Flocculant E-42 (invented) 2.381 500 0.2 0.476");
  });
  test("every jar with every reading, re-reads beside each other, a bound as a bound", () => {
    expect(text).toContain("1 (no polymer) 3 0 0 0.00 49.7 1 18 at 10 > 1000 1480 148 9.8 94.59");
    expect(text).toContain("8 2 5 (10) 31.1 5.00 (10.00) 18.6 5 229 at 10 46; 44.8 82 14 19.41 99.66");
    expect(text).toContain("read again after inverting the vial");
    const page = parsed(whole);
    const jars = [...page.querySelectorAll("table")].filter(({ caption }) =>
      caption?.textContent?.startsWith("Every jar"),
    );
    expect(jars.map((table) => table.tBodies[0]!.rows.length)).toEqual([13, 11]);
  });
  test("each response: the sentence, a chart with every jar, the models with the suggested one", () => {
    const fits = fitSeries(demo, "series-1");
    for (const { verdict } of fits.analysis!.responses)
      expect(text).toContain(verdict.sentence.replace(/\s+/g, " "));
    const page = parsed(whole);
    const charts = [...page.querySelectorAll("svg")].filter((svg) =>
      /^(?!Residuals|Cost).*against dose|^Pairs of doses/.test(svg.getAttribute("aria-label")!),
    );
    expect(charts).toHaveLength(7);
    const [turbidity] = charts;
    expect(turbidity!.getAttribute("aria-label")).toMatch(/^Turbidity against dose\. 5\.21 kg\/t/);
    expect(turbidity!.querySelectorAll("circle")).toHaveLength(12);
    const cake = charts.find((chart) => chart.getAttribute("aria-label")!.startsWith("Cake TS"))!;
    for (const run of ["Trial 1, settled", "Trial 2, settled", "Trial 3, settled"])
      expect(cake.textContent).toContain(run);
    expect(turbidity!.textContent).not.toContain("Trial 1");
    expect(turbidity!.textContent).toContain("approved 5.2");
    expect(turbidity!.textContent).toContain("plant today 6.4");
    expect(turbidity!.textContent).toContain("turbidity at most 80 NTU");
    const cells = [...page.querySelectorAll("td")].map(({ textContent }) => textContent);
    expect(cells.filter((cell) => cell === "suggested")).toHaveLength(5);
    // Such a word may not be broken by a narrow column.
    expect(
      [...page.querySelectorAll("td.unbroken")].filter((cell) => cell.textContent === "suggested"),
    ).toHaveLength(5);
  });
  test("two polymers: the jars on the plane of both doses, the surface's terms, the cheapest pair", () => {
    expect(text).toContain("jar 5: 42.7");
    expect(text).toMatch(/b12 [-\d.]+ [\d.]+/);
    expect(text).toMatch(/Cheapest within all limits: A 6\.94 kg\/t/);
  });
  test("choice, decision, rates, pump, machine", () => {
    expect(text).toContain("Working window: 4.12 to 7.05 kg/t");
    expect(text).toMatch(
      /knee of Drained 6\.5 \(13\.0\) 6\.0 \(12\.0\) to 7\.1 \(14\.2\) .* 3\.9 % \+0\.05 \(-0\.18 to \+0\.29\)/,
    );
    expect(text).toContain("simulated (1000 draws, seed 1)");
    expect(text).toContain(
      "5.2 kg/t (10.4 lb/short ton) active, 12.4 kg/t (24.8 lb/short ton) as supplied: approved",
    );
    expect(text).toContain(
      `Approved Jon R., ${paperWords(".", 120).moment(demo.decision["decision-1"]!.at)}`,
    );
    expect(text).toContain(
      "pump setting 72.2 % (71.6 to 72.8) 94.9 % (94.3 to 95.6) none: above the settings proven",
    );
    expect(text).toContain("8 draw-downs from 20 to 100 %");
    expect(text).toContain("replace with your supplier's");
  });
  test("cautions, every formula with its source, the whole hash", () => {
    expect(text).toContain("extremely slippery");
    for (const { what, source } of methods) {
      expect(text).toContain(what);
      expect(text).toContain(source.replace(/ ([.,;:])/g, "$1"));
    }
    expect(text.replaceAll(" ", "")).toContain("0123456789abcdef".repeat(4));
  });
});

describe("gaps are gaps", () => {
  test("an empty study still has a report, and says what it has not", () => {
    const empty = edited(emptyState(), { do: "add", kind: "study", record: { id: "study", name: "Bare" } });
    const bare = textOf(report(empty));
    for (const words of [
      "No sample yet.",
      "Products as supplied: none entered.",
      "No series yet.",
      "No pump is entered.",
      "No machine is entered.",
      "No plant runs logged.",
    ])
      expect(bare).toContain(words);
    expect(bare).not.toMatch(/NaN|Infinity|undefined|null|\[object/);
  });
  test("a missing strength, a jar left out, a withdrawn decision and no limits are all said", () => {
    const set = (
      kind: "product" | "jar" | "decision" | "targets",
      id: string,
      fields: Record<string, unknown>,
    ): Command => ({ do: "set", kind, id, fields });
    const state = edited(
      demo,
      set("jar", "jar-1-05", { leftOut: { reason: "timer-missed", note: "10 s late" } }),
      set("decision", "decision-1", { withdrawn: { byName: "Jon R.", at: now, reason: "wrong lot" } }),
      set("targets", "targets-1", { turbidityAtMost: null, cakeAtLeastPct: null, captureAtLeastPct: null }),
    );
    const page = textOf(report(state, ["series-1"]));
    expect(page).toContain("LEFT OUT: timer missed (10 s late)");
    expect(page).toContain("5 out");
    expect(page).toContain("active, 12.4 kg/t (24.8 lb/short ton) as supplied: withdrawn");
    expect(page).toContain("Withdrawn Jon R., 2026-05-04 14:00 UTC+2: wrong lot");
    expect(page).toContain("No limits were set.");
    expect(page).toContain("No rates: approve a dose in the Dose room first.");
    const blind = textOf(
      report(edited(demo, set("product", "product-1", { activePct: null })), ["series-1"]),
    );
    expect(blind).toContain("missing: enter the active share of Flocculant E-42 (invented)");
    const series = { id: "series-3", label: "Not begun", sampleId: "sample-1" };
    const begun = textOf(report(edited(demo, { do: "add", kind: "series", record: series }), ["series-3"]));
    expect(begun).toContain("no jars yet.");
    expect(begun).toContain("No curves: no jar has a dose and a reading yet.");
    expect(`${page}${blind}${begun}`).not.toMatch(/NaN|Infinity|undefined|\[object/);
  });
});

test("the rarer readings and pictures: as taken, with what they give", () => {
  const image = "data:image/jpeg;base64,/9j/4AAQSkZJRg==";
  const readings = [
    { kind: "filtrate-tss-dish", tareG: 0.125, dryG: 0.1893, volumeMl: 100 },
    { kind: "cake-dish", tareG: 8.215, wetG: 63.015, dryG: null },
    { kind: "re-shear", firstMm: 4, brokenMm: 1.5, regrownMm: null },
    { kind: "zeta", mV: -12.5 },
    {
      kind: "srf",
      points: [20, 40, 60, 80, 100, 120].map((volumeMl, i) => ({
        volumeMl,
        seconds: [6.6, 16.4, 29.5, 45.8, 65.2, 87.9][i],
      })),
      firstUsed: 1,
      lastUsed: 6,
      diameterMm: 70,
      pressureKPa: 49,
      temperatureC: 20,
      cakeKgPerM3: 25,
    },
  ];
  const state = edited(
    demo,
    ...readings.map((result, i): Command => ({
      do: "add",
      kind: "reading",
      record: { id: `rare-${i}`, jarId: "jar-1-04", result },
    })),
    {
      do: "set",
      kind: "jar",
      id: "jar-1-04",
      fields: { asMixed: { fastRpm: 190, fastS: 14 } },
    },
    {
      do: "add",
      kind: "photo",
      record: { id: "photo-1", jarId: "jar-1-04", label: "floc", widthPx: 640, heightPx: 480, image },
    },
  );
  const page = report(state, ["series-1"]);
  const words = textOf(page);
  // source: worked 3.2 (643.0 mg/L) and worked 4.1 (0.2335 Tm/kg, printed to three digits), recomputed independently
  expect(words).toContain("0.125, 0.1893; 100 = 643");
  expect(words).toContain("6 volumes, 1 to 6 used, 49 kPa, 20 °C = 0.233");
  expect(words).toContain("8.215, 63.015, not weighed");
  expect(words).toContain("4, 1.5, not measured");
  expect(words).toContain("-12.5");
  expect(words).toContain("mixed as: fast mixing at 190 rpm for 14 s");
  expect(parsed(page).querySelector("img")).toMatchObject({ src: image, alt: "jar 4: floc" });
});

test("a cylinder check is judged by its band", () => {
  const check = (id: string, amount: number): Command => ({
    do: "add",
    kind: "cylinderCheck",
    record: { id, pumpId: "pump-1", setting: 80, amount, seconds: 60, takenAt: now, byName: "Ilse K." },
  });
  const page = textOf(report(edited(demo, check("check-2", 60), check("check-3", 66.5)), ["series-1"]));
  expect(page).toMatch(/Ilse K\. 80 % 60 mL in 60 s \S+ to \S+ mL OUTSIDE its band/);
  expect(page).toMatch(/Ilse K\. 80 % 66\.5 mL in 60 s \S+ to \S+ mL within its band/);
});

describe("plant runs", () => {
  test("every run with its dose by each way, and the factor they make", () => {
    expect(text).toMatch(
      /Trial 1, settled \S+ \S+ \S+, Ilse K\. step test 16 \(70\.45\) 2\.5 4\.89 \(9\.78\) 19\.6 92 99\.47/,
    );
    expect(text).toMatch(
      /Trial 1, settled Flocculant E-42 \(invented\) 4\.89 \(9\.78\) \(counts\) 4\.96 \(9\.92\) 4\.89 \(9\.77\) 1\.5 % 5\.2 \(10\.4\)/,
    );
    expect(text).toMatch(/Bench-to-plant factor of Press 2 .*: 0\.92 from 3 runs .*; not in use\./);
  });
  test("without runs the report says so", () => {
    expect(textOf(runsSection([{ caption: "x", heads: ["run"], rows: [] }], []).html)).toContain(
      "No plant runs logged.",
    );
  });
  test("what a crew writes is text", () => {
    const table = { caption: "Runs", heads: ["run"], rows: [["<b>wet</b>"]] };
    expect(textOf(runsSection([table], ["<i>drift</i>"]).html)).toContain("<b>wet</b> <i>drift</i>");
  });
});
