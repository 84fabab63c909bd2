import type { ReportedFit, ResponseAnalysis } from "../curve/analyse-types.ts";
import type { FitReport } from "../curve/types.ts";
import type { SurfaceReport } from "../curve/surface.ts";
import { responseWords } from "../study/derive/choice.ts";
import { warningWords } from "../study/warning-words.ts";
import { printedCharts } from "./chart-data.ts";
import { chartLegend, doseChart } from "./dose-chart.ts";
import { markup, type Markup } from "./markup.ts";
import { inlineSvg } from "./drawing.ts";
import { pairDrawing, type PrintedSurface } from "./pair-chart.ts";
import { pairGrid, type PairGrid } from "./contour-grid.ts";
import { surfaceBounds } from "../curve/surface-bands.ts";
import type { SeriesReport } from "./series-report.ts";
import { toShown } from "../units/display.ts";
import { table } from "./table.ts";
import type { PaperWords } from "./words.ts";

/** Each response's curve with its jars, the sentence that says its dose, and the models compared. */
export function curvesSection(one: SeriesReport, words: PaperWords): Markup {
  const { analysis, trouble, chain, workings, choice, decision, targets } = one;
  if (!analysis)
    return markup`<h3>Curves</h3><p class="gap">No curves: ${trouble || "nothing was read yet"}.</p>`;
  if (analysis.axis === "surface")
    return markup`<h3>Curves</h3>${analysis.responses.map((response) => surfaceBlock(one, response, words))}`;
  const charts = printedCharts(
    chain,
    workings,
    choice,
    analysis.axis,
    {
      approved:
        (analysis.axis === "b" ? decision?.decision.doseBKgPerT : decision?.decision.doseAKgPerT) ?? null,
      present: targets?.presentDoseKgPerT ?? null,
    },
    one.runs,
    (value) => words.number(value, 3),
  );
  return markup`<h3>Curves</h3>${analysis.responses.map((response) => {
    const label = responseWords[response.name]?.label ?? response.name;
    const chart = charts.find(({ title }) => title === label);
    return markup`<section><div class="whole"><h4>${label}</h4>
<p>${response.verdict.sentence}${usWords(response, words)}</p>
${chart && markup`<figure>${doseChart(chart, (value) => words.number(value, 3))}<figcaption>${chartLegend(chart)}</figcaption></figure>`}</div>
${warningLines(response)}
${modelTable(response, words)}</section>`;
  })}`;
}

/** The dose of a verdict in US customary units, since its sentence tells it in metric ones. */
function usWords({ verdict }: ResponseAnalysis, words: PaperWords): string {
  const { dose, low, high } = verdict;
  if (verdict.kind === "none" || typeof dose !== "number") return "";
  const end = (value: unknown) =>
    typeof value === "number" ? words.number(toShown(value, "doseKgPerT", "us"), 3) : "open";
  return ` In US customary units: ${words.one(dose, "doseKgPerT", "us", 3)}, ${end(low)} to ${end(high)}.`;
}

function warningLines({ verdict }: ResponseAnalysis): Markup[] {
  return verdict.warnings.map((warning) => markup`<p class="warning">${warningWords[warning]}</p>`);
}

const statusWords: Record<string, string> = {
  "not-converged": "no fit",
  "too-few-points": "too few jars",
  singular: "not determined",
};

function isCurve(fit: ReportedFit): fit is FitReport & { zeroDose?: "in" | "out" } {
  return fit.model !== "surface";
}

function modelTable({ fits, suggested, scale }: ResponseAnalysis, words: PaperWords): Markup {
  const rows = fits.filter(isCurve).sort((a, b) => (a.aicc ?? Infinity) - (b.aicc ?? Infinity));
  const maybe = (value: number | null, digits = 4) => (value === null ? "–" : words.number(value, digits));
  return table(
    `Models, fitted on the ${scale === "log" ? "natural log" : "plain scale"}; doses in kg/t active`,
    [
      { head: "model" },
      { head: "jars", number: true },
      { head: "scatter", number: true },
      { head: "R²", number: true },
      { head: "AICc", number: true },
      { head: "lack of fit, p", number: true },
      { head: "dose, 95 % by profile" },
      { head: "" },
    ],
    rows.map((fit) => [
      `${fit.model.replaceAll("-", " ")}${fit.zeroDose === "in" ? ", with the no-polymer jars" : ""}`,
      String(fit.n),
      maybe(fit.residualSd, 3),
      maybe(fit.r2 !== null && Math.abs(fit.r2) < 1e-9 ? 0 : fit.r2, 3),
      fit.status === "converged" && fit.aicc === null ? "not ranked: too few jars" : maybe(fit.aicc),
      chanceWords(fit.lackOfFit?.p ?? null, words),
      doseWords(fit, words),
      fit.status === "converged"
        ? fit.model === suggested && fit.zeroDose !== "in"
          ? "suggested"
          : ""
        : (statusWords[fit.status] ?? fit.status),
    ]),
    "none fitted",
  );
}

