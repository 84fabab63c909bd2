import type { AnnotationOptions } from "chartjs-plugin-annotation";
import type { ChartConfiguration, ChartDataset, Plugin } from "chart.js";
import { roundTicks } from "../../src/report/axis.ts";
import { endLabels, isLog, spread, untested, valueEnds } from "../../src/report/dose-axes.ts";
import type { PrintedChart } from "../../src/report/dose-chart.ts";
import { chartWords } from "../../src/words/charts.ts";
import type { DoseChartData } from "./dose-chart-data.ts";
import type { Ink } from "./ink.ts";
import { printedOf } from "./printed-chart.ts";

type XY = { x: number; y: number };

/** band, mean, preview, prediction lines and the two ends past the doses tested come before the jars */
const firstJars = 8;
/** room beside the frame for the names of the lines; a narrow chart goes without */
const nameWidth = 92;
const namedFrom = 420;
/** height that a tick's number needs, and what the dose axis and the padding take of a chart's height */
const tickRoom = 18;
const axisRoom = 30;
/** height above the axis in which a limit's words stand in the way of others */
const limitRoom = 44;

// Ticks on the failing side of a limit say which side is wrong without colour.
function failingTicks(data: DoseChartData, ink: Ink): Plugin<"scatter"> {
  return {
    id: "failing-ticks",
    afterDatasetsDraw(chart) {
      const { limit } = data;
      const scale = chart.scales["y"];
      if (!limit || !scale) return;
      const lines = chart.options.plugins?.annotation?.annotations as
        Record<string, { yMin?: number } | undefined> | undefined;
      const y = scale.getPixelForValue(lines?.["limit"]?.yMin ?? limit.value);
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

// Where no jar was, the sheet is shaded and says so; each line is named where it ends.
function saidBeside(printed: PrintedChart, ink: Ink): Plugin<"scatter"> {
  const small = `11px ${ink.font}`;
  return {
    id: "said-beside",
    beforeDatasetsDraw(chart) {
      const scale = chart.scales["x"];
      if (!scale) return;
      const { left, top, bottom } = chart.chartArea;
      const { ctx } = chart;
      ctx.save();
      ctx.font = small;
      ctx.textAlign = "center";
      // The words of a limit that lies low stand at the left, just above the axis.
      const limitAt = printed.limit && chart.scales["y"]?.getPixelForValue(printed.limit.value);
      const limitIsLow = limitAt != null && bottom - limitAt < limitRoom;
      for (const part of untested(printed)) {
        const [from, to] = [scale.getPixelForValue(part.low), scale.getPixelForValue(part.high)];
        ctx.fillStyle = `color-mix(in srgb, ${ink.soft} 9%, transparent)`;
        ctx.fillRect(from, top, to - from, bottom - top);
        ctx.fillStyle = ink.soft;
        const says = chartWords.lines.untested;
        if (to - from <= ctx.measureText(says).width + 6) continue;
        ctx.fillText(says, (from + to) / 2, limitIsLow && from <= left ? top + 14 : bottom - 5);
      }
      ctx.restore();
    },
    afterDatasetsDraw(chart) {
      const scale = chart.scales["y"];
      if (!scale || chart.width < namedFrom) return;
      const { top, bottom, right } = chart.chartArea;
      const names = endLabels(printed);
      const at = spread(
        names.map(({ value }) => Math.min(bottom, Math.max(top, scale.getPixelForValue(value)))),
        12,
        top + 4,
        bottom,
      );
      const { ctx } = chart;
      ctx.save();
      ctx.font = small;
      ctx.fillStyle = ink.soft;
      ctx.textBaseline = "middle";
      names.forEach(({ text }, i) => ctx.fillText(text, right + 14, at[i]!));
      ctx.restore();
    },
  };
}

/** Whether the curve runs in the upper half of its values at a dose: what is written there would hide it. */
function runsHigh({ curve, points, logValue }: DoseChartData, dose: number): boolean {
  const scaled = (value: number) => (logValue ? Math.log(Math.max(value, Number.MIN_VALUE)) : value);
  const [first, ...others] = curve;
  if (!first) return false;
  const nearest = others.reduce(
    (best, one) => (Math.abs(one.dose - dose) < Math.abs(best.dose - dose) ? one : best),
    first,
  );
  const all = [...points.map(({ value }) => value), ...curve.map(({ mean }) => mean)].map(scaled);
  return scaled(nearest.mean) > (Math.min(...all) + Math.max(...all)) / 2;
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
        position: "start",
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
        ...(runsHigh(data, mark.dose)
          ? { position: "start", yAdjust: 2 - (index % 2) * 13 }
          : { position: "end", yAdjust: -2 + (index % 2) * 13 }),
        xAdjust: 4 + 3 * mark.label.length,
        backgroundColor: `color-mix(in srgb, ${ink.sheet} 80%, transparent)`,
        color: ink.soft,
        padding: 1,
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
    ...[0, 1].map((piece) =>
      line(
        (data.beyond[piece] ?? []).map((at) => ({ x: at.dose, y: at.mean })),
        { label: "beyond", borderColor: color, borderWidth: 1.4, borderDash: [2, 5] },
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

export interface ChartWords {
  number(value: number): string;
  /** what stands along the value axis, where it is not the whole label */
  valueTitle?: string;
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
  const printed = printedOf(data, "", "");
  const ends = valueEnds(printed);
  const log = isLog(printed);
  const ticks = {
    color: ink.soft,
    font,
    callback: (value: number | string): string => words.number(Number(value)),
  };
  return {
    type: "scatter",
    data: { datasets: datasets(data, ink) },
    plugins: [failingTicks(data, ink), saidBeside(printed, ink)],
    options: {
      animation: false,
      responsive: true,
      maintainAspectRatio: false,
      layout: {
        autoPadding: false,
        padding: ({ chart }) => ({ top: 8, right: chart.width < namedFrom ? 14 : nameWidth, bottom: 4 }),
      },
      scales: {
        x: {
          ...axis,
          type: "linear",
          min: data.doseRange.low,
          max: data.doseRange.high,
          title: { display: showDoseAxis, text: data.doseLabel, color: ink.soft, font },
          ticks: { ...ticks, display: showDoseAxis },
          // The ticks are those of the paper, so that screen, report and saved file read alike.
          afterBuildTicks: (scale) => {
            scale.ticks = roundTicks(scale.min, scale.max, false).map((value) => ({ value }));
          },
        },
        y: {
          ...axis,
          type: log ? "logarithmic" : "linear",
          min: ends.low,
          max: ends.high,
          title: { display: true, text: words.valueTitle ?? data.valueLabel, color: ink.soft, font },
          ticks: { ...ticks, autoSkip: false },
          afterBuildTicks: (scale) => {
            const most = Math.max(2, Math.floor((scale.chart.height - axisRoom) / tickRoom));
            scale.ticks = roundTicks(scale.min, scale.max, log, most).map((value) => ({ value }));
          },
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
                  ? chartWords.tip.plant(run.label, words.number(run.value), words.number(run.dose))
                  : "";
              }
              const list = data.points.filter(
                (point) => (item.datasetIndex === firstJars + 1) === (point.leftOut === true),
              );
              const point = list[item.dataIndex];
              if (!point) return "";
              const sign = point.censored === "above" ? "> " : point.censored === "below" ? "< " : "";
              return chartWords.tip.jar(
                point.label,
                `${sign}${words.number(point.value)}`,
                words.number(point.dose),
              );
            },
          },
        },
      },
    },
  };
}
