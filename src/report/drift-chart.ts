import { plantWatchWords } from "../words/plant-watch.ts";
import type { Drawing } from "./drawing.ts";
import { plotDrawing, type Plot } from "./plot.ts";

/** Routine runs in order of time with their limits, in the units they are shown in. */
export interface PrintedDrift {
  title: string;
  valueLabel: string;
  sentence: string;
  log: boolean;
  runs: { label: string; value: number; signal: boolean }[];
  limits: { name: string; value: number; strong: boolean }[];
}

/** runs that can be named under the axis without running into each other */
const mostNames = 9;

/** The ends of a drift chart's value axis: every run and every limit, with some air. */
function driftEnds(chart: Pick<PrintedDrift, "runs" | "limits" | "log">): {
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
function namedRuns(runs: PrintedDrift["runs"]): number[] {
  const every = Math.ceil(runs.length / mostNames);
  return runs.flatMap((_, i) => (i % every === 0 || i === runs.length - 1 ? [i] : []));
}

/** The individuals chart of routine runs; a square is a signal. */
export function driftPlot(chart: PrintedDrift, number: (value: number) => string): Plot {
  const runs = chart.runs.map((run, x) => ({ ...run, x }));
  return {
    title: chart.title,
    sentence: chart.sentence,
    x: {
      title: plantWatchWords.orderOfTime,
      low: -0.4,
      high: runs.length - 0.6,
      named: namedRuns(chart.runs).map((value) => ({ value, text: chart.runs[value]!.label })),
    },
    y: { title: chart.valueLabel, ...driftEnds(chart), log: chart.log },
    levels: chart.limits.map(({ name, value, strong }) => ({
      look: strong ? "zero" : "limit",
      name: `${name} ${number(value)}`,
      value,
    })),
    lines: [{ look: "path", name: "", points: runs.map(({ x, value }) => ({ x, y: value })) }],
    points: runs.map(({ x, value, label, signal }) => ({
      x,
      y: value,
      look: signal ? "signal" : "point",
      name: "",
      says: signal
        ? plantWatchWords.signalRun(label, number(value))
        : plantWatchWords.run(label, number(value)),
    })),
  };
}

/** The individuals chart as it is printed and saved. */
export function driftDrawing(chart: PrintedDrift, number: (value: number) => string): Drawing {
  return plotDrawing(driftPlot(chart, number), number);
}
