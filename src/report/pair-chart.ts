import { axis } from "./axis.ts";
import { markup, type Markup } from "./markup.ts";

/** The pairs of doses tested, each with its jar and reading, and the pairs that matter. */
export interface PairChart {
  sentence: string;
  labelA: string;
  labelB: string;
  points: { a: number; b: number; label: string; leftOut: boolean }[];
  marks: { a: number; b: number; label: string }[];
}

const width = 660;
const height = 300;
const left = 56;
const right = width - 70;
const top = 18;
const bottom = height - 44;
const px = (value: number) => String(Math.round(value * 10) / 10);

/** The plane of both doses with its jars, as SVG. */
export function pairChart(chart: PairChart, number: (value: number) => string): Markup {
  const all = [...chart.points, ...chart.marks];
  const top2 = (values: number[]) => Math.max(...values, 0) * 1.08 || 1;
  const x = axis(0, top2(all.map(({ a }) => a)), left, right, false);
  const y = axis(0, top2(all.map(({ b }) => b)), bottom, top, false);
  // Jars at one pair share a marker; their labels stand beside it, one under the other.
  const places = new Map<string, typeof chart.points>();
  for (const point of chart.points) {
    const key = `${px(x.at(point.a))} ${px(y.at(point.b))}`;
    places.set(key, [...(places.get(key) ?? []), point]);
  }
  return markup`<svg viewBox="0 0 ${String(width)} ${String(height)}" role="img" aria-label="${`Pairs of doses tested. ${chart.sentence}`}" font-size="11" fill="#000">
<g stroke="#000" fill="none"><path d="M${px(left)} ${px(top)}V${px(bottom)}H${px(right)}"/>${x.ticks.map((at) => markup`<path d="M${px(x.at(at))} ${px(bottom)}v5"/>`)}${y.ticks.map((at) => markup`<path d="M${px(left)} ${px(y.at(at))}h-5"/>`)}</g>
<g text-anchor="middle">${x.ticks.map((at) => markup`<text x="${px(x.at(at))}" y="${px(bottom + 17)}">${number(at)}</text>`)}<text x="${px((left + right) / 2)}" y="${px(height - 8)}">${chart.labelA}</text>
<text transform="rotate(-90 14 ${px((top + bottom) / 2)})" x="14" y="${px((top + bottom) / 2)}">${chart.labelB}</text></g>
<g text-anchor="end">${y.ticks.map((at) => markup`<text x="${px(left - 8)}" y="${px(y.at(at) + 4)}">${number(at)}</text>`)}</g>
${[...places.values()].map((points) => {
  const [first] = points;
  const [at, up] = [x.at(first!.a), y.at(first!.b)];
  const out = points.every(({ leftOut }) => leftOut);
  return markup`<circle cx="${px(at)}" cy="${px(up)}" r="4" fill="${out ? "#fff" : "#000"}" stroke="#000"/>${points.map(({ label }, i) => markup`<text x="${px(at + 7)}" y="${px(up + 4 + i * 11)}" font-size="10">${label}</text>`)}`;
})}
${chart.marks.map(({ a, b, label }, i) => {
  const [at, up] = [x.at(a), y.at(b)];
  return markup`<path d="M${px(at - 8)} ${px(up)}h16M${px(at)} ${px(up - 8)}v16" stroke="#000" stroke-width="2.4"/><text x="${px(at)}" y="${px(up + (i % 2 === 0 ? -12 : 20))}" text-anchor="middle" font-weight="700">${label}</text>`;
})}
</svg>`;
}
