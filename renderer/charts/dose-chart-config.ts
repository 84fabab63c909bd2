import type { AnnotationOptions } from "chartjs-plugin-annotation";
import type { ChartConfiguration, ChartDataset, Plugin } from "chart.js";
import type { DoseChartData } from "./dose-chart-data.ts";
import type { Ink } from "./ink.ts";

type XY = { x: number; y: number };

/** band, mean, preview and prediction lines come before the jars */
const firstJars = 6;

// Ticks on the failing side of a limit say which side is wrong without colour.
function failingTicks(data: DoseChartData, ink: Ink): Plugin<"scatter"> {
  return {
    id: "failing-ticks",
    afterDatasetsDraw(chart) {
      const { limit } = data;
      const scale = chart.scales["y"];
      if (!limit || !scale) return;
      const y = scale.getPixelForValue(limit.value);
      const { left, right, top, bottom } = chart.chartArea;
      if (y < top || y > bottom) return;
      const down = limit.side === "at-least" ? 6 : -6;
      const { ctx } = chart;
      ctx.save();
      ctx.strokeStyle = ink.bad;
      ctx.lineWidth = 1.2;
      ctx.beginPath();
      for (let x = left + 4; x < right; x += 12) {
        ctx.moveTo(x, y);
        ctx.lineTo(x - 4, y + down);
      }
      ctx.stroke();
      ctx.restore();
    },
  };
}

function annotations(
  data: DoseChartData,
  ink: Ink,
  pickedDose: number | null,
): Record<string, AnnotationOptions> {
  const all: Record<string, AnnotationOptions> = {};
  const font = { family: ink.font, size: 12 };
  if (data.interval)
    all["interval"] = {
      type: "box",
      xMin: data.interval.low,
      xMax: data.interval.high,
      backgroundColor: `color-mix(in srgb, ${ink.accent} 12%, transparent)`,
      borderWidth: 0,
      drawTime: "beforeDatasetsDraw",
    };
  if (data.limit)
    all["limit"] = {
      type: "line",
      yMin: data.limit.value,
      yMax: data.limit.value,
      borderColor: ink.bad,
      borderWidth: 1.4,
      label: {
        display: true,
        content: data.limit.label,
        position: "end",
        yAdjust: data.limit.side === "at-most" ? 10 : -10,
        backgroundColor: ink.sheet,
        color: ink.bad,
        padding: 2,
        font,
      },
    };
  for (const [index, mark] of data.marks.entries())
    all[`mark${index}`] = {
      type: "line",
      xMin: mark.dose,
      xMax: mark.dose,
      borderColor: mark.tone === "accent" ? ink.accent : mark.tone === "warn" ? ink.warn : ink.soft,
      borderWidth: 1.4,
      borderDash: [2, 4],
      label: {
        display: true,
        content: mark.label,
        position: "start",
        rotation: -90,
        xAdjust: 9,
        backgroundColor: "transparent",
        color: ink.soft,
        padding: 0,
        font,
      },
    };
  if (pickedDose !== null)
    all["dose"] = {
      type: "line",
      xMin: pickedDose,
      xMax: pickedDose,
      borderColor: ink.accent,
      borderWidth: 2.5,
    };
  return all;
}

function datasets(data: DoseChartData, ink: Ink): ChartDataset<"scatter", XY[]>[] {
  const color = data.polymer === "a" ? ink.a : ink.b;
  const dash = data.polymer === "a" ? [] : [7, 4];
  const line = (
    points: XY[],
    extra: Partial<ChartDataset<"scatter", XY[]>>,
  ): ChartDataset<"scatter", XY[]> => ({
    data: points,
    showLine: true,
    pointRadius: 0,
    pointHitRadius: 0,
    borderWidth: 0,
    tension: 0,
    ...extra,
  });
  const kept = data.points.filter((point) => !point.leftOut);
  const out = data.points.filter((point) => point.leftOut);
  const shape = data.polymer === "a" ? "circle" : "rect";
  return [
    line(
      data.curve.map((at) => ({ x: at.dose, y: at.high })),
      { label: "band, high" },
    ),
    line(
      data.curve.map((at) => ({ x: at.dose, y: at.low })),
      {
        label: "band, low",
        fill: "-1",
        backgroundColor: `color-mix(in srgb, ${color} 16%, transparent)`,
      },
    ),
    line(
      data.curve.map((at) => ({ x: at.dose, y: at.mean })),
      { label: "fitted", borderColor: color, borderWidth: 2.2, borderDash: dash },
    ),
    line(
      data.preview.map((at) => ({ x: at.dose, y: at.mean })),
      { label: "preview", borderColor: ink.soft, borderWidth: 1.5, borderDash: [2, 3] },
    ),
    ...(["low", "high"] as const).map((end) =>
      line(
        data.prediction.map((at) => ({ x: at.dose, y: at[end] })),
        { label: `one more jar, ${end}`, borderColor: color, borderWidth: 1, borderDash: [1, 4] },
      ),
    ),
    {
      label: "jars",
      data: kept.map((point) => ({ x: point.dose, y: point.value })),
      pointStyle: kept.map((point) => (point.censored ? "triangle" : shape)),
      pointRotation: kept.map((point) => (point.censored === "below" ? 180 : 0)),
      clip: 8,
      pointRadius: 5,
      pointHoverRadius: 7,
      backgroundColor: color,
      borderColor: ink.sheet,
      borderWidth: 1,
    },
    {
      label: "left out",
      data: out.map((point) => ({ x: point.dose, y: point.value })),
      pointStyle: shape,
      pointRadius: 5,
      backgroundColor: "transparent",
      borderColor: ink.soft,
      borderWidth: 1.6,
    },
    {
      label: "plant runs",
      data: (data.plantPoints ?? []).map((point) => ({ x: point.dose, y: point.value })),
      pointStyle: "rectRot",
      clip: 8,
      pointRadius: 8,
      pointHoverRadius: 10,
      backgroundColor: ink.accent,
      borderColor: ink.sheet,
      borderWidth: 1.5,
    },
  ];
}

