import { afterEach, describe, expect, test } from "vitest";
import { costAt } from "../../../src/choice/cost.ts";
import { responseCurve } from "../../../src/curve/bands.ts";
import { tQuantile } from "../../../src/curve/distributions.ts";
import { fitModel } from "../../../src/curve/fit.ts";
import { linear } from "../../../src/curve/models/linear.ts";
import { surfaceBounds, surfaceMean } from "../../../src/curve/surface-bands.ts";
import { fitSeries } from "../../../src/report/series-fits.ts";
import { unitOf } from "../../../src/responses/registry.ts";
import { choiceChain, targetsOf } from "../../../src/study/derive/choice.ts";
import type { Made, MadeInput } from "../../../src/study/derive/figure.ts";
import { seriesChain } from "../../../src/study/derive/jars.ts";
import {
  doseErrorMade,
  lifeMade,
  planSyringesMade,
  recipeMade,
} from "../../../src/study/derive/made-bench.ts";
import {
  fittedMade,
  moverMade,
  nextMade,
  outlierMade,
  residualMade,
  robustMade,
} from "../../../src/study/derive/made-fit.ts";
import {
  againstMade,
  captureMade,
  edgeMade,
  limitMade,
  missMade,
  windowMade,
} from "../../../src/study/derive/made-limits.ts";
import {
  aiccMade,
  bestDoseMade,
  lackOfFitMade,
  modelDosesMade,
  rankedFits,
} from "../../../src/study/derive/made-models.ts";
import { cheapestPairMade, fittedAtPairMade, pairCostMade } from "../../../src/study/derive/made-pair.ts";
import { disposalMade, driftMade, presentMade } from "../../../src/study/derive/made-plant.ts";
import { pairChain } from "../../../src/study/derive/pair-choice.ts";
import { doseWords } from "../../../src/units/dose-words.ts";
import { german } from "../../../src/words/german/all.ts";
import { speak } from "../../../src/words/language.ts";
import { madeFitWords } from "../../../src/words/made-fit.ts";
import { demoState } from "./state.ts";

const demo = demoState("2026-03-01T12:00:00.000Z");
const numbers = { number: String, doses: { ...doseWords(".", "metric"), number: String } };
const chain = seriesChain(demo, "series-1");
const fits = fitSeries(demo, "series-1");
const choice = choiceChain(demo, chain, fits.workings, String)!;
const working = (name: string) => fits.workings.find(({ analysis }) => analysis.name === name)!;
const turbidity = working("turbidity_ntu");
const pairSeries = seriesChain(demo, "series-2");
const pairFits = fitSeries(demo, "series-2");
const pair = pairChain(demo, pairSeries, pairFits.workings, String)!;
const at = { a: 6.5, b: 3.2 };

const valueOf = (inputs: MadeInput[], name: string) => inputs.find((input) => input.name === name)?.value;
const numberOf = (made: Made, name: string) => valueOf(made.inputs, name) as number;

afterEach(() => speak("english", null));

