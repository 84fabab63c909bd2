import { settingWords } from "../study/derive/plant-pump.ts";
import type { CaseChain, PlantPolymer } from "../study/derive/plant.ts";
import type { StudyState } from "../study/schema/records.ts";
import { markup, type Markup } from "./markup.ts";
import type { SeriesReport } from "./series-report.ts";
import { table } from "./table.ts";
import { onPaperWords } from "../words/on-paper.ts";
import type { PaperWords } from "./words.ts";

type Row = [string, (one: CaseChain) => string];

/** Rates and settings of a series' approved dose for every feed case. */
export function ratesSection(state: StudyState, one: SeriesReport, words: PaperWords): Markup {
  const { plant } = one;
  const currency = state.study["study"]?.currency ?? "";
  if (plant.cases.length === 0) return markup`<h3>Rates</h3><p class="gap">No feed case is entered.</p>`;
  const feedRows: Row[] = [
    ["feed flow", (at) => words.figure(at.feed.flow)],
    [
      "total solids",
      (at) =>
        maybe(
          at.totalSolidsPct,
          (ts) => `${words.number(ts)} %${at.feedCase.totalSolidsPct === null ? " of the sample" : ""}`,
        ),
    ],
    ["density", (at) => maybe(at.densityKgPerL, (density) => words.both(density, "densityKgPerL", 5))],
    ["dry solids", (at) => words.figure(at.load)],
  ];
  const rows = plant.missing
    ? feedRows
    : [
        ...feedRows,
        ...plant.polymers.flatMap((_, i) => polymerRows(i, plant.polymers.length > 1, words, currency)),
        ...machineRows(words, currency),
      ];
  return markup`<h3>Rates</h3>
${plant.missing && markup`<p class="gap">No rates: ${plant.missing}.</p>`}
${table(
  "Rates at the approved dose, by feed case; metric (US customary)",
  [
    { head: "" },
    ...plant.cases.map(({ feedCase }) => ({ head: `${feedCase.label} (${feedCase.size})`, number: true })),
  ],
  rows
    .map(([name, text]) => [name, ...plant.cases.map(text)])
    .filter((row) => row.slice(1).some((text) => text !== "")),
  "none",
)}`;
}

/** The dose that the settings follow, and the factor in it where there is one. */
function doseWords({ doseKgPerT, benchDoseKgPerT, factor }: PlantPolymer, words: PaperWords): string {
  const dose = words.both(doseKgPerT, "doseKgPerT", 3);
  return factor?.factor.ok
    ? `${dose}: bench ${words.number(benchDoseKgPerT, 3)} × factor ${words.number(factor.factor.value.factor, 3)}`
    : dose;
}

const maybe = <T>(value: T | null | undefined, text: (value: T) => string) =>
  value === null || value === undefined ? onPaperWords.notMeasured : text(value);

function polymerRows(index: number, named: boolean, words: PaperWords, currency: string): Row[] {
  const prefix = named ? `${index === 0 ? "A" : "B"}: ` : "";
  const of =
    (text: (one: CaseChain["polymers"][number]) => string) =>
    (at: CaseChain): string => {
      const found = at.polymers[index];
      return found ? text(found) : at.rates.ok ? "" : `missing: ${at.rates.message}`;
    };
  const given = (value: number | null | undefined, text: (value: number) => string) =>
    value === null || value === undefined ? "" : text(value);
  return [
    [`${prefix}dose, active`, of(({ polymer }) => doseWords(polymer, words))],
    [`${prefix}active polymer`, of(({ rates }) => words.both(rates.activeKgPerH, "kgPerH"))],
    [`${prefix}neat product`, of(({ rates }) => words.both(rates.neatKgPerH, "kgPerH"))],
    [
      `${prefix}neat product by volume`,
      of(({ rates }) => given(rates.neatLPerH, (value) => words.both(value, "flowLPerH"))),
    ],
    [`${prefix}solution`, of(({ rates }) => words.both(rates.solutionLPerH, "flowLPerH"))],
    [`${prefix}make-up water`, of(({ rates }) => words.both(rates.makeUpWaterKgPerH, "kgPerH"))],
    [
      `${prefix}carrier water`,
      of(({ rates }) => given(rates.carrierLPerH, (value) => words.both(value, "flowLPerH"))),
    ],
    [
      `${prefix}one batch lasts`,
      of(({ rates }) => given(rates.batchHours, (value) => `${words.number(value, 3)} h`)),
    ],
    [
      `${prefix}ageing volume`,
      of(({ rates }) => given(rates.ageingVolumeL, (value) => words.both(value, "volumeL"))),
    ],
    [`${prefix}neat product a year`, of(({ rates }) => words.both(rates.neatKgPerYear, "kgPerYear"))],
    [
      `${prefix}polymer per t dry solids`,
      of(({ rates }) => given(rates.costPerTDs, (value) => `${words.number(value)} ${currency}`)),
    ],
    [
      `${prefix}polymer a year`,
      of(({ rates }) => given(rates.costPerYear, (value) => `${words.number(value)} ${currency}`)),
    ],
    [
      `${prefix}pump setting`,
      of(({ setting, polymer }) => {
        if (!setting) return "no pump line";
        if (setting.pct === null) return `none: ${setting.status} the settings proven`;
        const unit = polymer.pump ? settingWords(polymer.pump.pump) : "%";
        const ends =
          setting.low === null || setting.high === null
            ? ""
            : ` (${words.number(setting.low, 3)} to ${words.number(setting.high, 3)})`;
        return `${words.number(setting.pct, 3)} ${unit}${ends}`;
      }),
    ],
  ];
}

function machineRows(words: PaperWords, currency: string): Row[] {
  const of =
    (text: (rates: Extract<CaseChain["rates"], { ok: true }>["value"]) => string | null) =>
    (at: CaseChain): string =>
      at.rates.ok ? (text(at.rates.value) ?? "") : "";
  const given = (value: number | undefined, text: (value: number) => string) =>
    value === undefined ? null : text(value);
  return [
    ["wet cake", of((rates) => given(rates.wetCakeKgPerH, (value) => words.both(value, "kgPerH")))],
    [
      "solids returned with the filtrate",
      of((rates) => given(rates.returnKgPerH, (value) => words.both(value, "kgPerH", 3))),
    ],
    [
      "disposal per t dry solids",
      of((rates) => given(rates.disposalPerTDs, (value) => `${words.number(value)} ${currency}`)),
    ],
    [
      "disposal a year",
      of((rates) => given(rates.disposalPerYear, (value) => `${words.number(value)} ${currency}`)),
    ],
  ];
}
