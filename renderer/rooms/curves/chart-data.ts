import type { ResponseWorking } from "../../../src/curve/analyse-types.ts";
import { type ResponseName, responseSpecs, responseWords, unitOf } from "../../../src/responses/registry.ts";
import { meanAt, meanBand } from "../../../src/curve/bands.ts";
import { previewPolynomial } from "../../../src/curve/preview.ts";
import { offScale, onScale } from "../../../src/curve/problem.ts";
import type { Scale } from "../../../src/curve/types.ts";
import { drawnCurve } from "../../../src/report/curve-points.ts";
import { doseEnd } from "../../../src/report/dose-axes.ts";
import { targetOfResponse, targetWords } from "../../../src/study/derive/choice.ts";
import type { SeriesChain } from "../../../src/study/derive/jars.ts";
import { chartWords } from "../../../src/words/charts.ts";
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

/** A response's curve in the study's display units. */
function shownCurve(
  working: ResponseWorking,
  format: Format,
): Pick<DoseChartData, "tested" | "curve" | "prediction" | "beyond"> {
  const drawn = drawnCurve(working);
  const show = (dose: number) => format.toShown(dose, "doseKgPerT");
  const shown = <T extends { dose: number }>(at: T): T => ({ ...at, dose: show(at.dose) });
  return {
    tested: drawn.tested && { low: show(drawn.tested.low), high: show(drawn.tested.high) },
    curve: drawn.curve.map(shown),
    prediction: drawn.prediction.map(shown),
    beyond: drawn.beyond.map((piece) => piece.map(shown)),
  };
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
  const doseRange = {
    low: 0,
    high: doseEnd([...doses, ...(options.marks ?? []).map(({ dose }) => dose)]),
  };
  return all.map(({ spec, points }) => {
    const words = responseWords[spec.name]!;
    const working = chain.workings.find(({ analysis }) => analysis.name === spec.name);
    const verdict = working?.analysis.verdict;
    const drawn = working ? shownCurve(working, format) : null;
    const curve = drawn?.curve ?? [];
    const tested = drawn?.tested ?? {
      low: Math.min(...points.map((point) => point.dose)),
      high: Math.max(...points.map((point) => point.dose)),
    };
    const field = targetOfResponse(spec.name);
    const asked = field === null ? null : (chain.targets?.[field] ?? null);
    const askedAt = (value: number) =>
      field === null ? "" : targetWords(field, series.series.turbidityUnit, format.entry(value));
    const unit = unitOf(spec.name, series.series);
    const ends =
      verdict && typeof verdict.low === "number" && typeof verdict.high === "number"
        ? { low: format.toShown(verdict.low, "doseKgPerT"), high: format.toShown(verdict.high, "doseKgPerT") }
        : null;
    const sentence = verdict?.sentence ?? (chain.running ? chartWords.fitting : chartWords.preview);
    return {
      response: spec.name,
      title: words.label,
      sentence,
      data: {
        doseLabel: chartWords.doseAxis(letter === "a" ? "A" : "B", format.unit("doseKgPerT")),
        valueLabel: `${words.label}, ${unit}`,
        valueUnit: unit,
        logValue: spec.scale === "log",
        doseRange,
        tested,
        points,
        curve,
        prediction: options.small ? [] : (drawn?.prediction ?? []),
        beyond: drawn?.beyond ?? [],
        preview: curve.length === 0 ? previewOf(points, spec.scale, tested) : [],
        limit:
          asked !== null && !options.small
            ? {
                value: asked,
                side: spec.wanted === "minimum" ? "at-most" : "at-least",
                label: askedAt(asked),
                wordsAt: askedAt,
              }
            : null,
        interval: ends,
        marks: options.marks ?? [],
        polymer: letter,
      },
      table: {
        heads: [
          chartWords.table.jar,
          chartWords.table.dose(format.unit("doseKgPerT")),
          `${words.label}, ${unit}`,
          chartWords.table.fitted,
          chartWords.table.low,
          chartWords.table.high,
        ],
        // A table of many jars is made when somebody looks at it.
        get rows() {
          return points.map((point) => {
            const dose = format.toCanonical(point.dose, "doseKgPerT");
            const fit = working?.fit;
            const usable = fit && fit.report.status === "converged" && (dose > 0 || fit.model.definedAtZero);
            const band = usable ? meanBand(fit, dose) : null;
            const mean = usable ? meanAt(fit, dose) : NaN;
            const write = band
              ? format.interval(mean, band.low, band.high)
              : (value: number) => format.plain(value);
            const sign = point.censored === "above" ? ">" : point.censored === "below" ? "<" : "";
            return [
              point.leftOut ? chartWords.jarLeftOut(point.label) : point.label,
              format.plain(point.dose),
              `${sign}${format.plain(point.value, 6)}`,
              usable ? write(mean) : "",
              band ? write(band.low) : "",
              band ? write(band.high) : "",
            ];
          });
        },
      },
    };
  });
}
