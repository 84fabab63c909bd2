import { afterEach, describe, expect, it } from "vitest";
import { costPlot } from "../../../src/report/cost-plot.ts";
import { drainagePlot } from "../../../src/report/drainage-plot.ts";
import { filtrationPlot, type FiltrationTest } from "../../../src/report/filtration-plot.ts";
import { plotDrawing, plotPicture, type Plot } from "../../../src/report/plot.ts";
import { pumpPlot } from "../../../src/report/pump-plot.ts";
import { residualPlot } from "../../../src/report/residual-plot.ts";
import { pumpChain } from "../../../src/study/derive/plant-pump.ts";
import { writeSignificant } from "../../../src/units/digits.ts";
import { german } from "../../../src/words/german/all.ts";
import { speak } from "../../../src/words/language.ts";
import { demo } from "./studies.ts";

afterEach(() => speak("english", null));

const number = (value: number, digits = 4) => writeSignificant(value, ".", digits);
const textsIn = (html: string) => [...html.matchAll(/<text[^>]*>([^<]*)<\/text>/g)].map(([, text]) => text!);
const texts = (plot: Plot, write = number) => textsIn(plotDrawing(plot, write).body.html);
const plain: Plot = {
  title: "Plain",
  sentence: "Two points.",
  x: { title: "time, s", low: 0, high: 63 },
  y: { title: "drained, mL", low: 0, high: 260 },
  points: [
    { x: 60, y: 250, look: "point", name: "", says: "last" },
    { x: 5, y: 60, look: "point", name: "", says: "first" },
  ],
};

describe("a plot", () => {
  it("has round ticks, its quantities with their units, and reads out from left to right", () => {
    const { shapes, readings, place } = plotPicture(plain, { width: 300, height: 190 }, number);
    const ticks = shapes.flatMap((shape) =>
      shape.kind === "text" && shape.look === "tick" ? [shape.text] : [],
    );
    expect(ticks).toEqual(["0", "20", "40", "60", "0", "100", "200"]);
    expect(readings.map(({ says }) => says)).toEqual(["first", "last"]);
    for (const { x, y } of readings) {
      expect(x).toBeGreaterThan(place.left);
      expect(x).toBeLessThan(place.right);
      expect(y).toBeGreaterThan(place.top);
      expect(y).toBeLessThan(place.bottom);
    }
    expect(texts(plain)).toEqual(expect.arrayContaining(["time, s", "drained, mL"]));
  });

  it("writes its numbers as it is told, on every axis", () => {
    const half = { ...plain, y: { title: "t/V, s/mL", low: 0, high: 1.6 }, points: [] };
    const comma = texts(half, (value) => writeSignificant(value, ",", 4));
    expect(comma).toContain("0,5");
    expect(comma.filter((text) => /\d\.\d/.test(text))).toEqual([]);
  });

  it("names what has a name where it ends, apart from one another, within the drawing", () => {
    const line = (name: string, y: number) => ({
      look: "line" as const,
      name,
      points: [
        { x: 0, y: 0 },
        { x: 60, y },
      ],
    });
    const crowded = { ...plain, lines: [line("mean", 200), line("median", 201), line("95 % band", 202)] };
    for (const width of [660, 220]) {
      const { shapes } = plotPicture(crowded, { width, height: 190 }, number);
      const names = shapes.flatMap((shape) =>
        shape.kind === "text" && shape.look === "name" ? [shape] : [],
      );
      expect(names.map(({ text }) => text).sort()).toEqual(["95 % band", "mean", "median"]);
      const heights = names.map(({ y }) => y).sort((a, b) => a - b);
      expect(heights[1]! - heights[0]!).toBeGreaterThan(11);
      expect(heights[2]! - heights[1]!).toBeGreaterThan(11);
      for (const { x, text, anchor } of names) {
        const [from, to] = anchor === "end" ? [x - text.length * 6, x] : [x, x + text.length * 6];
        expect(from).toBeGreaterThan(0);
        expect(to).toBeLessThanOrEqual(width);
      }
    }
  });

  it("names uprights apart, each on a side where no other goes through its name", () => {
    const plot = {
      ...plain,
      points: [],
      uprights: [
        { x: 36, name: "approved 36" },
        { x: 44, name: "plant today 44", look: "today" as const },
      ],
    };
    const { shapes } = plotPicture(plot, { width: 536, height: 190 }, number);
    const names = shapes.flatMap((shape) => (shape.kind === "text" && shape.look === "name" ? [shape] : []));
    expect(names.map(({ text, anchor }) => [text, anchor])).toEqual([
      ["approved 36", "end"],
      ["plant today 44", "start"],
    ]);
    expect(names[1]!.y - names[0]!.y).toBeGreaterThan(11);
  });

  it("takes a hostile name as text", () => {
    const html = plotDrawing({ ...plain, title: "<script>", x: { ...plain.x, title: `"><script>` } }, number)
      .body.html;
    expect(html).not.toContain("<script>");
    expect(html).toContain("&lt;script&gt;");
  });
});

