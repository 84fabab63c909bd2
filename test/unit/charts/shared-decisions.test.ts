import { afterEach, describe, expect, it } from "vitest";
import type { Scale } from "chart.js";
import { movedTarget, targetStep } from "../../../src/choice/target-steps.ts";
import { roundTicks } from "../../../src/report/axis.ts";
import { endLabels, spread, untested, valueAtDose, valueEnds } from "../../../src/report/dose-axes.ts";
import { chartLegend, doseDrawing } from "../../../src/report/dose-chart.ts";
import { svgFile } from "../../../src/report/drawing.ts";
import { doseChartConfig } from "../../../renderer/charts/dose-chart-config.ts";
import type { DoseChartData } from "../../../renderer/charts/dose-chart-data.ts";
import { printedOf } from "../../../renderer/charts/printed-chart.ts";
import { valueTitle } from "../../../renderer/charts/value-title.ts";
import { german } from "../../../src/words/german/all.ts";
import { speak } from "../../../src/words/language.ts";

afterEach(() => speak("english", null));

const ink = Object.fromEntries(
  ["ink", "soft", "rule", "accent", "tint", "sheet", "bad", "warn", "a", "b", "font"].map((name) => [
    name,
    "#000",
  ]),
) as unknown as Parameters<typeof doseChartConfig>[1];

const at = (dose: number) => ({ dose, mean: 40 + (dose - 5) ** 2 * 8 });
const data: DoseChartData = {
  doseLabel: "dose A, kg/t active",
  valueLabel: "Turbidity, NTU",
  valueUnit: "NTU",
  logValue: true,
  doseRange: { low: 0, high: 8.8 },
  tested: { low: 2, high: 8 },
  points: [2, 3, 4, 5, 6, 8].map((dose, i) => ({ dose, value: at(dose).mean * 1.02, label: String(i + 1) })),
  curve: [2, 3, 4, 5, 6, 7, 8].map((dose) => ({
    ...at(dose),
    low: at(dose).mean * 0.9,
    high: at(dose).mean * 1.1,
  })),
  prediction: [2, 8].map((dose) => ({ dose, low: at(dose).mean * 0.7, high: at(dose).mean * 1.4 })),
  beyond: [[1.5, 2].map(at), [8, 8.6].map(at)],
  preview: [],
  limit: { value: 80, side: "at-most", label: "turbidity at most 80 NTU" },
  interval: { low: 4.6, high: 5.5 },
  marks: [],
  polymer: "a",
};
const words = { number: (value: number) => String(value) };
const printed = printedOf(data, "Turbidity", "5 kg/t.");

/** The ticks that the screen's own drawing library is handed, in a chart of a height. */
function screenTicks(axis: "x" | "y", height: number): number[] {
  const config = doseChartConfig(data, ink, null, words, true);
  const options = config.options!.scales![axis]!;
  const scale = { min: options.min, max: options.max, chart: { height }, ticks: [] } as unknown as Scale;
  options.afterBuildTicks!(scale);
  return scale.ticks.map(({ value }) => value);
}

const paperTexts = [
  ...doseDrawing(printed, words.number).body.html.matchAll(/<text[^>]*>([^<]*)<\/text>/g),
].map(([, text]) => text!);

