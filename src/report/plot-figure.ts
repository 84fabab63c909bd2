import { halfSize, inlineSvg } from "./drawing.ts";
import { markup, type Markup } from "./markup.ts";
import { plotDrawing, type Plot, type PlotSize } from "./plot.ts";
import type { PaperWords } from "./words.ts";

/** room left of the plate of a small plot */
const smallLeft = 46;

/** A plot on paper with what it shows in one sentence; `where` says what its signs mean and where its numbers stand. */
export function plotFigure(plot: Plot, where: string, words: PaperWords, size?: PlotSize): Markup {
  const sentence = plot.sentence.endsWith(".") ? plot.sentence : `${plot.sentence}.`;
  return markup`<figure>${inlineSvg(plotDrawing(plot, (value) => words.number(value, 3), size))}<figcaption><strong>${plot.title}.</strong> ${sentence}${where && ` ${where}`}</figcaption></figure>`;
}

/** Small plots, two in a row. */
export function plotPairs(plots: { plot: Plot; where?: string }[], words: PaperWords): Markup {
  return markup`<div class="plots">${plots.map(({ plot, where = "" }) =>
    plotFigure(plot, where, words, { ...halfSize, left: smallLeft }),
  )}</div>`;
}
