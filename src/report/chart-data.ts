import { type ResponseWorking } from "../curve/analyse-types.ts";
import { type ResponseName, responseSpecs, responseWords, unitOf } from "../responses/registry.ts";
import { offScale, onScale } from "../curve/problem.ts";
import { type ChoiceChain } from "../study/derive/choice.ts";
import type { RunChain } from "../study/derive/plant-runs.ts";
import type { SeriesChain } from "../study/derive/jars.ts";
import { drawnCurve } from "./curve-points.ts";
import { doseEnd } from "./dose-axes.ts";
import type { PrintedChart } from "./dose-chart.ts";
import { chartWords } from "../words/charts.ts";

/** What the doses of a chart are marked with. */
export interface ChartMarks {
  /** dose of the decision in force, kg/t */
  approved: number | null;
  present: number | null;
}

/** What a plant run read of a response, where it did. */
const plantReading: Partial<Record<ResponseName, (run: RunChain["run"]) => number | null>> = {
  turbidity_ntu: (run) => run.filtrateTurbidityNtu,
  filtrate_tss_mg_per_l: (run) => run.filtrateTssMgPerL,
  cake_ts_pct: (run) => run.cakePct,
};

function plantPoints(
  runs: RunChain[],
  response: ResponseName,
  productId: string | undefined,
): PrintedChart["plant"] {
  return runs.flatMap(({ run, polymers }) => {
    const dose = polymers.find(({ benchProduct }) => benchProduct.id === productId)?.dose.value ?? null;
    const value = plantReading[response]?.(run) ?? null;
    return dose === null || value === null || run.leftOut ? [] : [{ dose, value, label: run.label }];
  });
}

const productOf = (chain: SeriesChain, letter: "a" | "b") =>
  (letter === "a" ? chain.stockA : chain.stockB)?.product.id;

/** Whether any plant run stands on a bench curve of a series. */
export function runsOnCurves(chain: SeriesChain, letter: "a" | "b", runs: RunChain[]): boolean {
  const productId = productOf(chain, letter);
  return responseSpecs.some(
    ({ name }) =>
      plantPoints(runs, name, productId).length > 0 &&
      chain.jars.some(({ responses }) => (responses[name] ?? []).length > 0),
  );
}

/** One printed chart for each response that was read, in the same data the screens draw: doses in kg/t active. */
export function printedCharts(
  chain: SeriesChain,
  workings: ResponseWorking[],
  choice: ChoiceChain | null,
  letter: "a" | "b",
  marks: ChartMarks,
  runs: RunChain[],
  number: (value: number) => string,
): PrintedChart[] {
  const all = responseSpecs.flatMap((spec) => {
    const points = chain.jars.flatMap((jar): PrintedChart["points"] => {
      const dose = (letter === "a" ? jar.doseA : jar.doseB).value;
      const readings = jar.responses[spec.name] ?? [];
      if (dose === null || readings.length === 0) return [];
      const mean = readings.reduce((sum, { value }) => sum + onScale(value, spec.scale), 0) / readings.length;
      return [
        {
          dose,
          value: offScale(mean, spec.scale),
          label: jar.jar.label,
          leftOut: jar.jar.leftOut !== null,
          censored: readings.find(({ censored }) => censored !== null)?.censored ?? null,
        },
      ];
    });
    return points.length > 0 ? [{ spec, points }] : [];
  });
  const doses = all.flatMap(({ points }) => points.map(({ dose }) => dose));
  const productId = productOf(chain, letter);
  const plant = new Map(all.map(({ spec }) => [spec.name, plantPoints(runs, spec.name, productId)]));
  const runDoses = [...plant.values()].flat().map(({ dose }) => dose);
  const doseHigh = doseEnd([...doses, ...runDoses, marks.approved ?? 0, marks.present ?? 0]);
  return all.map(({ spec, points }) => {
    const working = workings.find(({ analysis }) => analysis.name === spec.name) ?? null;
    const verdict = working?.analysis.verdict;
    const words = responseWords[spec.name]!;
    const unit = unitOf(spec.name, chain.series);
    const bar = choice?.bars.find(({ limit }) => limit.response === spec.name);
    return {
      title: words.label,
      sentence: verdict?.sentence ?? chartWords.notFitted,
      doseLabel: chartWords.doseOnPaper(letter === "a" ? "A" : "B"),
      valueLabel: `${words.label}, ${unit}`,
      logValue: spec.scale === "log",
      polymer: letter,
      doseLow: 0,
      doseHigh,
      points,
      plant: plant.get(spec.name)!,
      ...(working ? drawnCurve(working) : { tested: null, curve: [], prediction: [], beyond: [] }),
      preview: [],
      limit: bar ? { value: bar.limit.value, side: bar.limit.side, label: bar.limit.words } : null,
      interval:
        verdict &&
        verdict.kind !== "none" &&
        typeof verdict.low === "number" &&
        typeof verdict.high === "number"
          ? { low: verdict.low, high: verdict.high }
          : null,
      marks: [
        ...(marks.approved === null
          ? []
          : [{ dose: marks.approved, label: chartWords.approved(number(marks.approved)), strong: true }]),
        ...(marks.present === null
          ? []
          : [{ dose: marks.present, label: chartWords.plantToday(number(marks.present)), strong: false }]),
      ],
    };
  });
}
