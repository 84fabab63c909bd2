import type { SeriesChain } from "../study/derive/jars.ts";
import { chartWords } from "../words/charts.ts";
import { plotReportWords } from "../words/plot-report.ts";
import { drainagePlot, type Drainage } from "./drainage-plot.ts";
import { paperSize } from "./drawing.ts";
import { filtrationPlot, type FiltrationTest } from "./filtration-plot.ts";
import { markup, type Markup } from "./markup.ts";
import { plotFigure, plotPairs } from "./plot-figure.ts";
import { table } from "./table.ts";
import type { PaperWords } from "./words.ts";

/** curves that can be named in one drawing */
const mostCurves = 14;

/** What drained from the jars over time, where it was read at more than one time; nothing elsewhere. */
export function drainageBlock({ jars }: SeriesChain, words: PaperWords): Markup | null {
  const curves = jars.flatMap(({ jar, readings }): Drainage[] => {
    const points = readings.flatMap(({ result, leftOut }) =>
      result.kind === "drained" && leftOut === null ? [{ atS: result.atS, ml: result.ml }] : [],
    );
    const times = new Set(points.map(({ atS }) => atS));
    return times.size > 1
      ? [{ jar: jar.leftOut === null ? jar.label : chartWords.jarOut(jar.label), points }]
      : [];
  });
  if (curves.length === 0) return null;
  const count = Math.ceil(curves.length / mostCurves);
  const each = Math.ceil(curves.length / count);
  const sheets = Array.from({ length: count }, (_, i) => curves.slice(i * each, (i + 1) * each));
  return markup`<section><h4>${plotReportWords.drainage}</h4>${sheets.map((sheet) =>
    plotFigure(
      drainagePlot(sheet, (value) => words.entered(value)),
      plotReportWords.inJarTable,
      words,
      { ...paperSize, height: Math.max(150, 90 + sheet.length * 13) },
    ),
  )}</section>`;
}

/** Every filtration test with its straight part, and the pairs it was read from; nothing without any. */
export function filtrationBlock({ jars }: SeriesChain, words: PaperWords): Markup | null {
  const tests = jars.flatMap(({ jar, readings }) =>
    readings.flatMap(({ result, leftOut }) =>
      result.kind === "srf" && leftOut === null ? [{ jar: jar.label, test: result }] : [],
    ),
  );
  if (tests.length === 0) return null;
  const says = plotReportWords.filtration;
  const numbers = {
    entry: (value: number) => words.entered(value),
    plain: (value: number) => words.number(value),
    fixed: words.fixed,
  };
  return markup`<section><h4>${says.title}</h4>
${plotPairs(
  tests.map(({ jar, test }) => ({ plot: filtrationPlot(jar, test, numbers) })),
  words,
)}<p>${says.filled}</p>
${filtrationTable(tests, words)}</section>`;
}

function filtrationTable(tests: { jar: string; test: FiltrationTest }[], words: PaperWords): Markup {
  const says = plotReportWords.filtration;
  return table(
    says.caption,
    [{ head: says.jar }, { head: says.pairs }, { head: says.straight }],
    tests.map(({ jar, test }) => [
      jar,
      test.points
        .map(({ volumeMl, seconds }) => says.pair(words.entered(volumeMl), words.entered(seconds)))
        .join("; "),
      says.points(test.firstUsed, test.lastUsed),
    ]),
    says.none,
  );
}
