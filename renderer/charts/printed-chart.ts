import type { PrintedChart } from "../../src/report/dose-chart.ts";
import type { DoseChartData } from "./dose-chart-data.ts";

/** A screen's chart as the paper draws it, so that ends, ticks, names and the saved file are decided in one place. */
export function printedOf(data: DoseChartData, title: string, sentence: string): PrintedChart {
  return {
    title,
    sentence,
    doseLabel: data.doseLabel,
    valueLabel: data.valueLabel,
    logValue: data.logValue,
    polymer: data.polymer,
    doseLow: data.doseRange.low,
    doseHigh: data.doseRange.high,
    tested: data.curve.length > 0 ? data.tested : null,
    points: data.points.map((point) => ({
      dose: point.dose,
      value: point.value,
      label: point.label,
      leftOut: point.leftOut === true,
      censored: point.censored ?? null,
    })),
    plant: (data.plantPoints ?? []).map(({ dose, value, label }) => ({ dose, value, label })),
    curve: data.curve,
    prediction: data.prediction,
    beyond: data.beyond,
    preview: data.preview,
    limit: data.limit,
    interval: data.interval,
    marks: data.marks.map(({ dose, label, tone }) => ({ dose, label, strong: tone === "soft" })),
  };
}