describe("what each plot shows", () => {
  it("drainage: every volume at its time, in order, from an axis that begins at nothing", () => {
    const points = [
      { atS: 60, ml: 249 },
      { atS: 5, ml: 62 },
    ];
    const plot = drainagePlot([{ jar: "4", points }], number);
    expect(plot.points!.map(({ x, y }) => [x, y])).toEqual([
      [5, 62],
      [60, 249],
    ]);
    expect([plot.x.low, plot.y.low]).toEqual([0, 0]);
    expect(plot.sentence).toBe("Drained from jar 4: 62 mL at 5 s to 249 mL at 60 s");
    expect(texts(plot)).toEqual(expect.arrayContaining(["62", "249", "time, s", "drained, mL"]));
  });

  it("filtration: t/V of every pair, the straight part filled and its line drawn over nothing else", () => {
    // t/V = 0.02 V + 0.2 from the second pair on: 0.02 s/mL per mL is 2e10 s/m6
    const volumes = [10, 20, 40, 60, 80];
    const test: FiltrationTest = {
      kind: "srf",
      points: volumes.map((volumeMl) => ({
        volumeMl,
        seconds: volumeMl === 10 ? 9 : volumeMl * (0.02 * volumeMl + 0.2),
      })),
      firstUsed: 2,
      lastUsed: 5,
      diameterMm: 70,
      pressureKPa: 50,
      temperatureC: 20,
      cakeKgPerM3: 25,
    };
    const plot = filtrationPlot("1", test, {
      entry: number,
      plain: number,
      fixed: (value, decimals) => value.toFixed(decimals),
    });
    expect(plot.points!.map(({ look }) => look)).toEqual(["spare", "point", "point", "point", "point"]);
    const [from, to] = plot.lines![0]!.points;
    expect(from!.x).toBe(20);
    expect(from!.y).toBeCloseTo(0.6, 9);
    expect(to!.x).toBe(80);
    expect(to!.y).toBeCloseTo(1.8, 9);
    expect(texts(plot)).toEqual(expect.arrayContaining(["t/V, s/mL", "filtrate V, mL", "straight part"]));
  });

  it("a pump's line: its draw-downs, the band of one more, and what was not tested", () => {
    const pump = Object.keys(demo.pump)[0]!;
    const chain = pumpChain(demo, pump);
    const plot = pumpPlot(chain, number)!;
    expect(plot.points).toHaveLength(chain.flows.length);
    expect(plot.tested).toEqual({ low: 20, high: 100 });
    expect(plot.x).toMatchObject({ title: "setting, %", low: 0, high: 100 });
    expect(plot.bands![0]!.points.every(({ low, high }) => high > low)).toBe(true);
    expect(texts(plot)).toEqual(
      expect.arrayContaining(["flow, mL/min", "pump line", "95 % band", "not tested", "20", "100"]),
    );
    expect(plot.points!.at(-1)!.says).toMatch(/^setting 100 %: 8\d(\.\d+)? mL\/min$/);
  });

  it("residuals: counts those beyond two deviations and names them", () => {
    const plot = residualPlot(
      "Residuals",
      "dose A, lb/short ton active",
      [
        { jar: "3", at: 4, deviations: 0.4 },
        { jar: "7", at: 8, deviations: -2.3 },
      ],
      number,
    );
    expect(plot.sentence).toBe("In standard deviations: 1 of 2 jars beyond 2.");
    expect(texts(plot)).toEqual(
      expect.arrayContaining(["jar 7", "+2 sd", "-2 sd", "dose A, lb/short ton active"]),
    );
    expect(texts(plot)).not.toContain("jar 3");
  });

  it("cost: the parts stand upon one another and end at the total; what has no price is left out", () => {
    const words = {
      doseAxis: "dose A, kg/t active",
      currency: "EUR",
      number,
      dose: (dose: number) => `${dose} kg/t`,
      money: (value: number | null) => `${value} EUR`,
    };
    const sample = (dose: number) => ({
      dose,
      polymer: dose * 10,
      disposal: 400 - dose * 20,
      returnLoad: null,
      total: 400 - dose * 10,
    });
    const plot = costPlot([sample(2), sample(4)], 3, words);
    expect(plot.bands!.map(({ name }) => name)).toEqual(["disposal", "polymer"]);
    expect(plot.bands!.map(({ points }) => points[0])).toEqual([
      { x: 2, low: 0, high: 360 },
      { x: 2, low: 360, high: 380 },
    ]);
    expect(plot.sentence).toContain("least near 4 kg/t at 360 EUR");
    expect(plot.readings![0]!.says).toBe("2 kg/t: 380 EUR (disposal 360, polymer 20)");
    expect(texts(plot)).toEqual(
      expect.arrayContaining(["cost, EUR/t dry solids", "total", "3 kg/t", "dose A, kg/t active"]),
    );
  });

  it("speaks German where the program does", () => {
    speak("german", german);
    const points = [
      { atS: 5, ml: 62.5 },
      { atS: 60, ml: 249 },
    ];
    const plot = drainagePlot([{ jar: "4", points }], (value) => writeSignificant(value, ",", 4));
    expect(textsIn(plotDrawing(plot, (value) => writeSignificant(value, ",", 4)).body.html)).toEqual(
      expect.arrayContaining(["Zeit, s", "abgelaufen, mL", "62,5"]),
    );
  });
});
