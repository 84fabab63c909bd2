import { chartWords } from "../words/charts.ts";
import type { PrintedChart } from "./dose-chart.ts";

/** How far the dose axis reaches past the highest dose on it, so that "not tested" can be seen and said. */
const doseAir = 1.1;

/** Where a dose axis from 0 ends: a little past everything that stands on it. */
export function doseEnd(doses: number[]): number {
  const top = Math.max(0, ...doses);
  return top > 0 ? top * doseAir : 1;
}

/** The ends of the value axis: everything that is drawn, with some air, so that no point sits on the frame. */
export function valueEnds(chart: PrintedChart): { low: number; high: number } {
  const values = [
    ...chart.points.map((point) => point.value),
    ...chart.plant.map((point) => point.value),
    ...chart.curve.map((at) => at.mean),
    ...chart.preview.map((at) => at.mean),
    ...chart.prediction.flatMap((at) => [at.low, at.high]),
    ...(chart.limit ? [chart.limit.value] : []),
  ].filter(Number.isFinite);
  if (values.length === 0) return { low: 0, high: 1 };
  const low = Math.min(...values);
  const high = Math.max(...values);
  if (chart.logValue && low > 0) return { low: low / 1.35, high: high * 1.35 };
  const air = (high - low || Math.abs(high) || 1) * 0.1;
  return { low: low >= 0 ? Math.max(0, low - air) : low - air, high: high + air };
}

/** Whether the value axis is logarithmic: asked for, and nothing on it is zero or below. */
export function isLog(chart: PrintedChart): boolean {
  return chart.logValue && valueEnds(chart).low > 0;
}

/** What a line is, said where it ends, so that no legend is needed. */
export interface EndLabel {
  value: number;
  text: string;
}

/** The names of a chart's lines at the highest dose tested. */
export function endLabels(chart: PrintedChart): EndLabel[] {
  const letter = chart.polymer === "a" ? "A" : "B";
  const says = chartWords.lines;
  const end = chart.curve.at(-1);
  const jar = chart.prediction.at(-1);
  const preview = chart.preview.at(-1);
  return [
    ...(jar ? [{ value: jar.high, text: says.oneMore }] : []),
    ...(end
      ? [
          { value: end.high, text: says.band },
          { value: end.mean, text: says.mean(letter) },
        ]
      : []),
    ...(preview ? [{ value: preview.mean, text: says.preview }] : []),
  ];
}

/** What a drawn curve says at a dose, between its points; null outside the doses tested. */
export function valueAtDose(
  curve: PrintedChart["curve"],
  dose: number,
): { mean: number; low: number; high: number } | null {
  const next = curve.findIndex((at) => at.dose >= dose);
  const [below, above] = [curve[Math.max(0, next - 1)], curve[next]];
  if (!below || !above || dose < below.dose) return null;
  const share = above.dose > below.dose ? (dose - below.dose) / (above.dose - below.dose) : 0;
  const between = (key: "mean" | "low" | "high") => below[key] + share * (above[key] - below[key]);
  return { mean: between("mean"), low: between("low"), high: between("high") };
}

/** Places labels that would overlap apart, in order, within two ends; positions in any unit that grows downwards. */
export function spread(wanted: number[], gap: number, top: number, bottom: number): number[] {
  const order = wanted.map((at, i) => ({ at, i })).sort((a, b) => a.at - b.at || a.i - b.i);
  let last = top - gap;
  const placed = order.map(({ at, i }) => {
    last = Math.max(Math.min(at, bottom), last + gap);
    return { at: last, i };
  });
  let floor = bottom + gap;
  for (const one of [...placed].reverse()) {
    one.at = Math.min(one.at, floor - gap);
    floor = one.at;
  }
  const out: number[] = [];
  for (const { at, i } of placed) out[i] = at;
  return out;
}

/** The parts of the dose axis where no jar was: what a curve says there is only the model's word. */
export function untested(chart: PrintedChart): { low: number; high: number }[] {
  const { tested, doseLow, doseHigh } = chart;
  if (!tested) return [];
  return [
    { low: doseLow, high: tested.low },
    { low: tested.high, high: doseHigh },
  ].filter(({ low, high }) => high > low);
}
