import { makeDownCautions, plantCautions } from "../study/cautions.ts";
import { methodVersion } from "../study/derive/decision.ts";
import { choiceSection } from "./choice-section.ts";
import { curvesSection } from "./curves-section.ts";
import { jarsSection } from "./jars-section.ts";
import { markup, type Markup } from "./markup.ts";
import { methods } from "./methods.ts";
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
  return {
    title: `Trial report: ${study?.name ?? "study"}`,
    style: reportStyle,
    article: markup`<article class="paper report">
<header><h1>Trial report: ${study?.name ?? "study"}</h1>
${study?.invented && markup`<p class="banner">Every number here is invented: a demonstration</p>`}
${facts([
  ["Printed", `${words.moment(now)} by Flocwright ${input.version}, methods ${methodVersion}`],
  ["History", historyWords(input.history, 64)],
  [
    "People",
    Object.values(state.person)
      .map(({ name, role }) => `${name} (${role})`)
      .join(", ") || "nobody is named",
  ],
  ...(study?.note ? [["Note", study.note] as [string, string]] : []),
])}
${summary(series, words)}</header>
${samplesSection(state, words)}
${productsSection(state, words)}
${series.length === 0 ? markup`<section><h2>Series</h2><p class="gap">No series yet.</p></section>` : series.map((one) => seriesSection(input, one, words))}
${pumpsSection(state, now, words)}
${machineSection(state, cases, series[0]?.chain.sample ?? null, words)}
${runsSection(runs.tables, runs.sentences)}
${series.map((one) => [driftBlock(one, words), pairsBlock(one, words)])}
<section><h2>Cautions</h2><ul>${[...makeDownCautions, ...plantCautions].map((line) => markup`<li>${line}</li>`)}</ul></section>
<section><h2>Methods and their sources</h2>${table(
      "Every formula behind this report",
      [{ head: "what" }, { head: "formula" }, { head: "source" }],
      methods.map(({ what, formula, source }) => [what, formula, source]),
      "none",
    )}</section>
</article>`,
  };
}

function summary(series: SeriesReport[], words: PaperWords): Markup {
  return table(
    "The answer so far",
    [{ head: "series" }, { head: "dose, active" }, { head: "state" }, { head: "by" }],
    series.map(({ chain, decision }) => {
      if (!decision) return [chain.series.label, "none approved", "not approved", "–"];
      const { doseAKgPerT, doseBKgPerT, byName, at } = decision.decision;
      const dose =
        doseBKgPerT === null
          ? words.both(doseAKgPerT, "doseKgPerT", 3)
          : `A ${words.both(doseAKgPerT, "doseKgPerT", 3)}, B ${words.both(doseBKgPerT, "doseKgPerT", 3)}`;
      return [chain.series.label, dose, decision.word, `${byName}, ${words.moment(at)}`];
    }),
    "no series yet",
  );
}

function seriesSection({ state }: ReportInput, one: SeriesReport, words: PaperWords): Markup {
  const sample = state.sample[one.chain.series.sampleId];
  return markup`<section class="series"><h2>Series: ${one.chain.series.label}</h2>
<p>On ${sample?.label ?? "a sample"}.</p>
${jarsSection(one.chain, words)}
${picturesSection(state, one.chain, words)}
${curvesSection(one, words)}
${choiceSection(state, one, words)}
${ratesSection(state, one, words)}
${mixingBlock(state, one, words)}
${landBlock(state, one, words)}</section>`;
}
