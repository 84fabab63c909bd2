import type { ReportedFit, ResponseAnalysis } from "../curve/analyse-types.ts";
import { responseWords } from "../responses/registry.ts";
import type { FitReport } from "../curve/types.ts";
import type { SurfaceReport } from "../curve/surface.ts";
import { warningWords } from "../words/warnings.ts";
import { residualsBlock, slicesBlock } from "./fit-plots.ts";
import { printedCharts } from "./chart-data.ts";
import { chartLegend, doseChart } from "./dose-chart.ts";
import { markup, type Markup } from "./markup.ts";
import { inlineSvg } from "./drawing.ts";
import { pairDrawing, type PrintedSurface } from "./pair-chart.ts";
import { pairGrid, type PairGrid } from "./contour-grid.ts";
import { surfaceBounds } from "../curve/surface-bands.ts";
import { approvedDoseOf, type SeriesReport } from "./series-report.ts";
import { chanceWords } from "../study/derive/number-words.ts";
import { aiccDecimals } from "../units/digits.ts";
import { unitText } from "../units/display.ts";
import { table } from "./table.ts";
import type { PaperWords } from "./words.ts";
import { doseReportWords, modelTitle } from "../words/dose-report.ts";
import { onPaperWords } from "../words/on-paper.ts";

/** Each response's curve with its jars, the sentence that says its dose, and the models compared. */
export function curvesSection(one: SeriesReport, words: PaperWords): Markup {
  const { analysis, trouble, chain, workings, choice, targets } = one;
  if (!analysis)
    return markup`<h3>${doseReportWords.curves}</h3><p class="gap">${doseReportWords.noCurves(trouble || doseReportWords.nothingRead)}</p>`;
  if (analysis.axis === "surface")
    return markup`<h3>${doseReportWords.curves}</h3>${analysis.responses.map((response) => surfaceBlock(one, response, words))}`;
  const charts = printedCharts(
    chain,
    workings,
    choice,
    analysis.axis,
    {
      approved: approvedDoseOf(one),
      present: targets?.presentDoseKgPerT ?? null,
    },
    one.runs,
    (value) => words.givenBare(value, "ratio"),
  );
  return markup`<h3>${doseReportWords.curves}</h3>${analysis.responses.map((response) => {
    const label = responseWords[response.name]?.label ?? response.name;
    const chart = charts.find(({ title }) => title === label);
    return markup`<section><div class="whole"><h4>${label}</h4>
<p>${response.verdict.sentence}${usWords(response, words)}</p>
${chart && markup`<figure>${doseChart(chart, (value) => words.number(value, 3))}<figcaption>${chartLegend(chart)}</figcaption></figure>`}</div>
${warningLines(response)}
${modelTable(response, words)}</section>`;
  })}${residualsBlock(one, words)}`;
}

/** The dose of a verdict in US customary units, since its sentence tells it in metric ones. */
function usWords({ verdict }: ResponseAnalysis, words: PaperWords): string {
  const { dose, sentence, sentenceBeside = sentence } = verdict;
  if (verdict.kind === "none" || typeof dose !== "number")
    return sentenceBeside === sentence ? "" : ` ${doseReportWords.sentenceInUs(sentenceBeside)}`;
  const [low, high] = [verdict.low, verdict.high].map((value) => (typeof value === "number" ? value : null));
  const write = words.usInterval(dose, low!, high!, "doseKgPerT");
  const end = (value: number | null) => (value === null ? onPaperWords.open : write(value));
  const unit = unitText("doseKgPerT", "us");
  return ` ${doseReportWords.inUs(`${write(dose)} ${unit}`, end(low!), end(high!))}`;
}

function warningLines({ verdict }: ResponseAnalysis): Markup[] {
  return verdict.warnings.map((warning) => markup`<p class="warning">${warningWords[warning]}</p>`);
}

function isCurve(fit: ReportedFit): fit is FitReport & { zeroDose?: "in" | "out" } {
  return fit.model !== "surface";
}

function modelTable({ fits, suggested, scale }: ResponseAnalysis, words: PaperWords): Markup {
  const rows = fits.filter(isCurve).sort((a, b) => (a.aicc ?? Infinity) - (b.aicc ?? Infinity));
  const maybe = (value: number | null) => (value === null ? "–" : words.number(value));
  return table(
    scale === "log" ? doseReportWords.table.onLog : doseReportWords.table.onPlain,
    [
      { head: doseReportWords.table.model },
      { head: doseReportWords.table.jars, number: true },
      { head: doseReportWords.table.scatter, number: true },
      { head: "R²", number: true },
      { head: "AICc", number: true },
      { head: doseReportWords.table.lackOfFit, number: true },
      { head: doseReportWords.table.dose },
      { head: "", whole: true },
    ],
    rows.map((fit) => [
      fit.zeroDose === "in" ? doseReportWords.withNoPolymer(modelTitle(fit.model)) : modelTitle(fit.model),
      String(fit.n),
      maybe(fit.residualSd),
      fit.r2 === null ? "–" : words.fixed(fit.r2, 3),
      fit.status === "converged" && fit.aicc === null
        ? doseReportWords.table.notRanked
        : fit.aicc === null
          ? "–"
          : words.fixed(fit.aicc, aiccDecimals),
      fit.lackOfFit ? chanceWords(fit.lackOfFit.p, words.mark) : "–",
      doseWords(fit, words),
      fit.status === "converged"
        ? fit.model === suggested && fit.zeroDose !== "in"
          ? doseReportWords.table.suggested
          : ""
        : doseReportWords.statuses[fit.status],
    ]),
    doseReportWords.table.none,
  );
}

