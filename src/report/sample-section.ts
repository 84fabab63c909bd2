import type { Figure } from "../study/derive/figure.ts";
import { sampleChain } from "../study/derive/sample.ts";
import { stockChain } from "../study/derive/stock.ts";
import type { RecordOf, StudyState } from "../study/schema/records.ts";
import { markup, type Markup } from "./markup.ts";
import { facts, table } from "./table.ts";
import type { PaperWords } from "./words.ts";
import { onPaperWords } from "../words/on-paper.ts";
import { reportWords } from "../words/report.ts";

const byId = <T extends { id: string }>(table: Readonly<Record<string, T>>): T[] =>
  Object.values(table).sort((a, b) => (a.id < b.id ? -1 : 1));

/** A reason pressed for leaving something out, with its words. */
export function leftOutWords(leftOut: RecordOf<"jar">["leftOut"]): string {
  if (leftOut === null) return "";
  return `${onPaperWords.leftOut[leftOut.reason]}${leftOut.note ? ` (${leftOut.note})` : ""}`;
}

/** Every sample with its dishes, solids and density. */
export function samplesSection(state: StudyState, words: PaperWords): Markup {
  const samples = byId(state.sample);
  return markup`<section><h2>${reportWords.sample.title}</h2>
${samples.length === 0 ? markup`<p class="gap">${reportWords.sample.none}</p>` : samples.map((one) => sampleBlock(state, one, words))}</section>`;
}

function sampleBlock(state: StudyState, sample: RecordOf<"sample">, words: PaperWords): Markup {
  const chain = sampleChain(state, sample.id);
  const stream = state.stream[sample.streamId];
  const { temperatureC } = sample;
  const unit = (value: number | null, text: string) =>
    value === null ? onPaperWords.notMeasured : `${words.entered(value)} ${text}`.trim();
  return markup`<h3>${sample.label}</h3>
${facts([
  [
    reportWords.sample.sludge,
    `${stream?.label ?? ""}${stream?.sludgeClass ? `, ${reportWords.sample.classes[stream.sludgeClass]}` : `, ${reportWords.sample.noClass}`}${stream?.place ? `, ${stream.place}` : ""}`,
  ],
  [
    reportWords.sample.taken,
    `${words.moment(sample.takenAt)}${sample.place ? `, ${sample.place}` : `, ${reportWords.sample.noPlace}`}`,
  ],
  [
    reportWords.sample.temperature,
    temperatureC === null ? onPaperWords.notMeasured : words.enteredBoth(temperatureC, "temperatureC"),
  ],
  [reportWords.sample.phConductivity, `${unit(sample.ph, "")}; ${unit(sample.conductivityMsPerCm, "mS/cm")}`],
  [
    reportWords.sample.totalSolids,
    chain.stage === "provisional"
      ? reportWords.sample.provisional(words.figure(chain.totalSolids))
      : words.figure(chain.totalSolids),
  ],
  [reportWords.sample.volatile, words.figure(chain.volatileSolids)],
  [reportWords.sample.suspended, unit(sample.suspendedSolidsPct, "%")],
  [reportWords.sample.density, `${words.figure(chain.density)}. ${chain.densityNote}`],
  ...(sample.note ? [[reportWords.note, sample.note] as [string, string]] : []),
])}
${chain.warnings.map((line) => markup`<p class="warning">${line}</p>`)}
${table(
  reportWords.dishes.caption,
  [
    { head: reportWords.dishes.dish },
    ...[
      reportWords.dishes.empty,
      reportWords.dishes.wet,
      reportWords.dishes.dried,
      reportWords.dishes.ashed,
      reportWords.dishes.totalSolids,
      reportWords.dishes.volatile,
    ].map((head) => ({
      head,
      number: true,
    })),
    { head: reportWords.dishes.leftOut },
  ],
  chain.dishes.map(({ dish, totalSolids, volatileSolids }) => [
    dish.label,
    words.entered(dish.tareG),
    words.entered(dish.wetG),
    words.entered(dish.dryG),
    words.entered(dish.ashG),
    besideMean(totalSolids, chain.totalSolids, words),
    besideMean(volatileSolids, chain.volatileSolids, words),
    leftOutWords(dish.leftOut),
  ]),
  reportWords.dishes.none,
)}`;
}

/** A dish's own result, to the place that the mean of all dishes is sure to. */
const besideMean = ({ value }: Figure, mean: Figure, words: PaperWords): string =>
  value === null ? onPaperWords.notMeasured : words.bareBeside(value, mean.spread, "percent");

/** Products as supplied and the stock solutions made of them. */
export function productsSection(state: StudyState, words: PaperWords): Markup {
  const currency = state.study["study"]?.currency ?? "";
  return markup`<section><h2>${reportWords.products.title}</h2>
${table(
  reportWords.products.caption,
  [
    { head: reportWords.products.product },
    { head: reportWords.products.lot },
    { head: reportWords.products.formAndCharge },
    { head: reportWords.products.active, number: true },
    { head: reportWords.products.density, number: true },
    { head: reportWords.products.price(currency), number: true },
    { head: reportWords.products.basis },
  ],
  byId(state.product).map((one) => [
    one.label,
    one.lot || onPaperWords.notNoted,
    `${reportWords.products.forms[one.form]}, ${one.charge === null ? reportWords.products.noCharge : reportWords.products.charges[one.charge]}`,
    `${words.entered(one.activePct)}${one.activeLimitPct === null ? "" : ` ± ${words.entered(one.activeLimitPct)}`}`,
    one.densityKgPerL === null
      ? onPaperWords.notMeasured
      : words.enteredBoth(one.densityKgPerL, "densityKgPerL"),
    one.pricePerKgNeat === null ? onPaperWords.notGiven : words.entered(one.pricePerKgNeat),
    one.activeBasisNote || onPaperWords.notNoted,
  ]),
  reportWords.products.none,
)}
${table(
  reportWords.stocks.caption,
  [
    { head: reportWords.stocks.solution },
    { head: reportWords.stocks.of },
    { head: reportWords.stocks.neat, number: true },
    { head: reportWords.stocks.whole, number: true },
    { head: reportWords.stocks.active, number: true },
    { head: reportWords.stocks.asSupplied, number: true },
    { head: reportWords.stocks.water },
    { head: reportWords.stocks.started },
    { head: reportWords.stocks.usable },
  ],
  byId(state.stock).map((one) => {
    const chain = stockChain(state, one.id);
    return [
      one.label,
      chain.product.label,
      words.entered(one.neatMassG),
      words.entered(one.totalMassG),
      chain.active.value === null
        ? onPaperWords.missing(chain.active.missing ?? onPaperWords.anInput)
        : words.number(chain.active.value),
      words.number(chain.asSupplied.value),
      `${one.waterType || onPaperWords.notNoted}${one.waterTemperatureC === null ? "" : `, ${words.enteredBoth(one.waterTemperatureC, "temperatureC")}`}`,
      words.moment(one.mixStartedAt),
      chain.usableFrom === null
        ? onPaperWords.notKnown
        : `${words.moment(chain.usableFrom)}, ${words.moment(chain.discardAfter)}`,
    ];
  }),
  reportWords.stocks.none,
)}</section>`;
}
