import { chartWords } from "../words/charts.ts";
import { doseReportWords } from "../words/dose-report.ts";
import { doseRoomWords } from "../words/dose-room.ts";
import { plotReportWords } from "../words/plot-report.ts";
import { costPlot, costSamples } from "./cost-plot.ts";
import { paperSize } from "./drawing.ts";
import { besideChoice, limitsPlot, limitsSize, markWithin, type LimitsShown } from "./limits-plot.ts";
import type { Markup } from "./markup.ts";
import { plotFigure } from "./plot-figure.ts";
import { approvedDoseOf, letterOf, type SeriesReport } from "./series-report.ts";
import type { PaperWords } from "./words.ts";

/** Where each limit holds and the working window, with the approved dose and today's; nothing without a limit judged. */
export function limitsFigure(one: SeriesReport, words: PaperWords): Markup | null {
  const { choice, targets } = one;
  if (!choice || choice.bars.length === 0) return null;
  const spans = choice.window.kind === "window" ? choice.window.spans : [];
  const text = spans.map((span) => words.range(span.low, span.high, "doseKgPerT")).join("; ");
  const shown: LimitsShown = {
    tested: choice.tested,
    bars: choice.bars,
    names: choice.bars.map(({ limit }) => limit.words),
    window: spans,
    sentence: choice.window.kind === "window" ? doseReportWords.limits.window(text) : choice.window.sentence,
    doseAxis: chartWords.doseOnPaper(letterOf(one)),
    marks: [
      ...markWithin(choice.tested, approvedDoseOf(one), "here", (dose) =>
        chartWords.approved(words.number(dose, 3)),
      ),
      ...markWithin(choice.tested, targets?.presentDoseKgPerT ?? null, "today", (dose) =>
        chartWords.plantToday(words.number(dose, 3)),
      ),
    ],
  };
  return plotFigure(limitsPlot(shown), plotReportWords.limits, words, limitsSize(shown));
}

/** What a tonne of dry solids costs at every dose tested; nothing where the polymer has no price. */
export function costFigure(one: SeriesReport, currency: string, words: PaperWords): Markup | null {
  if (!one.choice) return null;
  const samples = costSamples(one.choice.tested, one.choice.cost);
  if (!samples.every(({ total }) => total !== null && Number.isFinite(total))) return null;
  const plot = costPlot(samples, approvedDoseOf(one), {
    doseAxis: chartWords.doseOnPaper(letterOf(one)),
    currency,
    number: (value) => words.number(value),
    dose: (dose) => words.both(dose, "doseKgPerT", 3),
    money: (value) => (value === null ? doseRoomWords.notPriced : `${words.money(value)} ${currency}`),
  });
  return plotFigure(plot, plotReportWords.cost, words, { ...paperSize, ...besideChoice, height: 180 });
}
