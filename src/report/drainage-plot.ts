import { chartWords } from "../words/charts.ts";
import { jarDetailsWords } from "../words/jar-details.ts";
import type { Plot } from "./plot.ts";

/** marks that can be named without running into each other */
const mostNames = 8;

/** What drained from a jar against time. */
export function drainagePlot(
  jar: string,
  points: { atS: number; ml: number }[],
  number: (value: number) => string,
): Plot {
  const words = jarDetailsWords.drainage;
  const sorted = [...points].sort((a, b) => a.atS - b.atS);
  const says = ({ ml, atS }: { atS: number; ml: number }) => words.point(number(ml), number(atS));
  const [first, last] = [sorted[0]!, sorted.at(-1)!];
  return {
    title: words.title(jar),
    sentence: words.drained(jar, chartWords.range(says(first), says(last))),
    x: { title: words.time, low: 0, high: last.atS * 1.05 || 1 },
    y: { title: words.filtrate, low: 0, high: Math.max(1, ...sorted.map(({ ml }) => ml)) * 1.15 },
    lines: [{ look: "path", name: "", points: sorted.map(({ atS, ml }) => ({ x: atS, y: ml })) }],
    points: sorted.map((point) => ({
      x: point.atS,
      y: point.ml,
      look: "point",
      name: sorted.length > mostNames ? "" : number(point.ml),
      says: says(point),
    })),
  };
}