function chanceWords(p: number | null, words: PaperWords): string {
  if (p === null) return "–";
  return p < 0.001 ? "under 0.001".replace(".", words.mark) : words.number(p, 2);
}

function doseWords({ optimum }: FitReport, words: PaperWords): string {
  if (!optimum) return "–";
  const text = (value: number | null) => (value === null ? "open" : words.number(value, 3));
  const dose = `${text(optimum.dose)}${optimum.inside ? "" : " outside the doses tested"}`;
  const found = optimum.intervals.find(({ method }) => method === "profile");
  if (!found) return dose;
  if (found.kind === "all") return `${dose}, not determined`;
  if (found.kind === "complement") return `${dose}, up to ${text(found.low)} or from ${text(found.high)}`;
  return `${dose}, ${text(found.low)} to ${text(found.high)}`;
}

function surfaceBlock(one: SeriesReport, response: ResponseAnalysis, words: PaperWords): Markup {
  const { chain, decision } = one;
  const label = responseWords[response.name]?.label ?? response.name;
  const points = chain.jars.flatMap((jar) => {
    const readings = jar.responses[response.name] ?? [];
    const [a, b] = [jar.doseA.value, jar.doseB.value];
    if (a === null || b === null || readings.length === 0) return [];
    const text = readings.map(({ value }) => words.number(value, 3)).join(", ");
    return [{ a, b, label: `jar ${jar.jar.label}: ${text}`, leftOut: jar.jar.leftOut !== null }];
  });
  const { verdict } = response;
  const best = verdict.dose !== null && typeof verdict.dose === "object" ? verdict.dose : null;
  const picked = decision?.decision;
  const fitted = one.workings.find(({ analysis }) => analysis.name === response.name)?.surface ?? null;
  const grid = fitted && pairGrid(fitted);
  const chart = {
    surface: grid && { ...grid, limits: targetLines(one, grid) },
    sentence: verdict.sentence,
    labelA: "dose A, kg active per t dry solids",
    labelB: "dose B, kg/t active",
    points,
    marks: [
      ...(best ? [{ ...best, label: "best fitted" }] : []),
      ...(picked && picked.doseBKgPerT !== null
        ? [{ a: picked.doseAKgPerT, b: picked.doseBKgPerT, label: "approved" }]
        : []),
    ],
  };
  const surface = response.fits.find((fit): fit is SurfaceReport => fit.model === "surface");
  return markup`<section><div class="whole"><h4>${label}</h4><p>${verdict.sentence}</p>
<figure>${inlineSvg(pairDrawing(chart, (value) => words.number(value, 3)))}<figcaption>Jars at their doses with ${label.toLowerCase()} as read; thin lines: the fitted surface, dashed: a target at its one-sided 95 % bound.</figcaption></figure></div>
${warningLines(response)}
${surface ? surfaceTable(surface, words) : markup`<p class="gap">No surface was fitted.</p>`}</section>`;
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

function surfaceTable(surface: SurfaceReport, words: PaperWords): Markup {
  const { stationary } = surface;
  return markup`${table(
    `Second-order surface on the ${surface.scale === "log" ? "natural log" : "plain scale"}, in both doses`,
    [{ head: "term" }, { head: "value", number: true }, { head: "standard error", number: true }],
    surface.parameters.map(({ name, value, se }) => [
      name,
      words.number(value),
      se === null ? "–" : words.number(se, 3),
    ]),
    statusWords[surface.status] ?? "no terms",
  )}${
    stationary &&
    markup`<p>Stationary point: A ${words.number(stationary.x1, 3)}, B ${words.number(stationary.x2, 3)} kg/t, a ${stationary.kind} of the surface, ${stationary.inside ? "inside" : "outside"} the pairs tested.</p>`
  }`;
}
