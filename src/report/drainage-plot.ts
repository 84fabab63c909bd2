import { chartWords } from "../words/charts.ts";
import { jarDetailsWords } from "../words/jar-details.ts";
import type { Plot } from "./plot.ts";

/** marks that can be named without running into each other */
const mostNames = 8;

/** What drained from one jar, and when. */
export interface Drainage {
  jar: string;
  points: { atS: number; ml: number }[];
}

/** What drained from jars against time: one with its volumes, or several beside each other, each named where it ends. */
export function drainagePlot(jars: Drainage[], number: (value: number) => string): Plot {
  const words = jarDetailsWords.drainage;
  const sorted = jars.map(({ jar, points }) => ({ jar, points: [...points].sort((a, b) => a.atS - b.atS) }));
  const [only] = sorted.length === 1 ? sorted : [];
  const all = sorted.flatMap(({ points }) => points);
  const says = ({ ml, atS }: { atS: number; ml: number }) => words.point(number(ml), number(atS));
  const ends = sorted.map(({ jar, points }) => ({ jar, last: points.at(-1)! }));
  ends.sort((a, b) => a.last.ml - b.last.ml);
  const [least, most] = [ends[0]!, ends.at(-1)!];
  return {
    title: only ? words.title(only.jar) : words.together,
    sentence: only
      ? words.drained(only.jar, chartWords.range(says(only.points[0]!), says(most.last)))
      : words.mostAndLeast(most.jar, says(most.last), least.jar, says(least.last)),
    x: { title: words.time, low: 0, high: Math.max(...all.map(({ atS }) => atS)) * 1.05 || 1 },
    y: { title: words.filtrate, low: 0, high: Math.max(1, ...all.map(({ ml }) => ml)) * 1.15 },
    lines: sorted.map(({ jar, points }) => ({
      look: "path",
      name: only ? "" : words.jar(jar),
      points: points.map(({ atS, ml }) => ({ x: atS, y: ml })),
    })),
    points: sorted.flatMap(({ jar, points }) =>
      points.map((point) => ({
        x: point.atS,
        y: point.ml,
        look: "point",
        name: !only || points.length > mostNames ? "" : number(point.ml),
        says: only ? says(point) : words.ofJar(jar, says(point)),
      })),
    ),
  };
}
