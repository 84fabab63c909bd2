import { axis, type Axis } from "./axis.ts";
import { endLabels, isLog, spread, untested, valueEnds } from "./dose-axes.ts";
import { inlineSvg, paperSize, type Drawing } from "./drawing.ts";
import { markup, type Markup } from "./markup.ts";
import { footRoom, frameShapes, halo, numbered, px, shapesMarkup } from "./shapes.ts";
import { chartWords } from "../words/charts.ts";

/** One response against dose, as it is printed: black on white, everything named where it stands. */
export interface PrintedChart {
  title: string;
  sentence: string;
  doseLabel: string;
  valueLabel: string;
  logValue: boolean;
  polymer: "a" | "b";
  doseLow: number;
  doseHigh: number;
  /** the doses of the jars behind the curve; null where nothing was fitted */
  tested: { low: number; high: number } | null;
  points: {
    dose: number;
    value: number;
    label: string;
    leftOut: boolean;
    /** "above": the true value is at least this */
    censored: "above" | "below" | null;
  }[];
  /** what the plant did at a dose, beside the bench's jars */
  plant: { dose: number; value: number; label: string }[];
  /** fitted mean with its 95 % band, in rising dose; empty where nothing was fitted */
  curve: { dose: number; mean: number; low: number; high: number }[];
  /** where one more jar would fall, 95 %; empty where it is not shown */
  prediction: { dose: number; low: number; high: number }[];
  /** the mean a little past the doses tested, in pieces */
  beyond: { dose: number; mean: number }[][];
  /** a first look before anything is fitted */
  preview: { dose: number; mean: number }[];
  limit: { value: number; side: "at-most" | "at-least"; label: string } | null;
  /** the range the verdict gives for its dose */
  interval: { low: number; high: number } | null;
  marks: { dose: number; label: string; strong: boolean }[];
}

const { width } = paperSize;
const height = 220;
const left = 60;
const right = width - 82;
const top = 34;
const bottom = height - footRoom;

/** What the signs of this chart mean, for the line under it. */
export function chartLegend(chart: PrintedChart): string {
  const says = chartWords.legend;
  const parts = [says.jars];
  if (chart.plant.length > 0) parts.push(says.plant);
  if (chart.beyond.length > 0) parts.push(says.beyond);
  if (chart.interval) parts.push(says.interval);
  if (chart.limit) parts.push(says.limit);
  if (chart.points.some(({ censored }) => censored)) parts.push(says.censored);
  if (chart.points.some(({ leftOut }) => leftOut)) parts.push(says.leftOut);
  return `${parts.join("; ")}.`;
}

/** The chart as a drawing that needs no script and no style from elsewhere. */
export function doseDrawing(chart: PrintedChart, number: (value: number) => string): Drawing {
  const x = axis(chart.doseLow, chart.doseHigh, left, right, false);
  const ends = valueEnds(chart);
  const y = axis(ends.low, ends.high, bottom, top, isLog(chart));
  const inside = (value: number) => Math.min(bottom, Math.max(top, y.at(value)));
  return {
    width,
    height,
    label: chartWords.againstDose(chart.title, chart.sentence),
    body: markup`${untestedParts(chart, x)}
${band(chart, x, inside)}
${shapesMarkup(
  frameShapes(
    numbered(x, chart.doseLabel, number),
    numbered(y, chart.valueLabel, number),
    { left, right, top, bottom },
    true,
  ),
)}
${limitLine(chart, y)}
${marks(chart, x)}
${curveLines(chart, x, inside)}
${lineNames(chart, inside)}
${chart.points.map((point, i) => jar(point, chart.polymer, x.at(point.dose), inside(point.value), i))}
${chart.plant.map((point) => plantMark(point, x.at(point.dose), inside(point.value)))}`,
  };
}

/** The chart as SVG within a page. */
export function doseChart(chart: PrintedChart, number: (value: number) => string): Markup {
  return inlineSvg(doseDrawing(chart, number));
}

/** width of one letter, roughly */
const letterWidth = 5.4;

/** Where no jar was, the paper is hatched by thin uprights and, where there is room, says so. */
function untestedParts(chart: PrintedChart, x: Axis): Markup[] {
  const says = chartWords.lines.untested;
  return untested(chart).map(({ low, high }) => {
    const [from, to] = [x.at(low), x.at(high)];
    const uprights = Array.from({ length: Math.floor((to - from) / 5) }, (_, i) => from + 3 + i * 5);
    return markup`<g stroke="#bbb" stroke-width="0.6">${uprights.map((at) => markup`<path d="M${px(at)} ${px(top)}V${px(bottom)}"/>`)}</g>${
      to - from > says.length * letterWidth &&
      markup`<text x="${px((from + to) / 2)}" y="${px(bottom - 6)}" text-anchor="middle" ${halo}>${says}</text>`
    }`;
  });
}

/** Each line is named where it ends, beside the frame. */
function lineNames(chart: PrintedChart, inside: (value: number) => number): Markup {
  const names = endLabels(chart);
  const at = spread(
    names.map(({ value }) => inside(value)),
    13,
    top + 4,
    bottom,
  );
  return markup`${names.map(({ text }, i) => markup`<text x="${px(right + 5)}" y="${px(at[i]! + 4)}">${text}</text>`)}`;
}

