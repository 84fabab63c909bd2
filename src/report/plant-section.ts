import { settingWords } from "../study/derive/plant-pump.ts";
import type { CaseChain, PlantPolymer } from "../study/derive/plant.ts";
import type { StudyState } from "../study/schema/records.ts";
import { markup, type Markup } from "./markup.ts";
import type { SeriesReport } from "./series-report.ts";
import { table } from "./table.ts";
import { onPaperWords } from "../words/on-paper.ts";
import { ratesReportWords } from "../words/rates-report.ts";
import type { PaperWords } from "./words.ts";

type Row = [string, (one: CaseChain) => string];

/** Rates and settings of a series' approved dose for every feed case. */
export function ratesSection(state: StudyState, one: SeriesReport, words: PaperWords): Markup {
  const { plant } = one;
  const currency = state.study["study"]?.currency ?? "";
  const says = ratesReportWords;
  if (plant.cases.length === 0) return markup`<h3>${says.title}</h3><p class="gap">${says.noFeedCase}</p>`;
  const feedRows: Row[] = [
    [says.rows.feedFlow, (at) => words.figure(at.feed.flow)],
    [
      says.rows.totalSolids,
      (at) =>
        maybe(at.totalSolidsPct, (ts) => {
          return at.feedCase.totalSolidsPct === null
            ? says.ofSample(words.givenBoth(ts, "percent"))
            : `${words.entered(ts)} %`;
        }),
    ],
    [
      says.rows.density,
      (at) => maybe(at.densityKgPerL, (density) => words.givenBoth(density, "densityKgPerL")),
    ],
    [says.rows.drySolids, (at) => words.figure(at.load)],
  ];
  const rows = plant.missing
    ? feedRows
    : [
        ...feedRows,
        ...plant.polymers.flatMap((_, i) => polymerRows(i, plant.polymers.length > 1, words, currency)),
        ...machineRows(words, currency),
      ];
  return markup`<h3>${says.title}</h3>
${plant.missing && markup`<p class="gap">${says.noRates(plant.missing)}</p>`}
${table(
  says.caption,
  [
    { head: "" },
    ...plant.cases.map(({ feedCase }) => ({
      head: says.feedCase(feedCase.label, onPaperWords.feedSizes[feedCase.size]),
      number: true,
    })),
  ],
  rows
    .map(([name, text]) => [name, ...plant.cases.map(text)])
    .filter((row) => row.slice(1).some((text) => text !== "")),
  says.noRow,
)}`;
}

/** The dose that the settings follow, and the factor in it where there is one. */
function doseWords({ doseKgPerT, benchDoseKgPerT, factor }: PlantPolymer, words: PaperWords): string {
  const dose = words.givenBoth(doseKgPerT, "doseKgPerT");
  return factor?.factor.ok
    ? ratesReportWords.doseWithFactor(
        dose,
        words.givenBare(benchDoseKgPerT, "doseKgPerT"),
        words.number(factor.factor.value.factor, 3),
      )
    : dose;
}

const maybe = <T>(value: T | null | undefined, text: (value: T) => string) =>
  value === null || value === undefined ? onPaperWords.notMeasured : text(value);

function polymerRows(index: number, several: boolean, words: PaperWords, currency: string): Row[] {
  const { rows } = ratesReportWords;
  const named = (row: string) => (several ? ratesReportWords.ofPolymer(index === 0 ? "A" : "B", row) : row);
  const of =
    (text: (one: CaseChain["polymers"][number]) => string) =>
    (at: CaseChain): string => {
      const found = at.polymers[index];
      return found ? text(found) : at.rates.ok ? "" : onPaperWords.missing(at.rates.message);
    };
  const given = (value: number | null | undefined, text: (value: number) => string) =>
    value === null || value === undefined ? "" : text(value);
  return [
    [named(rows.dose), of(({ polymer }) => doseWords(polymer, words))],
    [named(rows.active), of(({ rates }) => words.both(rates.activeKgPerH, "kgPerH"))],
    [named(rows.neat), of(({ rates }) => words.both(rates.neatKgPerH, "kgPerH"))],
    [
      named(rows.neatVolume),
      of(({ rates }) => given(rates.neatLPerH, (value) => words.both(value, "flowLPerH"))),
    ],
    [named(rows.solution), of(({ rates }) => words.both(rates.solutionLPerH, "flowLPerH"))],
    [named(rows.makeUpWater), of(({ rates }) => words.both(rates.makeUpWaterKgPerH, "kgPerH"))],
    [
      named(rows.carrierWater),
      of(({ rates }) => given(rates.carrierLPerH, (value) => words.both(value, "flowLPerH"))),
    ],
    [named(rows.batch), of(({ rates }) => given(rates.batchHours, (value) => `${words.number(value, 3)} h`))],
    [
      named(rows.ageingVolume),
      of(({ rates }) => given(rates.ageingVolumeL, (value) => words.both(value, "volumeL"))),
    ],
    [named(rows.neatPerYear), of(({ rates }) => words.both(rates.neatKgPerYear, "kgPerYear"))],
    [
      named(rows.polymerPerTonne),
      of(({ rates }) => given(rates.costPerTDs, (value) => `${words.money(value)} ${currency}`)),
    ],
    [
      named(rows.polymerPerYear),
      of(({ rates }) => given(rates.costPerYear, (value) => `${words.money(value)} ${currency}`)),
    ],
    [
      named(rows.pumpSetting),
      of(({ setting, polymer }) => {
        if (!setting) return ratesReportWords.noPumpLine;
        if (setting.pct === null)
          return ratesReportWords.outside[setting.status === "above" ? "above" : "below"];
        const unit = polymer.pump ? settingWords(polymer.pump.pump) : "%";
        const write = words.interval(setting.pct, setting.low, setting.high);
        const shown = `${write(setting.pct)} ${unit}`;
        return setting.low === null || setting.high === null
          ? shown
          : ratesReportWords.settingBetween(shown, write(setting.low), write(setting.high));
      }),
    ],
  ];
}

function machineRows(words: PaperWords, currency: string): Row[] {
  const { rows } = ratesReportWords;
  const of =
    (text: (rates: Extract<CaseChain["rates"], { ok: true }>["value"]) => string | null) =>
    (at: CaseChain): string =>
      at.rates.ok ? (text(at.rates.value) ?? "") : "";
  const given = (value: number | undefined, text: (value: number) => string) =>
    value === undefined ? null : text(value);
  return [
    [rows.wetCake, of((rates) => given(rates.wetCakeKgPerH, (value) => words.both(value, "kgPerH")))],
    [rows.returned, of((rates) => given(rates.returnKgPerH, (value) => words.both(value, "kgPerH", 3)))],
    [
      rows.disposalPerTonne,
      of((rates) => given(rates.disposalPerTDs, (value) => `${words.money(value)} ${currency}`)),
    ],
    [
      rows.disposalPerYear,
      of((rates) => given(rates.disposalPerYear, (value) => `${words.money(value)} ${currency}`)),
    ],
  ];
}
