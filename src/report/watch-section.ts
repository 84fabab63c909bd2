import { chanceWords } from "../study/derive/number-words.ts";
import { landChain } from "../study/derive/plant-unit.ts";
import { mixingFigures, mixingPlaces } from "../study/derive/mixing-places.ts";
import {
  driftChain,
  pairedChain,
  pairedSettings,
  watched,
  type Watched,
} from "../study/derive/plant-watch.ts";
import { mixingPlaceWords } from "../words/mixing-places.ts";
import { onPaperWords } from "../words/on-paper.ts";
import { plantTrialWords } from "../words/plant-trials.ts";
import { plantWatchWords } from "../words/plant-watch.ts";
import { watchReportWords } from "../words/watch-report.ts";
import type { StudyState } from "../study/schema/records.ts";
import { driftDrawing } from "./drift-chart.ts";
import { printedDrift } from "./drift-data.ts";
import { inlineSvg } from "./drawing.ts";
import { markup, type Markup } from "./markup.ts";
import type { SeriesReport } from "./series-report.ts";
import { facts, table } from "./table.ts";
import type { PaperWords } from "./words.ts";

const all = Object.keys(watched) as Watched[];

/** Routine runs of a series on their drift charts; nothing where no run is routine. */
export function driftBlock(one: SeriesReport, words: PaperWords): Markup | null {
  if (!one.runs.some(({ run }) => run.kind === "routine")) return null;
  return markup`<h3>${watchReportWords.driftTitle(one.chain.series.label)}</h3>${all.map((what) => {
    const drift = driftChain(one.runs, what);
    const chart = printedDrift(drift, "metric");
    if (!chart)
      return drift.chart.ok
        ? null
        : markup`<p class="gap">${watchReportWords.noChart(plantWatchWords.watched[what], drift.chart.message)}</p>`;
    return markup`<figure class="whole"><h4>${chart.title}</h4><p>${chart.sentence}</p>${inlineSvg(
      driftDrawing(chart, (value) => words.number(value, 3)),
    )}</figure>`;
  })}<p>${plantWatchWords.method}</p>`;
}

/** Two machine settings compared in pairs, for each result that was read in pairs; nothing where none was. */
export function pairsBlock(one: SeriesReport, words: PaperWords): Markup | null {
  if (!one.runs.some(({ run }) => run.kind === "comparison")) return null;
  const sides = pairedSettings(one.runs);
  const said = sides.A && sides.B ? markup`<p>${plantTrialWords.pairs.sides(sides.A, sides.B)}</p>` : null;
  return markup`<h3>${watchReportWords.pairs.title(one.chain.series.label)}</h3>${said}${table(
    watchReportWords.pairs.caption,
    [
      { head: watchReportWords.pairs.result },
      { head: watchReportWords.pairs.pairs, number: true },
      { head: watchReportWords.pairs.difference, number: true },
      { head: "95 %" },
      { head: "p", number: true },
      { head: watchReportWords.pairs.says },
    ],
    (["cake", "filtrate"] as const).map((what) => {
      const found = pairedChain(one.runs, what);
      const name = plantWatchWords.inUnit(plantWatchWords.watched[what], what === "cake" ? "%" : "mg/L");
      if (!found.ok) return [name, "–", "–", "–", "–", watchReportWords.pairs.notYet(found.message)];
      const { n, meanDifference, low, high, p } = found.value;
      const write = words.interval(meanDifference, low, high);
      return [
        name,
        String(n),
        write(meanDifference),
        onPaperWords.range(write(low), write(high)),
        p === null ? "–" : chanceWords(p, words.mark),
        low > 0 || high < 0 ? watchReportWords.pairs.real : watchReportWords.pairs.chance,
      ];
    }),
    onPaperWords.none,
  )}`;
}

/** The plant's mixing held against the jars'; nothing where nobody entered it. */
export function mixingBlock(state: StudyState, one: SeriesReport, words: PaperWords): Markup | null {
  const places = mixingPlaces(state, one.chain, one.plant).filter(({ compared }) => compared);
  if (places.length === 0) return null;
  return markup`<h3>${watchReportWords.mixing.title}</h3>${places.map(
    ({ letter, label, mixing, compared }) => markup`<h4>${
      mixing!.place === "tank"
        ? watchReportWords.mixing.inTank(letter, label)
        : watchReportWords.mixing.inPipe(letter, label)
    }</h4>
${facts(mixingFigures(compared!).map(({ title, figure }) => [title, words.figure(figure)]))}
<p>${compared!.verdict.words}</p>`,
  )}<p>${mixingPlaceWords.nominal}</p>`;
}

/** The dose held against the user's own limit of polymer on land; nothing where nobody entered one. */
export function landBlock(state: StudyState, one: SeriesReport, words: PaperWords): Markup | null {
  const texts = watchReportWords.land;
  const [land] = Object.values(state.landLimit);
  if (!land || one.plant.polymers.length === 0) return null;
  const checked = landChain(
    land,
    one.plant.polymers.map(({ doseKgPerT }) => doseKgPerT),
  );
  return markup`<h3>${texts.title}</h3>
${facts([
  [texts.limit, land.limitKgPerHa === null ? texts.notEntered : `${words.entered(land.limitKgPerHa)} kg/ha`],
  [texts.period, land.years === null ? texts.notEntered : texts.years(words.entered(land.years))],
  [
    texts.drySolids,
    land.drySolidsTPerHa === null
      ? texts.notEntered
      : texts.inThoseYears(words.entered(land.drySolidsTPerHa)),
  ],
  [
    texts.elsewhere,
    land.otherDoseKgPerT === null ? texts.notEntered : words.enteredBoth(land.otherDoseKgPerT, "doseKgPerT"),
  ],
  [texts.highest, words.figure(checked.limit)],
  [texts.together, words.figure(checked.total)],
])}
<p>${checked.verdict.words}</p>`;
}
