import { landChain } from "../study/derive/plant-unit.ts";
import { mixingFigures, mixingPlaces } from "../study/derive/mixing-places.ts";
import { driftChain, pairedChain, watched, type Watched } from "../study/derive/plant-watch.ts";
import type { StudyState } from "../study/schema/records.ts";
import { driftDrawing } from "./drift-chart.ts";
import { driftMethod, printedDrift } from "./drift-data.ts";
import { inlineSvg } from "./drawing.ts";
import { markup, type Markup } from "./markup.ts";
import type { SeriesReport } from "./series-report.ts";
import { facts, table } from "./table.ts";
import type { PaperWords } from "./words.ts";

const all = Object.keys(watched) as Watched[];

/** Routine runs of a series on their drift charts; nothing where no run is routine. */
export function driftBlock(one: SeriesReport, words: PaperWords): Markup | null {
  if (!one.runs.some(({ run }) => run.kind === "routine")) return null;
  return markup`<h3>Drift watch on routine runs: ${one.chain.series.label}</h3>${all.map((what) => {
    const drift = driftChain(one.runs, what);
    const chart = printedDrift(drift, "metric");
    if (!chart)
      return drift.chart.ok
        ? null
        : markup`<p class="gap">No chart of the ${watched[what].words}: ${drift.chart.message}.</p>`;
    return markup`<figure class="whole"><h4>${chart.title}</h4><p>${chart.sentence}</p>${inlineSvg(
      driftDrawing(chart, (value) => words.number(value, 3)),
    )}</figure>`;
  })}<p>${driftMethod}</p>`;
}

/** Two machine settings compared in pairs, for each result that was read in pairs; nothing where none was. */
export function pairsBlock(one: SeriesReport, words: PaperWords): Markup | null {
  if (!one.runs.some(({ run }) => run.kind === "comparison")) return null;
  return markup`<h3>Two machine settings compared in pairs: ${one.chain.series.label}</h3>${table(
    "B less A, pairs taken soon after one another; paired t-test",
    [
      { head: "result" },
      { head: "pairs", number: true },
      { head: "B less A", number: true },
      { head: "95 %" },
      { head: "p", number: true },
      { head: "what it says" },
    ],
    (["cake", "filtrate"] as const).map((what) => {
      const found = pairedChain(one.runs, what);
      const name = `${watched[what].words}, ${what === "cake" ? "%" : "mg/L"}`;
      if (!found.ok) return [name, "–", "–", "–", "–", `not yet: ${found.message}`];
      const { n, meanDifference, low, high, p } = found.value;
      return [
        name,
        String(n),
        words.number(meanDifference, 3),
        `${words.number(low, 3)} to ${words.number(high, 3)}`,
        p === null ? "–" : words.number(p, 2),
        low > 0 || high < 0 ? "a real difference" : "no difference that these pairs could tell from chance",
      ];
    }),
    "none",
  )}`;
}

/** The plant's mixing held against the jars'; nothing where nobody entered it. */
export function mixingBlock(state: StudyState, one: SeriesReport, words: PaperWords): Markup | null {
  const places = mixingPlaces(state, one.chain, one.plant).filter(({ compared }) => compared);
  if (places.length === 0) return null;
  return markup`<h3>Mixing, jars against plant</h3>${places.map(
    ({ letter, label, mixing, compared }) => markup`<h4>Polymer ${letter}, ${label}: ${
      mixing!.place === "tank" ? "mixed in a stirred tank" : "mixed in a pipe"
    }</h4>
${facts(mixingFigures(compared!).map(({ title, figure }) => [title, words.figure(figure, 3)]))}
<p>${compared!.verdict.words}</p>`,
  )}<p>G is nominal: the viscosity of water is used, sludge is thicker and thins under shear. Factor of two: common practice, no source.</p>`;
}

/** The dose held against the user's own limit of polymer on land; nothing where nobody entered one. */
export function landBlock(state: StudyState, one: SeriesReport, words: PaperWords): Markup | null {
  const [land] = Object.values(state.landLimit);
  if (!land || one.plant.polymers.length === 0) return null;
  const checked = landChain(
    land,
    one.plant.polymers.map(({ doseKgPerT }) => doseKgPerT),
  );
  return markup`<h3>Cake on land: polymer per hectare</h3>
${facts([
  ["Limit, active", land.limitKgPerHa === null ? "not entered" : `${words.entered(land.limitKgPerHa)} kg/ha`],
  ["in", land.years === null ? "not entered" : `${words.entered(land.years)} years`],
  [
    "Dry solids spread",
    land.drySolidsTPerHa === null
      ? "not entered"
      : `${words.entered(land.drySolidsTPerHa)} t/ha in those years`,
  ],
  [
    "Dosed elsewhere",
    land.otherDoseKgPerT === null ? "not entered" : words.both(land.otherDoseKgPerT, "doseKgPerT"),
  ],
  ["Highest dose by that limit", words.figure(checked.limit, 3)],
  ["Dose, all together", words.figure(checked.total, 3)],
])}
<p>${checked.verdict.words}</p>`;
}