function band(chart: PrintedChart, x: Axis, inside: (value: number) => number): Markup | null {
  if (chart.curve.length < 2) return null;
  const up = chart.curve.map((at) => `${px(x.at(at.dose))} ${px(inside(at.high))}`);
  const down = chart.curve.map((at) => `${px(x.at(at.dose))} ${px(inside(at.low))}`).reverse();
  return markup`<path d="M${[...up, ...down].join("L")}Z" fill="#dcdcdc"/>`;
}

function pathOf(
  points: { dose: number; value: number }[],
  x: Axis,
  inside: (value: number) => number,
): string {
  return `M${points.map((at) => `${px(x.at(at.dose))} ${px(inside(at.value))}`).join("L")}`;
}

function curveLines(chart: PrintedChart, x: Axis, inside: (value: number) => number): Markup {
  const line = (points: { dose: number; value: number }[], strokeWidth: string, dash: string) =>
    points.length > 1 &&
    markup`<path d="${pathOf(points, x, inside)}" fill="none" stroke="#000" stroke-width="${strokeWidth}" stroke-dasharray="${dash}"/>`;
  const meanOf = (points: { dose: number; mean: number }[]) =>
    points.map(({ dose, mean }) => ({ dose, value: mean }));
  return markup`${line(meanOf(chart.curve), "2", chart.polymer === "a" ? "none" : "9 5")}
${chart.beyond.map((piece) => line(meanOf(piece), "1.2", "1.5 4"))}
${(["low", "high"] as const).map((end) =>
  line(
    chart.prediction.map((at) => ({ dose: at.dose, value: at[end] })),
    "0.8",
    "1 3",
  ),
)}
${line(meanOf(chart.preview), "1.2", "3 3")}`;
}

function limitLine({ limit }: PrintedChart, y: Axis): Markup | null {
  if (!limit) return null;
  const at = y.at(limit.value);
  if (at < top || at > bottom) return null;
  // Ticks on the failing side of a limit say which side is wrong without colour.
  const fail = limit.side === "at-least" ? 6 : -6;
  const ticks = Array.from({ length: 48 }, (_, i) => left + 6 + i * 12).filter((from) => from < right);
  return markup`<g stroke="#000" stroke-width="1"><path d="M${px(left)} ${px(at)}H${px(right)}"/>${ticks.map((from) => markup`<path d="M${px(from)} ${px(at)}l-4 ${px(fail)}"/>`)}</g>
<text x="${px(left + 8)}" y="${px(limit.side === "at-least" ? at - 5 : at + 13)}" ${halo}>${limit.label}</text>`;
}

function marks(chart: PrintedChart, x: Axis): Markup {
  const { interval } = chart;
  const range =
    interval &&
    markup`<g stroke="#000" fill="none"><path d="M${px(x.at(interval.low))} ${px(bottom - 4)}H${px(x.at(interval.high))}" stroke-width="4"/></g>`;
  const lines = [...chart.marks]
    .sort((a, b) => a.dose - b.dose)
    .map((mark, i) => {
      const at = x.at(mark.dose);
      const dash = mark.strong ? "none" : "3 4";
      return markup`<path d="M${px(at)} ${px(top - 4)}V${px(bottom)}" stroke="#000" stroke-width="${mark.strong ? "2.4" : "1.4"}" stroke-dasharray="${dash}"/>
<text x="${px(at)}" y="${px(i % 2 === 0 ? 13 : 26)}" text-anchor="${at > right - 90 ? "end" : "middle"}">${mark.label}</text>`;
    });
  return markup`${range}${lines}`;
}

function jar(
  point: PrintedChart["points"][number],
  polymer: "a" | "b",
  x: number,
  y: number,
  index: number,
): Markup {
  const fill = point.leftOut ? "#fff" : "#000";
  const shape = point.censored
    ? markup`<path d="${point.censored === "above" ? `M${px(x - 5)} ${px(y + 4)}h10l-5 -9Z` : `M${px(x - 5)} ${px(y - 4)}h10l-5 9Z`}" fill="${fill}" stroke="#000"/>`
    : polymer === "a"
      ? markup`<circle cx="${px(x)}" cy="${px(y)}" r="4" fill="${fill}" stroke="#000"/>`
      : markup`<rect x="${px(x - 4)}" y="${px(y - 4)}" width="8" height="8" fill="${fill}" stroke="#000"/>`;
  const beside = index % 2 === 0 ? 7 : -7;
  return markup`${shape}<text x="${px(x + beside)}" y="${px(y - 5)}" text-anchor="${beside > 0 ? "start" : "end"}" ${halo}>${point.leftOut ? chartWords.jarOut(point.label) : point.label}</text>`;
}

// Runs crowd around one dose, so their names are told on pointing at them and in their own table.
function plantMark({ label }: PrintedChart["plant"][number], x: number, y: number): Markup {
  return markup`<g><title>${label}</title><path d="M${px(x)} ${px(y - 6)}l6 6l-6 6l-6 -6Z" fill="#fff" stroke="#000" stroke-width="1.6"/></g>`;
}