describe("a fitted value", () => {
  test("of a straight line has the bounds of the closed formula", () => {
    // Source: standard statistics; ± t s sqrt(1/n + (x - mean)^2 / Sxx), worked out here apart from the code.
    const x = [1, 2, 3, 4, 5, 6];
    const y = [2.1, 3.9, 6.2, 7.8, 10.1, 11.9];
    const fit = fitModel(
      linear,
      x.map((dose, i) => ({ x: dose, y: y[i]!, row: i + 1 })),
      { scale: "linear" },
    );
    const mean = (values: number[]) => values.reduce((sum, value) => sum + value, 0) / values.length;
    const [mx, my] = [mean(x), mean(y)];
    const sxx = x.reduce((sum, value) => sum + (value - mx) ** 2, 0);
    const slope = x.reduce((sum, value, i) => sum + (value - mx) * (y[i]! - my), 0) / sxx;
    const fitted = (dose: number) => my + slope * (dose - mx);
    const rss = x.reduce((sum, dose, i) => sum + (y[i]! - fitted(dose)) ** 2, 0);
    const error = Math.sqrt(rss / 4) * Math.sqrt(1 / 6 + (4.4 - mx) ** 2 / sxx);
    const made = fittedMade(fit, 4.4, "mL");
    // t at 95 % one-sided and 4 degrees of freedom is 2.1318 in any table
    expect(numberOf(made, madeFitWords.inputs.t)).toBeCloseTo(2.1318, 4);
    expect(numberOf(made, madeFitWords.inputs.error)).toBeCloseTo(error, 10);
    expect(numberOf(made, madeFitWords.inputs.low)).toBeCloseTo(fitted(4.4) - 2.1318468 * error, 6);
    expect(numberOf(made, madeFitWords.inputs.high)).toBeCloseTo(fitted(4.4) + 2.1318468 * error, 6);
  });

  test("comes out again from the inputs that are told, for each response of the demo", () => {
    expect(fits.workings.length).toBeGreaterThan(3);
    for (const { fit, analysis } of fits.workings) {
      const unit = unitOf(analysis.name, chain.series);
      const made = fittedMade(fit!, 5.2, unit);
      const names: Record<string, string> = madeFitWords.parameters;
      const parameters = fit!.model.parameterNames.map((name) => numberOf(made, names[name] ?? name));
      const value = fit!.model.value(numberOf(made, madeFitWords.inputs.dose), parameters);
      const log = analysis.scale === "log";
      const error = numberOf(made, log ? madeFitWords.inputs.errorOfLog : madeFitWords.inputs.error);
      const back = (v: number) => (log ? Math.exp(v) : v);
      const curve = responseCurve(fit!, analysis.name);
      expect(back(value)).toBeCloseTo(curve.mean(5.2), 8);
      const t = numberOf(made, madeFitWords.inputs.t);
      expect(back(value - t * error)).toBeCloseTo(curve.low95(5.2), 8);
      expect(numberOf(made, madeFitWords.inputs.low)).toBeCloseTo(curve.low95(5.2), 8);
      expect(numberOf(made, madeFitWords.inputs.high)).toBeCloseTo(curve.high95(5.2), 8);
      expect(made.inputs.find(({ name }) => name === madeFitWords.inputs.high)?.unit).toBe(unit);
    }
  });

  test("of a surface comes out again from its coded doses and coefficients", () => {
    const { surface, response } = pair.surfaces[0]!;
    const made = fittedAtPairMade(surface, at, "NTU");
    const [u, v] = [numberOf(made, madeFitWords.inputs.codedA), numberOf(made, madeFitWords.inputs.codedB)];
    const [b0, b1, b2, b11, b22, b12] = ["b0", "b1", "b2", "b11", "b22", "b12"].map((name) =>
      numberOf(made, name),
    ) as [number, number, number, number, number, number];
    const log = surface.scale === "log";
    const value = b0 + b1 * u + b2 * v + b11 * u * u + b22 * v * v + b12 * u * v;
    expect(response).toBe("turbidity_ntu");
    expect(log ? Math.exp(value) : value).toBeCloseTo(surfaceMean(surface, at.a, at.b), 8);
    expect(numberOf(made, madeFitWords.inputs.high)).toBeCloseTo(surfaceBounds(surface, at.a, at.b).high, 8);
  });
});

