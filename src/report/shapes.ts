import type { Axis } from "./axis.ts";
import { markup, type Markup } from "./markup.ts";

/** What a shape is; paper gives each its ink below, the screen by a class of the same name. */
export type Look =
  | "axis"
  | "zero"
  | "limit"
  | "line"
  | "path"
  | "here"
  | "today"
  | "band"
  | "untested"
  | "layer-1"
  | "layer-2"
  | "layer-3"
  | "point"
  | "spare"
  | "signal";

/** One piece of a drawing in user units, not yet in any ink. */
export type Shape =
  | { kind: "path"; d: string; look: Look; title?: string }
  | {
      kind: "text";
      x: number;
      y: number;
      text: string;
      look: "tick" | "title" | "name";
      anchor: "start" | "middle" | "end";
      /** read from below upwards, along an axis that stands */
      turned?: boolean;
    };

const ink: Record<Look, Markup> = {
  axis: markup`fill="none" stroke="#000" stroke-width="1"`,
  zero: markup`fill="none" stroke="#000" stroke-width="1"`,
  limit: markup`fill="none" stroke="#000" stroke-width="1" stroke-dasharray="6 4"`,
  line: markup`fill="none" stroke="#000" stroke-width="2"`,
  path: markup`fill="none" stroke="#000" stroke-width="1.2"`,
  here: markup`fill="none" stroke="#000" stroke-width="2.4"`,
  today: markup`fill="none" stroke="#000" stroke-width="1.6" stroke-dasharray="2 3"`,
  band: markup`fill="#dcdcdc"`,
  untested: markup`fill="#f0f0f0"`,
  "layer-1": markup`fill="#cfcfcf"`,
  "layer-2": markup`fill="#9a9a9a"`,
  "layer-3": markup`fill="#4a4a4a"`,
  point: markup`fill="#000" stroke="#fff" stroke-width="0.6"`,
  spare: markup`fill="#fff" stroke="#000" stroke-width="1.2"`,
  signal: markup`fill="#fff" stroke="#000" stroke-width="2"`,
};

/** A number of user units as it stands in a drawing. */
export const px = (value: number) => String(Math.round(value * 10) / 10);

/** white around letters, so that they read over lines and bands */
export const halo = markup`stroke="#fff" stroke-width="3" paint-order="stroke"`;

/** Shapes as they are printed: black on white, with no style from elsewhere. */
export function shapesMarkup(shapes: Shape[]): Markup[] {
  return shapes.map((shape) => {
    if (shape.kind === "path")
      return markup`<path d="${shape.d}" ${ink[shape.look]}>${shape.title !== undefined && markup`<title>${shape.title}</title>`}</path>`;
    const [x, y] = [px(shape.x), px(shape.y)];
    return markup`<text x="${x}" y="${y}" text-anchor="${shape.anchor}" ${shape.turned && markup`transform="rotate(-90 ${x} ${y})"`} ${shape.look === "name" && halo}>${shape.text}</text>`;
  });
}

/** Where the axes of a drawing stand. */
export interface Place {
  left: number;
  right: number;
  top: number;
  bottom: number;
}

/** One axis with what is said of it: its title, quantity and unit, and the words at its ticks. */
export interface Scale {
  axis: Axis;
  title: string;
  ticks: { value: number; text: string }[];
}

/** An axis whose ticks are its own round values. */
export function numbered(axis: Axis, title: string, number: (value: number) => string): Scale {
  return { axis, title, ticks: axis.ticks.map((value) => ({ value, text: number(value) })) };
}

/** room under the plate: ticks with their numbers, then the title */
export const footRoom = 40;

/** The frame every drawing has: two axes, their ticks with numbers, and what each axis is. */
export function frameShapes(x: Scale, y: Scale, { left, right, top, bottom }: Place, turned = true): Shape[] {
  const middle = (top + bottom) / 2;
  return [
    { kind: "path", d: `M${px(left)} ${px(top)}V${px(bottom)}H${px(right)}`, look: "axis" },
    ...x.ticks.flatMap(({ value, text }): Shape[] => [
      { kind: "path", d: `M${px(x.axis.at(value))} ${px(bottom)}v5`, look: "axis" },
      { kind: "text", x: x.axis.at(value), y: bottom + 17, text, look: "tick", anchor: "middle" },
    ]),
    ...y.ticks.flatMap(({ value, text }): Shape[] => [
      { kind: "path", d: `M${px(left)} ${px(y.axis.at(value))}h-5`, look: "axis" },
      { kind: "text", x: left - 8, y: y.axis.at(value) + 4, text, look: "tick", anchor: "end" },
    ]),
    {
      kind: "text",
      x: (left + right) / 2,
      y: bottom + footRoom - 6,
      text: x.title,
      look: "title",
      anchor: "middle",
    },
    turned
      ? { kind: "text", x: 14, y: middle, text: y.title, look: "title", anchor: "middle", turned: true }
      : { kind: "text", x: 6, y: top - 12, text: y.title, look: "title", anchor: "start" },
  ];
}