/** The value axis: everything that is drawn, with some air, so that no point sits on the frame. */
function valueRange(data: DoseChartData): { min?: number; max?: number } {
  const values = [
    ...data.points.map((point) => point.value),
    ...(data.plantPoints ?? []).map((point) => point.value),
    ...data.curve.map((at) => at.mean),
    ...data.prediction.flatMap((at) => [at.low, at.high]),
    ...(data.limit ? [data.limit.value] : []),
  ].filter(Number.isFinite);
  if (values.length === 0) return {};
  const low = Math.min(...values);
  const high = Math.max(...values);
  if (data.logValue && low > 0) return { min: low / 1.35, max: high * 1.35 };
  const air = (high - low || Math.abs(high) || 1) * 0.1;
  return { min: low >= 0 ? Math.max(0, low - air) : low - air, max: high + air };
}

export interface ChartWords {
  number(value: number): string;
}

/** The whole Chart.js configuration of one response against dose. */
export function doseChartConfig(
  data: DoseChartData,
  ink: Ink,
  pickedDose: number | null,
  words: ChartWords,
  showDoseAxis: boolean,
): ChartConfiguration<"scatter", XY[]> {
  const font = { family: ink.font, size: 12 };
  const axis = { grid: { color: ink.rule, lineWidth: 0.6 }, border: { color: ink.soft } };
  const ticks = {
    color: ink.soft,
    font,
    // The ends of an axis are rarely round: only round values are worth reading.
    callback(this: { min: number; max: number }, value: number | string): string {
      const at = Number(value);
      const isEnd = at === this.min || at === this.max;
      return isEnd && Number(at.toPrecision(2)) !== at ? "" : words.number(at);
    },
  };
  return {
    type: "scatter",
    data: { datasets: datasets(data, ink) },
    plugins: [failingTicks(data, ink)],
    options: {
      animation: false,
      responsive: true,
      maintainAspectRatio: false,
      layout: { autoPadding: false, padding: { top: 8, right: 14, bottom: 4 } },
      scales: {
        x: {
          ...axis,
          type: "linear",
          min: data.doseRange.low,
          max: data.doseRange.high,
          title: { display: showDoseAxis, text: data.doseLabel, color: ink.soft, font },
          ticks: { ...ticks, maxTicksLimit: 11, includeBounds: false, display: showDoseAxis },
        },
        y: {
          ...axis,
          type: data.logValue ? "logarithmic" : "linear",
          ...valueRange(data),
          title: { display: true, text: data.valueLabel, color: ink.soft, font },
          ticks: { ...ticks, maxTicksLimit: 7, includeBounds: false },
          // One width for every chart in the stack, so that a dose stands on the same vertical in all of them.
          afterFit: (scale) => {
            scale.width = 76;
          },
        },
      },
      plugins: {
        legend: { display: false },
        annotation: { annotations: annotations(data, ink, pickedDose) },
        tooltip: {
          filter: (item) => item.datasetIndex >= firstJars,
          callbacks: {
            label: (item) => {
              if (item.datasetIndex === firstJars + 2) {
                const run = data.plantPoints?.[item.dataIndex];
                return run
                  ? `plant, ${run.label}: ${words.number(run.value)} at ${words.number(run.dose)}`
                  : "";
              }
              const list = data.points.filter(
                (point) => (item.datasetIndex === firstJars + 1) === (point.leftOut === true),
              );
              const point = list[item.dataIndex];
              if (!point) return "";
              const sign = point.censored === "above" ? "> " : point.censored === "below" ? "< " : "";
              return `jar ${point.label}: ${sign}${words.number(point.value)} at ${words.number(point.dose)}`;
            },
          },
        },
      },
    },
  };
}
