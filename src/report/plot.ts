import { chartWords } from "../words/charts.ts";
import { axis, type Axis } from "./axis.ts";
import { spread } from "./dose-axes.ts";
import { paperSize, type Drawing } from "./drawing.ts";
import {
  footRoom,
  frameShapes,
  numbered,
  px,
  shapesMarkup,
  type Look,
  type Place,
  type Shape,
} from "./shapes.ts";

/** One axis of a plot: its ends and what stands along it, quantity and unit. */
export interface PlotAxis {
  title: string;
  low: number;
  high: number;
  log?: boolean;
  /** what stands along an axis that counts no quantity, in place of round values */
  named?: { value: number; text: string }[];
}

/** A plot in the units it is shown in, before anybody has said how large it is and in what ink. */
export interface Plot {
  title: string;
  /** what it shows in one sentence, for whoever cannot see it and for whoever can */
  sentence: string;
  x: PlotAxis;
  y: PlotAxis;
  /** where something was measured; what the axis reaches beyond is marked as not tested */
  tested?: { low: number; high: number };
  bands?: { look: Look; name: string; points: { x: number; low: number; high: number }[] }[];
  levels?: { look: Look; name: string; value: number }[];
  lines?: { look: Look; name: string; points: { x: number; y: number }[] }[];
  /** uprights, each named at its top, one name under the other */
  uprights?: { x: number; name: string; look?: "here" | "today" }[];
  points?: { x: number; y: number; look: "point" | "spare" | "signal"; name: string; says: string }[];
  /** places along a line that are worth reading out though no mark stands there */
  readings?: Reading[];
}

/** A place of a plot and what is said of it. */
export interface Reading {
  x: number;
  y: number;
  says: string;
}

/** A plot drawn to a size. */
export interface PlotPicture {
  place: Place;
  shapes: Shape[];
  /** what can be read out, from left to right, in user units */
  readings: Reading[];
}

/** How large a plot is drawn; `left` and `right` are the room beside its plate, where that is not left to the plot. */
export interface PlotSize {
  width: number;
  height: number;
  left?: number;
  right?: number;
}

/** width of one letter, roughly */
const letter = 6;
/** what stands left of the plate, in user units, in every plot that does not say otherwise */
const plotLeft = 64;
const roomAbove = 28;
const namesApart = 13;
/** room that a number takes along each axis */
const tickRoom = { across: 32, up: 20 };
const fewestTicks = 3;
/** share of the width that names may take beside the plate; longer ones stand in it */
const mostBeside = 0.28;
/** how far under its line a name stands that has no room beside the plate; a level's stands on it */
const belowLine = 36;
const onLevel = -5;

/** Places every piece of a plot within its size. */
export function plotPicture(
  plot: Plot,
  { width, height, left = plotLeft, right }: PlotSize,
  number: (value: number) => string,
): PlotPicture {
  const named = namesOf(plot);
  const longest = Math.max(0, ...named.map(({ name }) => name.length));
  const beside = right ?? longest * letter + 12;
  const inside = right === undefined && (longest === 0 || beside > width * mostBeside);
  const place: Place = {
    left,
    right: width - (inside ? 16 : beside),
    top: roomAbove,
    bottom: height - footRoom,
  };
  const most = (room: number, each: number) => Math.max(fewestTicks, Math.floor(room / each));
  const x = axis(
    plot.x.low,
    plot.x.high,
    place.left,
    place.right,
    plot.x.log === true,
    most(place.right - place.left, tickRoom.across),
  );
  const y = axis(
    plot.y.low,
    plot.y.high,
    place.bottom,
    place.top,
    plot.y.log === true,
    most(place.bottom - place.top, tickRoom.up),
  );
  const scale = (one: Axis, { title, named }: PlotAxis) =>
    named ? { axis: one, title, ticks: named } : numbered(one, title, number);
  const at = spread(
    named.map(({ value }) => Math.min(place.bottom, Math.max(place.top, y.at(value)))),
    namesApart,
    place.top,
    place.bottom,
  );
  return {
    place,
    shapes: [
      ...untestedShapes(plot, x, place),
      ...(plot.bands ?? []).map(({ look, points }) => area(points, x, y, look)),
      ...frameShapes(scale(x, plot.x), scale(y, plot.y), place, false),
      ...(plot.levels ?? []).map(({ value, look }): Shape => ({
        kind: "path",
        d: `M${px(place.left)} ${px(y.at(value))}H${px(place.right)}`,
        look,
      })),
      ...(plot.lines ?? []).map(({ points, look }): Shape => ({
        kind: "path",
        d: `M${points.map((point) => `${px(x.at(point.x))} ${px(y.at(point.y))}`).join("L")}`,
        look,
      })),
      ...(plot.uprights ?? []).flatMap((_, i) => uprightShapes(plot.uprights!, i, x, place, width)),
      ...(plot.points ?? []).flatMap((point) => pointShapes(point, x, y, place)),
      ...named.map(({ name, level }, i): Shape => ({
        kind: "text",
        ...(inside
          ? { x: place.right - 4, y: Math.min(place.bottom - 4, at[i]! + (level ? onLevel : belowLine)) }
          : { x: place.right + 6, y: at[i]! + 4 }),
        text: name,
        look: "name",
        anchor: inside ? "end" : "start",
      })),
    ],
    readings: [...(plot.points ?? []), ...(plot.readings ?? [])]
      .map((one) => ({ x: x.at(one.x), y: y.at(one.y), says: one.says }))
      .sort((a, b) => a.x - b.x),
  };
}

