import type { ResponseWorking } from "../../../src/curve/analyse-types.ts";
import { type ResponseName, responseSpecs, responseWords, unitOf } from "../../../src/responses/registry.ts";
import { meanAt, meanBand, predictionBand } from "../../../src/curve/bands.ts";
import { previewPolynomial } from "../../../src/curve/preview.ts";
import { offScale, onScale } from "../../../src/curve/problem.ts";
import type { Scale } from "../../../src/curve/types.ts";
import type { SeriesChain } from "../../../src/study/derive/jars.ts";
import type { ChartPoint, DoseChartData, DoseMark } from "../../charts/dose-chart-data.ts";
import type { FrameTable } from "../../charts/ChartFrame.vue";
import type { useChain } from "../../stores/chain.ts";
import type { useFormat } from "../../stores/format.ts";

export interface ChartEntry {
  response: ResponseName;
  title: string;
  sentence: string;
  data: DoseChartData;
  table: FrameTable;
}

const curveSteps = 120;

type Chain = ReturnType<typeof useChain>;
type Format = ReturnType<typeof useFormat>;

function pointsOf(
  series: SeriesChain,
  response: ResponseName,
  scale: Scale,
  letter: "a" | "b",
  format: Format,
): ChartPoint[] {
  return series.jars.flatMap((jar): ChartPoint[] => {
    const dose = letter === "a" ? jar.doseA.value : jar.doseB.value;
    const readings = jar.responses[response];
    if (dose === null || !readings || readings.length === 0) return [];
    const mean = readings.reduce((sum, { value }) => sum + onScale(value, scale), 0) / readings.length;
    const bound = readings.find(({ censored }) => censored !== null);
    return [
      {
        dose: format.toShown(dose, "doseKgPerT"),
        value: offScale(mean, scale),
        label: jar.jar.label,
        leftOut: jar.jar.leftOut !== null,
        censored: bound?.censored ?? null,
      },
    ];
  });
}

function curveOf(working: ResponseWorking, format: Format): DoseChartData["curve"] {
  const { fit } = working;
  if (!fit || fit.report.status !== "converged") return [];
  const { low, high } = fit.problem.range;
  const from = fit.model.definedAtZero ? low : Math.max(low, high / 1000);
  return Array.from({ length: curveSteps + 1 }, (_, i) => {
    const dose = from + ((high - from) * i) / curveSteps;
    const band = meanBand(fit, dose);
    return {
      dose: format.toShown(dose, "doseKgPerT"),
      mean: meanAt(fit, dose),
      low: band.low,
      high: band.high,
    };
  }).filter((at) => [at.mean, at.low, at.high].every(Number.isFinite));
}

/** Where one more jar would fall, 95 %. */
function predictionOf(working: ResponseWorking, format: Format): DoseChartData["prediction"] {
  const { fit } = working;
  if (!fit || fit.report.status !== "converged") return [];
  const { low, high } = fit.problem.range;
  const from = fit.model.definedAtZero ? low : Math.max(low, high / 1000);
  return Array.from({ length: 61 }, (_, i) => {
    const dose = from + ((high - from) * i) / 60;
    return { dose: format.toShown(dose, "doseKgPerT"), ...predictionBand(fit, dose) };
  }).filter((at) => Number.isFinite(at.low) && Number.isFinite(at.high));
}

function previewOf(
  points: ChartPoint[],
  scale: Scale,
  tested: { low: number; high: number },
): DoseChartData["preview"] {
  const used = points.filter(
    (point) => !point.leftOut && !point.censored && (scale === "linear" || point.value > 0),
  );
  const distinct = new Set(used.map((point) => point.dose)).size;
  const order = distinct >= 6 ? 3 : distinct >= 4 ? 2 : 1;
  const preview = previewPolynomial(
    used.map((point) => ({ x: point.dose, y: onScale(point.value, scale) })),
    order,
  );
  if (!preview) return [];
  return Array.from({ length: 61 }, (_, i) => {
    const dose = tested.low + ((tested.high - tested.low) * i) / 60;
    return { dose, mean: offScale(preview.at(dose), scale) };
  });
}

/** One chart for each response that was read, all on one dose axis, in the study's display units. */
export function chartsOf(
  chain: Chain,
  format: Format,
  options: { small: boolean; marks?: DoseMark[] },
): ChartEntry[] {
  const { series } = chain;
  if (!series) return [];
  const letter = chain.analysis?.axis === "b" ? "b" : "a";
  const all = responseSpecs.flatMap((spec) => {
    const points = pointsOf(series, spec.name, spec.scale, letter, format);
    return points.length >= 1 ? [{ spec, points }] : [];
  });
  const doses = all.flatMap(({ points }) => points.map((point) => point.dose));
  if (doses.length === 0) return [];
  const top = Math.max(...doses);
  const doseRange = { low: 0, high: top > 0 ? top * 1.06 : 1 };
  return all.map(({ spec, points }) => {
    const words = responseWords[spec.name]!;
    const working = chain.workings.find(({ analysis }) => analysis.name === spec.name);
    const verdict = working?.analysis.verdict;
    const curve = working ? curveOf(working, format) : [];
    const tested = {
      low: Math.min(...points.map((point) => point.dose)),
      high: Math.max(...points.map((point) => point.dose)),
    };
    const bar = chain.choice?.bars.find(({ limit }) => limit.response === spec.name);
    const unit = unitOf(spec.name, series.series);
    const ends =
      verdict && typeof verdict.low === "number" && typeof verdict.high === "number"
        ? { low: format.toShown(verdict.low, "doseKgPerT"), high: format.toShown(verdict.high, "doseKgPerT") }
        : null;
    const sentence = verdict?.sentence ?? (chain.running ? "Fitting…" : "Preview only: not fitted yet.");
    return {
      response: spec.name,
      title: words.label,
      sentence,
      data: {
        doseLabel: `dose ${letter.toUpperCase()}, ${format.unit("doseKgPerT")} active`,
        valueLabel: `${words.label}, ${unit}`,
        logValue: spec.scale === "log",
        doseRange,
        tested,
        points,
        curve,
        prediction: working && !options.small ? predictionOf(working, format) : [],
        preview: curve.length === 0 ? previewOf(points, spec.scale, tested) : [],
        limit:
          bar && !options.small
            ? { value: bar.limit.value, side: bar.limit.side, label: bar.limit.words }
            : null,
        interval: ends,
        marks: options.marks ?? [],
        polymer: letter,
      },
      table: {
        heads: [
          "jar",
          `dose, ${format.unit("doseKgPerT")}`,
          `${words.label}, ${unit}`,
          "fitted",
          "low 95 %",
          "high 95 %",
        ],
        rows: points.map((point) => {
          const dose = format.toCanonical(point.dose, "doseKgPerT");
          const fit = working?.fit;
          const usable = fit && fit.report.status === "converged" && (dose > 0 || fit.model.definedAtZero);
          const band = usable ? meanBand(fit, dose) : null;
          const sign = point.censored === "above" ? ">" : point.censored === "below" ? "<" : "";
          return [
            `${point.label}${point.leftOut ? " (left out)" : ""}`,
            format.plain(point.dose),
            `${sign}${format.plain(point.value)}`,
            usable ? format.plain(meanAt(fit, dose)) : "",
            band ? format.plain(band.low) : "",
            band ? format.plain(band.high) : "",
          ];
        }),
      },
    };
  });
}
