import { makeDownCautions, plantCautions } from "../study/cautions.ts";
import { methodVersion } from "../study/derive/decision.ts";
import { runsOnCurves } from "./chart-data.ts";
import { choiceSection } from "./choice-section.ts";
import { curvesSection } from "./curves-section.ts";
import { drainageBlock, filtrationBlock } from "./jar-plots.ts";
import { jarsSection } from "./jars-section.ts";
import { markup, type Markup } from "./markup.ts";
import { methods } from "../methods/methods.ts";
import type { Paper } from "./paper.ts";
import { historyWords, type PaperInput } from "./paper-input.ts";
import { picturesSection } from "./pictures-section.ts";
import { ratesSection } from "./plant-section.ts";
import { machineSection, pumpsSection } from "./pumps-section.ts";
import { plantRuns, runsSection } from "./runs-section.ts";
import { productsSection, samplesSection } from "./sample-section.ts";
import type { SeriesFits } from "./series-fits.ts";
import { seriesReport, type SeriesReport } from "./series-report.ts";
import { reportStyle } from "./style.ts";
import { facts, table } from "./table.ts";
import { driftBlock, landBlock, mixingBlock, pairsBlock } from "./watch-section.ts";
import { paperWords, type PaperWords } from "./words.ts";
import { plotReportWords } from "../words/plot-report.ts";
import { onPaperWords } from "../words/on-paper.ts";
import { reportWords } from "../words/report.ts";

/** What a trial report is made from: the study and the curves of its series, in the order they are to stand. */
export interface ReportInput extends PaperInput {
  fits: SeriesFits[];
}

/** The whole trial on paper: what was measured, what follows from it and by which formulas, with gaps left as gaps. */
export function trialReport(input: ReportInput): Paper {
  const { state, now } = input;
  const study = state.study["study"] ?? null;
  const words = paperWords(study?.decimalMark ?? ".", input.utcOffsetMin);
  const series = input.fits.map((fits) => seriesReport(state, fits, words));
  const cases = series.find(({ decision }) => decision)?.plant.cases ?? series[0]?.plant.cases ?? [];
  const runs = plantRuns(
    state,
    series.map(({ seriesId }) => seriesId),
    words,
  );
  const onCurves = series.some(
    ({ analysis, chain, runs }) =>
      analysis && analysis.axis !== "surface" && runsOnCurves(chain, analysis.axis, runs),
  );
  return {
    title: reportWords.titleOf(study?.name ?? onPaperWords.study),
    style: reportStyle,
    article: markup`<article class="paper report">
<header><h1>${reportWords.titleOf(study?.name ?? onPaperWords.study)}</h1>
${study?.invented && markup`<p class="banner">${reportWords.invented}</p>`}
${facts([
  [reportWords.printedHead, reportWords.printed(words.moment(now), input.version, methodVersion)],
  [reportWords.history, historyWords(input.history, 64)],
  [
    reportWords.people,
    Object.values(state.person)
      .map(({ name, role }) => `${name} (${reportWords.roles[role]})`)
      .join(", ") || reportWords.nobody,
  ],
  ...(study?.note ? [[reportWords.note, study.note] as [string, string]] : []),
])}
${summary(series, words)}</header>
${samplesSection(state, words)}
${productsSection(state, words)}
${series.length === 0 ? markup`<section><h2>${reportWords.series}</h2><p class="gap">${reportWords.noSeries}</p></section>` : series.map((one) => seriesSection(input, one, words))}
${pumpsSection(state, now, words)}
${machineSection(state, cases, series[0]?.chain.sample ?? null, words)}
${runsSection(runs.tables, [...(onCurves ? [plotReportWords.runsOnCurves] : []), ...runs.sentences])}
${series.map((one) => [driftBlock(one, words), pairsBlock(one, words)])}
<section><h2>${reportWords.cautions}</h2><ul>${[...makeDownCautions(), ...plantCautions()].map((line) => markup`<li>${line}</li>`)}</ul></section>
<section><h2>${reportWords.methods.title}</h2>${table(
      reportWords.methods.caption,
      [
        { head: reportWords.methods.what },
        { head: reportWords.methods.formula },
        { head: reportWords.methods.source },
      ],
      methods.map(({ what, formula, source }) => [what, formula, source]),
      onPaperWords.none,
    )}</section>
</article>`,
  };
}

function summary(series: SeriesReport[], words: PaperWords): Markup {
  return table(
    reportWords.answer.caption,
    [
      { head: reportWords.answer.series },
      { head: reportWords.answer.dose },
      { head: reportWords.answer.state },
      { head: reportWords.answer.by },
    ],
    series.map(({ chain, decision }) => {
      if (!decision)
        return [chain.series.label, reportWords.answer.noneApproved, reportWords.answer.notApproved, "–"];
      const { doseAKgPerT, doseBKgPerT, byName, at } = decision.decision;
      const dose =
        doseBKgPerT === null
          ? words.givenBoth(doseAKgPerT, "doseKgPerT")
          : reportWords.answer.pair(
              words.givenBoth(doseAKgPerT, "doseKgPerT"),
              words.givenBoth(doseBKgPerT, "doseKgPerT"),
            );
      return [chain.series.label, dose, decision.word, `${byName}, ${words.moment(at)}`];
    }),
    reportWords.answer.none,
  );
}

function seriesSection({ state }: ReportInput, one: SeriesReport, words: PaperWords): Markup {
  const sample = state.sample[one.chain.series.sampleId];
  return markup`<section class="series"><h2>${reportWords.seriesTitle(one.chain.series.label)}</h2>
<p>${reportWords.onSample(sample?.label ?? reportWords.aSample)}</p>
${jarsSection(one.chain, words)}
${drainageBlock(one.chain, words)}
${filtrationBlock(one.chain, words)}
${picturesSection(state, one.chain, words)}
${curvesSection(one, words)}
${choiceSection(state, one, words)}
${ratesSection(state, one, words)}
${mixingBlock(state, one, words)}
${landBlock(state, one, words)}</section>`;
}
