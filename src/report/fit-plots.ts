import { responseWords, unitOf } from "../responses/registry.ts";
import { analyseRows } from "../study/derive/points.ts";
import type { ResponseAnalysis } from "../curve/analyse-types.ts";
import type { SurfaceFit } from "../curve/surface.ts";
import { chartWords } from "../words/charts.ts";
import { curvesRoomWords } from "../words/curves-room.ts";
import { modelTitle } from "../words/dose-report.ts";
import { plotReportWords } from "../words/plot-report.ts";
import { markup, type Markup } from "./markup.ts";
import { plotPairs } from "./plot-figure.ts";
import { far, residualPlot, residualsOf } from "./residual-plot.ts";
import { letterOf, type SeriesReport } from "./series-report.ts";
import { sliceCurve, slicePlot } from "./slice-plot.ts";
import type { PaperWords } from "./words.ts";

/** Every jar's distance from the model suggested for each response; nothing where no model is suggested. */
export function residualsBlock(one: SeriesReport, words: PaperWords): Markup | null {
  const { chain, workings } = one;
  const { labels } = analyseRows(chain);
  const says = plotReportWords.residuals;
  const plots = workings.flatMap(({ analysis: { name, suggested }, fit }) => {
    if (!fit || fit.report.status !== "converged" || fit.report.model !== suggested) return [];
    const residuals = residualsOf(
      fit,
      (row) => labels.get(row) ?? String(row),
      (dose) => dose,
    );
    const title = `${responseWords[name]?.label ?? name}, ${modelTitle(suggested)}`;
    const beyond = residuals
      .filter(({ deviations }) => Math.abs(deviations) > far)
      .map(({ jar, deviations }) => says.jarAt(jar, words.number(deviations, 2)));
    return [
      {
        plot: residualPlot(
          curvesRoomWords.residuals.ofDose(title),
          chartWords.doseOnPaper(letterOf(one)),
          residuals,
          (value, digits) => words.number(value, digits),
        ),
        where: beyond.length > 0 ? says.beyond(beyond) : "",
      },
    ];
  });
  return plots.length === 0
    ? null
    : markup`<section><h4>${says.title}</h4><p>${says.note}</p>${plotPairs(plots, words)}</section>`;
}

/** A surface cut along either dose through the pair that matters most: approved, else by rule, else the best fitted. */
export function slicesBlock(
  one: SeriesReport,
  { name, verdict }: ResponseAnalysis,
  surface: SurfaceFit | null,
  words: PaperWords,
): Markup | null {
  const pair = cutThrough(one, verdict.dose);
  if (!surface || !pair) return null;
  const limit = one.pair?.limits.find((found) => found.limit.response === name)?.limit ?? null;
  const says = plotReportWords.slices;
  const plots = (["a", "b"] as const).map((letter) => {
    const [own, other] = letter === "a" ? (["A", "B"] as const) : (["B", "A"] as const);
    const held = curvesRoomWords.surface.held(
      other,
      words.both(letter === "a" ? pair.b : pair.a, "doseKgPerT"),
    );
    return {
      plot: slicePlot(sliceCurve(surface, letter, pair), own, {
        label: responseWords[name]?.label ?? name,
        unit: unitOf(name, one.chain.series),
        log: surface.scale === "log",
        held,
        limit: limit && { value: limit.value, words: limit.words },
        here: { dose: pair[letter], name: says.mark(words.number(pair[letter], 3)) },
      }),
    };
  });
  return markup`<div class="whole"><p>${says.through[pair.from]}. ${says.where}</p>${plotPairs(plots, words)}</div>`;
}

function cutThrough(
  { decision, pair }: SeriesReport,
  best: ResponseAnalysis["verdict"]["dose"],
): { a: number; b: number; from: "approved" | "cheapest" | "best" } | null {
  const picked = decision?.decision;
  if (picked && picked.doseBKgPerT !== null)
    return { a: picked.doseAKgPerT, b: picked.doseBKgPerT, from: "approved" };
  if (pair?.cheapest && pair.cheapest.kind !== "empty") {
    const { a, b } = pair.cheapest.pair;
    return { a, b, from: "cheapest" };
  }
  return best !== null && typeof best === "object" ? { ...best, from: "best" } : null;
}
