import { filtrationOf } from "../responses/srf.ts";
import type { RecordOf } from "../study/schema/records.ts";
import { jarDetailsWords } from "../words/jar-details.ts";
import type { Plot } from "./plot.ts";

export type FiltrationTest = Extract<RecordOf<"reading">["result"], { kind: "srf" }>;

/** Numbers as text: entered ones, derived ones, and those with a fixed count of decimals. */
export interface PlotNumbers {
  entry(value: number): string;
  plain(value: number): string;
  fixed(value: number, decimals: number): string;
}

/** Every pair of a filtration test as it is plotted; counted from 1. */
export function filtrationPoints({ points, firstUsed, lastUsed }: FiltrationTest) {
  return points.map(({ volumeMl, seconds }, i) => ({
    number: i + 1,
    volumeMl,
    ratio: seconds / volumeMl,
    used: i + 1 >= firstUsed && i + 1 <= lastUsed,
  }));
}

/** A filtration test, t/V against V, with the line through its straight part. */
export function filtrationPlot(jar: string, test: FiltrationTest, write: PlotNumbers): Plot {
  const words = jarDetailsWords.filtration;
  const points = filtrationPoints(test);
  const fitted = filtrationOf(test);
  const used = points.filter((point) => point.used);
  // slope is in s/m6 and intercept in s/m3: per mL here
  const ends = fitted.ok
    ? [used[0]!, used.at(-1)!].map(({ volumeMl }) => ({
        x: volumeMl,
        y: fitted.value.slope * 1e-12 * volumeMl + fitted.value.intercept * 1e-6,
      }))
    : [];
  return {
    title: words.ofJar(jar),
    sentence: fitted.ok
      ? words.fitted(
          test.firstUsed,
          test.lastUsed,
          write.fixed(fitted.value.r2, 4),
          write.plain(fitted.value.srfMPerKg / 1e12),
        )
      : words.refused(fitted.message),
    x: { title: words.filtrate, low: 0, high: Math.max(...points.map(({ volumeMl }) => volumeMl)) * 1.05 },
    y: { title: words.ratio, low: 0, high: Math.max(...points.map(({ ratio }) => ratio)) * 1.1 },
    lines: ends.length > 0 ? [{ look: "line", name: words.straight, points: ends }] : [],
    points: points.map((point) => ({
      x: point.volumeMl,
      y: point.ratio,
      look: point.used ? "point" : "spare",
      name: "",
      says: words.point(point.number, write.entry(point.volumeMl), write.plain(point.ratio)),
    })),
  };
}