function doseWords({ optimum }: FitReport, words: PaperWords): string {
  if (!optimum) return "–";
  const found = optimum.intervals.find(({ method }) => method === "profile");
  const write = words.bareInterval(
    optimum.dose,
    found?.kind === "interval" ? found.low : null,
    found?.kind === "interval" ? found.high : null,
    "doseKgPerT",
  );
  const text = (value: number | null) => (value === null ? onPaperWords.open : write(value));
  const dose = optimum.inside ? text(optimum.dose) : doseReportWords.outsideTested(text(optimum.dose));
  if (!found) return dose;
  if (found.kind === "all") return doseReportWords.notDetermined(dose);
  if (found.kind === "complement") return doseReportWords.upToOrFrom(dose, text(found.low), text(found.high));
  return doseReportWords.fromTo(dose, text(found.low), text(found.high));
}

function surfaceBlock(one: SeriesReport, response: ResponseAnalysis, words: PaperWords): Markup {
  const { chain, decision } = one;
  const label = responseWords[response.name]?.label ?? response.name;
  const points = chain.jars.flatMap((jar) => {
    const readings = jar.responses[response.name] ?? [];
    const [a, b] = [jar.doseA.value, jar.doseB.value];
    if (a === null || b === null || readings.length === 0) return [];
    const text = readings.map(({ value }) => words.number(value, 3)).join(", ");
    return [
      { a, b, label: doseReportWords.surface.jar(jar.jar.label, text), leftOut: jar.jar.leftOut !== null },
    ];
  });
  const { verdict } = response;
  const best = verdict.dose !== null && typeof verdict.dose === "object" ? verdict.dose : null;
  const picked = decision?.decision;
  const fitted = one.workings.find(({ analysis }) => analysis.name === response.name)?.surface ?? null;
  const grid = fitted && pairGrid(fitted);
  const chart = {
    surface: grid && { ...grid, limits: targetLines(one, grid) },
    sentence: verdict.sentence,
    labelA: doseReportWords.surface.doseA,
    labelB: doseReportWords.surface.doseB,
    points,
    marks: [
      ...(best ? [{ ...best, label: doseReportWords.surface.best }] : []),
      ...(picked && picked.doseBKgPerT !== null
        ? [{ a: picked.doseAKgPerT, b: picked.doseBKgPerT, label: doseReportWords.surface.approved }]
        : []),
    ],
  };
  const surface = response.fits.find((fit): fit is SurfaceReport => fit.model === "surface");
  return markup`<section><div class="whole"><h4>${label}</h4><p>${verdict.sentence}${usWords(response, words)}</p>
<figure>${inlineSvg(pairDrawing(chart, (value) => words.number(value, 3)))}<figcaption>${doseReportWords.surface.legend(label)}</figcaption></figure></div>
${warningLines(response)}
${slicesBlock(one, response, fitted, words)}
${surface ? surfaceTable(surface, words) : markup`<p class="gap">${doseReportWords.surface.none}</p>`}</section>`;
}

/** Every target of a two-polymer series on the bound of its own surface. */
function targetLines({ pair }: SeriesReport, grid: PairGrid): PrintedSurface["limits"] {
  return (pair?.limits ?? []).flatMap(({ limit, surface }) =>
    surface
      ? [
          {
            label: limit.words,
            limit: limit.value,
            values: grid.doses.map(({ a, b }) => {
              const bounds = surfaceBounds(surface, a, b);
              return limit.side === "at-most" ? bounds.high : bounds.low;
            }),
          },
        ]
      : [],
  );
}

/** A term and its error, two places further than the error alone would ask: the terms belong together. */
function termWords(value: number, se: number | null, words: PaperWords): [string, string] {
  if (se === null) return [words.number(value, 4), "–"];
  const write = words.interval(value, value - se / 100, value + se / 100);
  return [write(value), write(se)];
}

function surfaceTable(surface: SurfaceReport, words: PaperWords): Markup {
  const { stationary } = surface;
  return markup`${table(
    surface.scale === "log" ? doseReportWords.surface.onLog : doseReportWords.surface.onPlain,
    [
      { head: doseReportWords.surface.term },
      { head: doseReportWords.surface.value, number: true },
      { head: doseReportWords.surface.error, number: true },
    ],
    surface.parameters.map(({ name, value, se }) => [name, ...termWords(value, se, words)]),
    surface.status === "converged"
      ? doseReportWords.surface.noTerms
      : doseReportWords.statuses[surface.status],
  )}${
    stationary &&
    markup`<p>${doseReportWords.surface[stationary.inside ? "stationaryInside" : "stationaryOutside"](
      words.both(stationary.x1, "doseKgPerT"),
      words.both(stationary.x2, "doseKgPerT"),
      doseReportWords.surface.kinds[stationary.kind],
    )}</p>`
  }`;
}
