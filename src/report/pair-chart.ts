import { axis, type Axis } from "./axis.ts";
import { levelLines } from "./contour-grid.ts";
import type { Drawing } from "./drawing.ts";
import { markup, type Markup } from "./markup.ts";
import { footRoom, frameShapes, halo, numbered, px, shapesMarkup } from "./shapes.ts";
import { chartWords } from "../words/charts.ts";

type Range = { low: number; high: number };

/** The fitted surface of a response over both doses, on the grid of contour-grid.ts. */
export interface PrintedSurface {
  rangeA: Range;
  rangeB: Range;
  values: number[];
  levels: number[];
  /** lines where a target is met with confidence, on the grid of that response's own bound */
  limits: { label: string; values: number[]; limit: number }[];
}

/** The pairs of doses tested, each with its jar and reading, and the pairs that matter. */
export interface PairChart {
  sentence: string;
  labelA: string;
  labelB: string;
  points: { a: number; b: number; label: string; leftOut: boolean }[];
  marks: { a: number; b: number; label: string }[];
  surface: PrintedSurface | null;
}

const width = 660;
const height = 320;
const left = 56;
const right = width - 90;
const top = 18;
const bottom = height - footRoom;

/** The ends of a dose axis of the plane: every dose on it with some air, so that a label beside a jar has room. */
function pairEnds(doses: number[]): Range {
  const [low, high] = [Math.min(...doses), Math.max(...doses)];
  const air = (high - low || high || 1) * 0.12;
  return Number.isFinite(air) ? { low: Math.max(0, low - air), high: high + air } : { low: 0, high: 1 };
}

/** The plane of both doses with its jars, and the fitted surface's levels where there is one. */
export function pairDrawing(chart: PairChart, number: (value: number) => string): Drawing {
  const all = [...chart.points, ...chart.marks];
  const [a, b] = [pairEnds(all.map(({ a }) => a)), pairEnds(all.map(({ b }) => b))];
  const x = axis(a.low, a.high, left, right, false);
  const y = axis(b.low, b.high, bottom, top, false);
  // Jars at one pair share a marker; their labels stand beside it, one under the other.
  const places = new Map<string, typeof chart.points>();
  for (const point of chart.points) {
    const key = `${px(x.at(point.a))} ${px(y.at(point.b))}`;
    places.set(key, [...(places.get(key) ?? []), point]);
  }
  return {
    width,
    height,
    label: chartWords.pair.tested(chart.sentence),
    body: markup`${chart.surface && surfaceLines(chart.surface, x, y, number)}
${shapesMarkup(
  frameShapes(
    numbered(x, chart.labelA, number),
    numbered(y, chart.labelB, number),
    { left, right, top, bottom },
    true,
  ),
)}
${[...places.values()].map((points) => {
  const [first] = points;
  const [at, up] = [x.at(first!.a), y.at(first!.b)];
  const out = points.every(({ leftOut }) => leftOut);
  return markup`<circle cx="${px(at)}" cy="${px(up)}" r="4" fill="${out ? "#fff" : "#000"}" stroke="#000"/>${points.map(({ label }, i) => markup`<text x="${px(at + 7)}" y="${px(up + 4 + i * 11)}" font-size="10" ${halo}>${label}</text>`)}`;
})}
${chart.marks.map(({ a, b, label }, i) => {
  const [at, up] = [x.at(a), y.at(b)];
  return markup`<path d="M${px(at - 8)} ${px(up)}h16M${px(at)} ${px(up - 8)}v16" stroke="#000" stroke-width="2.4"/><text x="${px(i % 2 === 0 ? at : at + 11)}" y="${px(i % 2 === 0 ? up - 12 : up + 4)}" text-anchor="${i % 2 === 0 ? "middle" : "start"}" font-weight="700" ${halo}>${label}</text>`;
})}`,
  };
}

/** Levels as thin lines and targets as dashed ones, each with its value on itself; a frame around what was tested. */
function surfaceLines(surface: PrintedSurface, x: Axis, y: Axis, number: (value: number) => string): Markup {
  const { rangeA, rangeB } = surface;
  const across = (share: number) => x.at(rangeA.low + (rangeA.high - rangeA.low) * share);
  const up = (share: number) => y.at(rangeB.low + (rangeB.high - rangeB.low) * share);
  const lines = (values: number[], level: number, label: string, look: Markup, place: number) => {
    const pieces = levelLines(values, level).map((piece) =>
      piece.map(({ a, b }) => ({ at: across(a), up: up(b) })),
    );
    const longest = [...pieces].sort((a, b) => b.length - a.length)[0];
    const anchor = longest?.[Math.floor(longest.length * place)];
    return markup`${pieces.map((piece) => markup`<path d="M${piece.map((point) => `${px(point.at)} ${px(point.up)}`).join("L")}" fill="none" ${look}/>`)}${
      anchor &&
      markup`<text x="${px(Math.min(right - 30, Math.max(left + 30, anchor.at)))}" y="${px(anchor.up + 3)}" text-anchor="middle" font-size="9" ${halo}>${label}</text>`
    }`;
  };
  const thin = markup`stroke="#777" stroke-width="0.9"`;
  const dashed = markup`stroke="#000" stroke-width="1.8" stroke-dasharray="7 4"`;
  return markup`<path d="M${px(across(0))} ${px(up(0))}H${px(across(1))}V${px(up(1))}H${px(across(0))}Z" fill="none" stroke="#bbb"/>
<text x="${px(across(0.25))}" y="${px(up(1) - 4)}" font-size="9" text-anchor="middle">${chartWords.lines.testedWithin}</text>
${surface.levels.map((level) => lines(surface.values, level, number(level), thin, 0.3))}
${surface.limits.map(({ label, values, limit }) => lines(values, limit, label, dashed, 0.6))}`;
}
