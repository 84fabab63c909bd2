import { axis, type Axis } from "./axis.ts";
import { levelLines } from "./contour-grid.ts";
import { paperSize, type Drawing } from "./drawing.ts";
import { labelRoom } from "./label-room.ts";
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

const { width } = paperSize;
const height = 280;
const left = 56;
const right = width - 84;
const top = 18;
const bottom = height - footRoom;
/** width of one bold letter, roughly */
const boldLetter = 5.8;

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
  const room = labelRoom({ left, right: width, top: 0, bottom });
  const jarLabels = [...places.values()].flatMap((points) =>
    points.map(({ a, b, label }, i) => ({ text: label, x: x.at(a) + 7, y: y.at(b) + 4 + i * 12 })),
  );
  for (const { text, x, y } of jarLabels) room.take(text, x, y, "start");
  const markLabels = chart.marks.map(({ a, b, label }) => {
    const [at, up, half] = [x.at(a), y.at(b), (label.length * boldLetter) / 2];
    const around = [
      { x: at, y: up - 12 },
      { x: at, y: up + 21 },
      { x: at - 12 - half, y: up + 4 },
      { x: at + 12 + half, y: up + 4 },
    ];
    return { text: label, ...(room.find(label, around) ?? around[0]!) };
  });
  return {
    width,
    height,
    label: chartWords.pair.tested(chart.sentence),
    body: markup`${chart.surface && surfaceLines(chart.surface, x, y, room, number)}
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
  return markup`<circle cx="${px(at)}" cy="${px(up)}" r="4" fill="${out ? "#fff" : "#000"}" stroke="#000"/>`;
})}
${jarLabels.map((one) => markup`<text x="${px(one.x)}" y="${px(one.y)}" ${halo}>${one.text}</text>`)}
${chart.marks.map(({ a, b }, i) => {
  const one = markLabels[i]!;
  return markup`<path d="M${px(x.at(a) - 8)} ${px(y.at(b))}h16M${px(x.at(a))} ${px(y.at(b) - 8)}v16" stroke="#000" stroke-width="2.4"/><text x="${px(one.x)}" y="${px(one.y)}" text-anchor="middle" font-weight="700" ${halo}>${one.text}</text>`;
})}`,
  };
}

interface LevelLook {
  level: number;
  label: string;
  look: Markup;
  /** where along the line its name would stand best, as a share of it */
  place: number;
  named?: boolean;
}

/** Levels as thin lines and targets as dashed ones, each with its value on itself; a frame around what was tested. */
function surfaceLines(
  surface: PrintedSurface,
  x: Axis,
  y: Axis,
  room: ReturnType<typeof labelRoom>,
  number: (value: number) => string,
): Markup {
  const { rangeA, rangeB } = surface;
  const across = (share: number) => x.at(rangeA.low + (rangeA.high - rangeA.low) * share);
  const up = (share: number) => y.at(rangeB.low + (rangeB.high - rangeB.low) * share);
  /** a line of one level, named where there is room; what has to be named is so in any case */
  const lines = (values: number[], { level, label, look, place, named = false }: LevelLook) => {
    const pieces = levelLines(values, level).map((piece) =>
      piece.map(({ a, b }) => ({ at: across(a), up: up(b) })),
    );
    const longest = [...pieces].sort((a, b) => b.length - a.length)[0] ?? [];
    const wanted = longest.length * place;
    // From the wanted place outwards along the line, to where no other label stands.
    const along = longest
      .map((point, i) => ({ x: point.at, y: point.up + 3, far: Math.abs(i - wanted) }))
      .sort((a, b) => a.far - b.far);
    const anchor = room.find(label, along) ?? (named ? along[0] : null);
    return markup`${pieces.map((piece) => markup`<path d="M${piece.map((point) => `${px(point.at)} ${px(point.up)}`).join("L")}" fill="none" ${look}/>`)}${
      anchor &&
      markup`<text x="${px(anchor.x)}" y="${px(anchor.y)}" text-anchor="middle" ${halo}>${label}</text>`
    }`;
  };
  const thin = markup`stroke="#777" stroke-width="0.9"`;
  const dashed = markup`stroke="#000" stroke-width="1.8" stroke-dasharray="7 4"`;
  const edges = [0.25, 0.35, 0.75, 0.85, 0.5].map((share) => ({ x: across(share), y: up(1) - 4 }));
  const within = room.find(chartWords.lines.testedWithin, edges) ?? edges[0]!;
  // Targets say what they are before levels take the room.
  const limits = surface.limits.map(({ label, values, limit }) =>
    lines(values, { level: limit, label, look: dashed, place: 0.6, named: true }),
  );
  const levels = surface.levels.map((level) =>
    lines(surface.values, { level, label: number(level), look: thin, place: 0.3 }),
  );
  return markup`<path d="M${px(across(0))} ${px(up(0))}H${px(across(1))}V${px(up(1))}H${px(across(0))}Z" fill="none" stroke="#bbb"/>
<text x="${px(within.x)}" y="${px(within.y)}" text-anchor="middle">${chartWords.lines.testedWithin}</text>
${levels}
${limits}`;
}