describe("the table of models", () => {
  test("gives each AICc again from its jars, its K and its sum of squares", () => {
    const ranked = rankedFits(turbidity.analysis.fits).filter(({ aicc }) => aicc !== null);
    const { inputs } = aiccMade(turbidity.analysis.fits, numbers);
    expect(inputs).toHaveLength(ranked.length);
    for (const [i, { value }] of inputs.entries()) {
      const [n, k, rss] = String(value)
        .match(/[\d.e-]+/g)!
        .map(Number) as [number, number, number];
      expect(n * Math.log(rss / n) + 2 * k + (2 * k * (k + 1)) / (n - k - 1)).toBeCloseTo(
        ranked[i]!.aicc!,
        8,
      );
    }
  });

  test("gives each F of the lack of fit again from the repeats", () => {
    const made = lackOfFitMade(turbidity, numbers);
    const repeats = numberOf(made, madeFitWords.inputs.pureError);
    const lines = made.inputs.slice(2);
    expect(lines.length).toBeGreaterThan(4);
    for (const { value } of lines) {
      const [rss, f, df1, df2] = String(value)
        .match(/[\d.e-]+/g)!
        .map(Number) as [number, number, number, number];
      expect(df2).toBe(numberOf(made, madeFitWords.inputs.pureErrorFreedom));
      expect((rss - repeats) / df1 / (repeats / df2)).toBeCloseTo(f, 6);
    }
  });

  test("names the best dose of each model in kg/t, and the range over those that tie", () => {
    const doses = modelDosesMade(turbidity.analysis.fits).inputs;
    expect(doses.every(({ unit, value }) => unit === "kg/t" && typeof value === "number")).toBe(true);
    const best = bestDoseMade(turbidity, numbers);
    const { verdict } = turbidity.analysis;
    expect(numberOf(best, madeFitWords.inputs.best)).toBeCloseTo(verdict.dose as number, 10);
    expect(valueOf(best.inputs, madeFitWords.inputs.range)).toBe(
      madeFitWords.span(String(verdict.low), String(verdict.high)),
    );
  });
});

test("residuals' scatter comes out again from the sum of squares", () => {
  const made = residualMade(turbidity.fit!);
  const n = numberOf(made, madeFitWords.inputs.jars);
  const p = numberOf(made, madeFitWords.inputs.coefficients);
  const rss = numberOf(made, madeFitWords.inputs.rss);
  expect(Math.sqrt(rss / (n - p))).toBeCloseTo(numberOf(made, madeFitWords.inputs.scatterOfLog), 10);
});

test("a limit tells its bound at the dose looked at, and the doses that hold it", () => {
  const [bar] = choice.bars;
  const made = limitMade(choice, bar!, { doseKgPerT: 5.2, unit: "NTU", miss: 0.03 }, numbers);
  const curve = choice.curves.find(({ response }) => response === bar!.limit.response)!;
  expect(made.inputs[0]).toMatchObject({ value: 80, unit: "NTU" });
  expect(numberOf(made, "one-sided 95 % bound there")).toBeCloseTo(curve.high95(5.2), 10);
  expect(numberOf(made, "missed with a chance of")).toBeCloseTo(3, 10);
  const [span] = bar!.bound;
  // at the ends of the solid bar the bound is the limit itself
  expect(curve.high95(span!.low)).toBeCloseTo(80, 6);
  expect(valueOf(made.inputs, "held with confidence")).toBe(`${span!.low} to ${span!.high}`);
  expect(windowMade(choice, numbers).inputs).toHaveLength(choice.bars.length + 2);
});

test("the volume of a syringe comes out again from what a plan is told", () => {
  const made = planSyringesMade(
    {
      ...{ design: "geometric", low: 1, high: 10, steps: 6, replicates: 2, seed: 1 },
      ...{ sampleVolumeMl: 500, densityKgPerL: 1.003, totalSolidsPct: 2.5, solutionActivePct: 0.2 },
    },
    "A",
  );
  const [volume, density, solids, strength, own] = made.inputs.map(
    ({ value }) => value as number,
  ) as number[];
  // the worked dose of the methods: 25.00 mL of 0.2 % on 500 mL at 2.5 % gives 3.988 kg/t
  const syringe = (3.98804 * volume! * density! * solids!) / (1000 * own! * strength!);
  expect(syringe).toBeCloseTo(25, 3);
});