/** The plot as it is printed and saved. */
export function plotDrawing(
  plot: Plot,
  number: (value: number) => string,
  size: PlotSize = paperSize,
): Drawing {
  return {
    width: size.width,
    height: size.height,
    label: chartWords.said(plot.title, plot.sentence),
    body: {
      html: shapesMarkup(plotPicture(plot, size, number).shapes)
        .map(({ html }) => html)
        .join("\n"),
    },
  };
}

/** What is named beside the plate, each where it ends. */
function namesOf({ bands = [], levels = [], lines = [] }: Plot): {
  name: string;
  value: number;
  level?: true;
}[] {
  return [
    ...bands.flatMap(({ name, points }) => {
      const end = points.at(-1);
      return end ? [{ name, value: (end.low + end.high) / 2 }] : [];
    }),
    ...levels.map(({ name, value }) => ({ name, value, level: true as const })),
    ...lines.flatMap(({ name, points }) => {
      const end = points.at(-1);
      return end ? [{ name, value: end.y }] : [];
    }),
  ].filter(({ name }) => name !== "");
}

function untestedShapes({ tested }: Plot, x: Axis, { top, bottom }: Place): Shape[] {
  if (!tested) return [];
  const says = chartWords.lines.untested;
  return [
    [x.low, tested.low],
    [tested.high, x.high],
  ].flatMap(([low, high]): Shape[] => {
    const [from, to] = [x.at(low!), x.at(high!)];
    if (to - from < 1) return [];
    return [
      { kind: "path", d: `M${px(from)} ${px(top)}H${px(to)}V${px(bottom)}H${px(from)}Z`, look: "untested" },
      ...(to - from > says.length * letter
        ? [
            {
              kind: "text",
              x: (from + to) / 2,
              y: bottom - 6,
              text: says,
              look: "name",
              anchor: "middle",
            } as const,
          ]
        : []),
    ];
  });
}

function area(points: { x: number; low: number; high: number }[], x: Axis, y: Axis, look: Look): Shape {
  const inside = (value: number) => Math.min(y.high, Math.max(y.low, value));
  const up = points.map((one) => `${px(x.at(one.x))} ${px(y.at(inside(one.high)))}`);
  const down = points.map((one) => `${px(x.at(one.x))} ${px(y.at(inside(one.low)))}`).reverse();
  return { kind: "path", d: `M${[...up, ...down].join("L")}Z`, look };
}

function uprightShapes(
  uprights: NonNullable<Plot["uprights"]>,
  index: number,
  x: Axis,
  { left, right, top, bottom }: Place,
  most: number,
): Shape[] {
  const one = uprights[index]!;
  const at = x.at(one.x);
  const length = one.name.length * letter;
  // Towards the middle, unless another upright would go through the name there and none does on the other side.
  const clear = (side: number) => {
    const [from, to] = side < 0 ? [at - 5 - length, at - 5] : [at + 5, at + 5 + length];
    const through = uprights.some((other) => other !== one && x.at(other.x) > from && x.at(other.x) < to);
    return from >= left && to <= most && !through;
  };
  const inwards = at > (left + right) / 2 ? -5 : 5;
  const beside = !clear(inwards) && clear(-inwards) ? -inwards : inwards;
  return [
    { kind: "path", d: `M${px(at)} ${px(top)}V${px(bottom)}`, look: one.look ?? "here" },
    {
      kind: "text",
      x: at + beside,
      y: top + 10 + index * namesApart,
      text: one.name,
      look: "name",
      anchor: beside < 0 ? "end" : "start",
    },
  ];
}

function pointShapes(
  point: NonNullable<Plot["points"]>[number],
  x: Axis,
  y: Axis,
  { right }: Place,
): Shape[] {
  const [at, up] = [x.at(point.x), y.at(point.y)];
  const d =
    point.look === "signal"
      ? `M${px(at - 5)} ${px(up - 5)}h10v10h-10Z`
      : `M${px(at - 4)} ${px(up)}a4 4 0 1 0 8 0a4 4 0 1 0 -8 0Z`;
  const beside = at + 8 + point.name.length * letter > right ? -7 : 7;
  return [
    { kind: "path", d, look: point.look, title: point.says },
    ...(point.name === ""
      ? []
      : [
          {
            kind: "text",
            x: at + beside,
            y: up - 5,
            text: point.name,
            look: "name",
            anchor: beside < 0 ? "end" : "start",
          } as const,
        ]),
  ];
}