describe("the chart on screen and the chart on paper", () => {
  it("have one range and the same ticks", () => {
    const paperHeight = 170;
    for (const [axis, height] of [
      ["x", paperHeight],
      ["y", paperHeight],
    ] as const) {
      const ticks = screenTicks(axis, height);
      expect(ticks.length).toBeGreaterThan(2);
      for (const tick of ticks) expect(paperTexts).toContain(String(tick));
    }
    const config = doseChartConfig(data, ink, null, words, true);
    expect(valueEnds(printed)).toEqual({
      low: config.options!.scales!["y"]!.min,
      high: config.options!.scales!["y"]!.max,
    });
  });

  it("name each line where it ends and the target on its line", () => {
    expect(endLabels(printed).map(({ text }) => text)).toEqual(["one more jar", "95 % band", "mean, A"]);
    for (const text of ["one more jar", "95 % band", "mean, A", "turbidity at most 80 NTU", "not tested"])
      expect(paperTexts).toContain(text);
    const lines = doseChartConfig(data, ink, null, words, true).options!.plugins!.annotation!
      .annotations as Record<string, { label?: { content?: string } }>;
    expect(lines["limit"]!.label!.content).toBe("turbidity at most 80 NTU");
  });

  it("name everything in the language spoken when they are drawn", () => {
    speak("german", german);
    const paper = doseDrawing(printed, words.number);
    expect(endLabels(printed).map(({ text }) => text)).toEqual(["neuer Becher", "95-%-Band", "Mittel, A"]);
    for (const text of ["neuer Becher", "95-%-Band", "Mittel, A", "nicht geprüft"])
      expect(paper.body.html).toContain(`>${text}</text>`);
    expect(paper.label).toBe("Turbidity über der Dosis. 5 kg/t.");
    expect(chartLegend(printed)).toMatch(/^Nummern: Becher; gepunktet: .* nicht eingehalten\.$/);
    expect(svgFile(paper, "x", "Studie Y.")).toContain("Quelle: Studie Y.");
  });

  it("shade what was not tested", () => {
    expect(untested(printed)).toEqual([
      { low: 0, high: 2 },
      { low: 8, high: 8.8 },
    ]);
    expect(untested({ ...printed, tested: null })).toEqual([]);
  });
});

describe("the name of the value axis", () => {
  it("is whole where it fits, else the unit alone", () => {
    const width = (text: string) => text.length * 6;
    expect(valueTitle(data, 88, false, width)).toBe("Turbidity, NTU");
    expect(valueTitle(data, 87, false, width)).toBe("NTU");
    expect(valueTitle(data, 123, true, width)).toBe("NTU");
    expect(valueTitle(data, 124, true, width)).toBe("Turbidity, NTU");
  });
});

describe("ticks", () => {
  it("step by 1, 2 or 5 and keep to their count", () => {
    expect(roundTicks(0, 8.8, false)).toEqual([0, 2, 4, 6, 8]);
    expect(roundTicks(0, 8.8, false, 3)).toEqual([0, 5]);
    expect(roundTicks(30, 1200, true)).toEqual([50, 100, 200, 500, 1000]);
    expect(roundTicks(30, 1200, true, 3)).toEqual([100, 1000]);
  });
});

describe("labels at line ends", () => {
  it("are moved apart in order and stay within the frame", () => {
    expect(spread([50, 50, 51], 10, 0, 100)).toEqual([50, 60, 70]);
    expect(spread([99, 98], 10, 0, 100)).toEqual([100, 90]);
  });
});

describe("the read-out", () => {
  it("lies between the curve's points and ends with the doses tested", () => {
    expect(valueAtDose(data.curve, 5.5)!.mean).toBeCloseTo(44, 9);
    expect(valueAtDose(data.curve, 1.9)).toBeNull();
    expect(valueAtDose(data.curve, 8.1)).toBeNull();
  });
});

describe("a target that is moved", () => {
  it("goes in round steps and stays on the axis", () => {
    expect(targetStep(0, 25, false, 18)).toBe(0.5);
    expect(movedTarget(18.37, 0, { low: 0, high: 25, log: false })).toBe(18.5);
    expect(movedTarget(18.5, -10, { low: 0, high: 25, log: false })).toBe(13.5);
    expect(movedTarget(24.9, 10, { low: 0, high: 25, log: false })).toBe(25);
    expect(movedTarget(80, 1, { low: 20, high: 1500, log: true })).toBe(80.5);
  });
});

describe("a saved chart", () => {
  const file = svgFile(
    doseDrawing(printed, words.number),
    "Turbidity <b>",
    "study S; series 1; history entry 4.",
  );
  it("stands alone, with its title, its description and its source", () => {
    expect(file).toMatch(/^<\?xml/);
    expect(file).toContain('xmlns="http://www.w3.org/2000/svg"');
    expect(file).toContain('<title id="title">Turbidity &lt;b&gt;</title>');
    expect(file).toMatch(/<desc id="desc">Turbidity against dose\. 5 kg\/t\. Source: study S/);
    expect(file).not.toMatch(/href|<script|<style|class=|url\(/);
    expect(file).toMatch(/font-size="9">study S; series 1; history entry 4\.<\/text>/);
  });
});