test("the cost at a pair comes out again from its inputs", () => {
  const made = pairCostMade(pairSeries, pair, at, targetsOf(demo, "series-2"), "EUR");
  const [a, b, priceA, activeA, priceB, activeB, cake, capture, disposal] = made.inputs.map(
    ({ value }) => value as number,
  ) as number[];
  expect(
    (a! * priceA!) / (activeA! / 100) + (b! * priceB!) / (activeB! / 100) + (capture! / cake!) * disposal!,
  ).toBeCloseTo(pair.costAt(at).total!, 8);
});

test("every way says formula, inputs and source in either language, and no number is lost between them", () => {
  const fit = turbidity.fit!;
  const all = (): Made[] => [
    fittedMade(fit, 5.2, "NTU"),
    residualMade(fit),
    outlierMade(fit, { t: 4, cut: 3.5 }),
    moverMade(fit, 0.1),
    robustMade(fit, { dose: 5, jars: "4" }),
    nextMade(fit, { doses: [3, 7], shrinkPct: 20 }, numbers),
    aiccMade(turbidity.analysis.fits, numbers),
    lackOfFitMade(turbidity, numbers),
    modelDosesMade(turbidity.analysis.fits),
    bestDoseMade(turbidity, numbers),
    bestDoseMade(working("cake_ts_pct"), numbers),
    bestDoseMade(working("drained_ml"), numbers),
    bestDoseMade(pairFits.workings[0]!, numbers),
    limitMade(choice, choice.bars[0]!, { doseKgPerT: 5.2, unit: "NTU", miss: null }, numbers),
    windowMade(choice, numbers),
    edgeMade(choice, numbers),
    missMade({ sharedRelative: 0.01, driftPct: 6, draws: 1000, seed: 1, limits: ["x"] }),
    againstMade({
      ...{ todayKgPerT: 6.4, costToday: costAt(6.4, choice.cost).total, currency: "EUR" },
      ...{ tonnesPerYear: 800, draws: 1000, seed: 1 },
    }),
    captureMade(choice, 5.2, 2.38),
    fittedAtPairMade(pair.surfaces[0]!.surface, at, "NTU"),
    pairCostMade(pairSeries, pair, at, targetsOf(demo, "series-2"), "EUR"),
    cheapestPairMade(pair, at, "EUR", numbers),
    recipeMade(chain.stockA!),
    lifeMade(chain.stockA!, "08:00"),
    doseErrorMade(chain),
    driftMade(5.2, 2.48),
    disposalMade({
      ...{ wetCakeKgPerH: 2000, hoursPerDay: 8, daysPerYear: 250 },
      ...{ pricePerWetT: 90, currency: "EUR" },
    }),
    presentMade(
      {
        ...{ feedM3PerH: 16, totalSolidsPct: 2.5, densityKgPerL: 1.003, flowMlPerMin: 77 },
        ...{ flowDensityKgPerL: 1.03, activePct: 42 },
      },
      92,
      "%",
    ),
  ];
  const english = all();
  for (const made of english) {
    expect(made.formula.length).toBeGreaterThan(10);
    expect(made.source.length).toBeGreaterThan(5);
    expect(made.inputs.length).toBeGreaterThan(0);
    expect(made.source).not.toMatch(/trade formulas/);
  }
  speak("german", german);
  const other = all();
  expect(other.flatMap(({ formula }, i) => (formula === english[i]!.formula ? [formula] : []))).toEqual([]);
  expect(other.flatMap(({ source }, i) => (source === english[i]!.source ? [source] : []))).toEqual([]);
  const known = (made: Made[]) =>
    made.flatMap(({ inputs }) =>
      inputs.map(({ value }) => value).filter((value) => typeof value === "number"),
    );
  expect(known(other)).toEqual(known(english));
  expect(tQuantile(0.95, 4)).toBeCloseTo(2.1318468, 6);
});
