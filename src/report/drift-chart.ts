import { plantWatchWords } from "../words/plant-watch.ts";
import { axis } from "./axis.ts";
import { spread } from "./dose-axes.ts";
import type { Drawing } from "./drawing.ts";
import { markup } from "./markup.ts";

/** Routine runs in order of time with their limits, in the units they are shown in. */
export interface PrintedDrift {
  title: string;
  valueLabel: string;
  sentence: string;
  log: boolean;
  runs: { label: string; value: number; signal: boolean }[];
  limits: { name: string; value: number; strong: boolean }[];
}

const width = 660;
const height = 190;
const left = 64;
const right = width - 130;
const top = 14;
const bottom = height - 40;
const px = (value: number) => String(Math.round(value * 10) / 10);
/** runs that can be named under the axis without running into each other */
const mostNames = 9;

/** The ends of a drift chart's value axis: every run and every limit, with some air. */
export function driftEnds(chart: Pick<PrintedDrift, "runs" | "limits" | "log">): {
  low: number;
  high: number;
} {
  const values = [...chart.runs, ...chart.limits].map(({ value }) => value);
  const [low, high] = [Math.min(...values), Math.max(...values)];
  if (chart.log && low > 0) {
    const air = (high / low) ** 0.08;
    return { low: low / air, high: high * air };
  }
  const air = (high - low || 1) * 0.08;
  return { low: low - air, high: high + air };
}

/** Which runs are named under the axis: the first, the last, every signal, and as many between as there is room for. */
export function namedRuns(runs: PrintedDrift["runs"]): number[] {
  const every = Math.ceil(runs.length / mostNames);
  return runs.flatMap((_, i) => (i % every === 0 || i === runs.length - 1 ? [i] : []));
}

/** The individuals chart of routine runs as it is printed; a square is a signal. */
export function driftDrawing(chart: PrintedDrift, number: (value: number) => string): Drawing {
  const { low, high } = driftEnds(chart);
  const y = axis(low, high, bottom, top, chart.log);
  const x = (index: number) => left + 12 + (index / Math.max(1, chart.runs.length - 1)) * (right - left - 24);
  const names = spread(
    chart.limits.map(({ value }) => y.at(value)),
    12,
    top,
    bottom,
  );
  return {
    width,
    height,
    label: plantWatchWords.drawing(chart.title, chart.sentence),
    body: markup`<g stroke="#000" fill="none"><path d="M${px(left)} ${px(top)}V${px(bottom)}H${px(right)}"/>${y.ticks.map((at) => markup`<path d="M${px(left)} ${px(y.at(at))}h-5"/>`)}</g>
<g text-anchor="end">${y.ticks.map((at) => markup`<text x="${px(left - 8)}" y="${px(y.at(at) + 4)}">${number(at)}</text>`)}</g>
<text transform="rotate(-90 14 ${px((top + bottom) / 2)})" x="14" y="${px((top + bottom) / 2)}" text-anchor="middle">${chart.valueLabel}</text>
<text x="${px((left + right) / 2)}" y="${px(height - 6)}" text-anchor="middle">${plantWatchWords.orderOfTime}</text>
${chart.limits.map(({ name, value, strong }, i) => markup`<path d="M${px(left)} ${px(y.at(value))}H${px(right)}" stroke="#000" stroke-width="1" stroke-dasharray="${strong ? "none" : "6 4"}"/><text x="${px(right + 5)}" y="${px(names[i]! + 4)}" font-size="10">${name} ${number(value)}</text>`)}
<path d="M${chart.runs.map(({ value }, i) => `${px(x(i))} ${px(y.at(value))}`).join("L")}" fill="none" stroke="#000" stroke-width="1.2"/>
${chart.runs.map(({ value, label, signal }, i) =>
  signal
    ? markup`<g><title>${label}</title><rect x="${px(x(i) - 5)}" y="${px(y.at(value) - 5)}" width="10" height="10" fill="#fff" stroke="#000" stroke-width="2"/></g>`
    : markup`<g><title>${label}</title><circle cx="${px(x(i))}" cy="${px(y.at(value))}" r="3.5"/></g>`,
)}
<g text-anchor="middle" font-size="9">${namedRuns(chart.runs).map((i) => markup`<text x="${px(x(i))}" y="${px(bottom + 14)}">${chart.runs[i]!.label}</text>`)}</g>`,
  };
}
