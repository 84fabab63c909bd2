import { sampleChain } from "../study/derive/sample.ts";
import { stockChain } from "../study/derive/stock.ts";
import type { RecordOf, StudyState } from "../study/schema/records.ts";
import { markup, type Markup } from "./markup.ts";
import { facts, table } from "./table.ts";
import { notMeasured, type PaperWords } from "./words.ts";

const byId = <T extends { id: string }>(table: Readonly<Record<string, T>>): T[] =>
  Object.values(table).sort((a, b) => (a.id < b.id ? -1 : 1));

/** A reason pressed for leaving something out, with its words. */
export function leftOutWords(leftOut: { reason: string; note: string } | null): string {
  if (leftOut === null) return "";
  return `${leftOut.reason.replaceAll("-", " ")}${leftOut.note ? ` (${leftOut.note})` : ""}`;
}

/** Every sample with its dishes, solids and density. */
export function samplesSection(state: StudyState, words: PaperWords): Markup {
  const samples = byId(state.sample);
  return markup`<section><h2>Samples</h2>
${samples.length === 0 ? markup`<p class="gap">No sample yet.</p>` : samples.map((one) => sampleBlock(state, one, words))}</section>`;
}

function sampleBlock(state: StudyState, sample: RecordOf<"sample">, words: PaperWords): Markup {
  const chain = sampleChain(state, sample.id);
  const stream = state.stream[sample.streamId];
  const { temperatureC } = sample;
  const unit = (value: number | null, text: string) =>
    value === null ? notMeasured : `${words.entered(value)} ${text}`.trim();
  return markup`<h3>${sample.label}</h3>
${facts([
  [
    "Sludge",
    `${stream?.label ?? ""}${stream?.sludgeClass ? `, ${stream.sludgeClass.replaceAll("-", " ")}` : ", class not noted"}${stream?.place ? `, ${stream.place}` : ""}`,
  ],
  ["Taken", `${words.moment(sample.takenAt)}${sample.place ? `, ${sample.place}` : ", place not noted"}`],
  ["Temperature", temperatureC === null ? notMeasured : words.both(temperatureC, "temperatureC", 3)],
  ["pH; conductivity", `${unit(sample.ph, "")}; ${unit(sample.conductivityMsPerCm, "mS/cm")}`],
  [
    "Total solids",
    `${words.figure(chain.totalSolids)}${chain.stage === "provisional" ? " PROVISIONAL" : ""}`,
  ],
  ["Volatile share", words.figure(chain.volatileSolids)],
  ["Suspended solids", unit(sample.suspendedSolidsPct, "%")],
  ["Density", `${words.figure(chain.density, 5)}. ${chain.densityNote}`],
  ...(sample.note ? [["Note", sample.note] as [string, string]] : []),
])}
${chain.warnings.map((line) => markup`<p class="warning">${line}</p>`)}
${table(
  "Dishes, in g",
  [
    { head: "dish" },
    ...["empty", "with wet sludge", "dried", "ashed", "TS, %", "VS, %"].map((head) => ({
      head,
      number: true,
    })),
    { head: "left out" },
  ],
  chain.dishes.map(({ dish, totalSolids, volatileSolids }) => [
    dish.label,
    words.entered(dish.tareG),
    words.entered(dish.wetG),
    words.entered(dish.dryG),
    words.entered(dish.ashG),
    words.number(totalSolids.value),
    words.number(volatileSolids.value),
    leftOutWords(dish.leftOut),
  ]),
  "none weighed",
)}`;
}

/** Products as supplied and the stock solutions made of them. */
export function productsSection(state: StudyState, words: PaperWords): Markup {
  const currency = state.study["study"]?.currency ?? "";
  return markup`<section><h2>Products and stock solutions</h2>
${table(
  "Products as supplied",
  [
    { head: "product" },
    { head: "lot" },
    { head: "form, charge" },
    { head: "active, %", number: true },
    { head: "density, kg/L (lb/gal)", number: true },
    { head: `price, ${currency}/kg`, number: true },
    { head: "what active means" },
  ],
  byId(state.product).map((one) => [
    one.label,
    one.lot || "not noted",
    `${one.form.replaceAll("-", " ")}, ${one.charge ?? "charge not noted"}`,
    `${words.entered(one.activePct)}${one.activeLimitPct === null ? "" : ` ± ${words.entered(one.activeLimitPct)}`}`,
    one.densityKgPerL === null ? notMeasured : words.both(one.densityKgPerL, "densityKgPerL"),
    one.pricePerKgNeat === null ? "not given" : words.entered(one.pricePerKgNeat),
    one.activeBasisNote || "not noted",
  ]),
  "none entered",
)}
${table(
  "Stock solutions",
  [
    { head: "solution" },
    { head: "of" },
    { head: "neat, g", number: true },
    { head: "whole, g", number: true },
    { head: "active, %", number: true },
    { head: "as supplied, %", number: true },
    { head: "water" },
    { head: "mixing started" },
    { head: "usable from, until" },
  ],
  byId(state.stock).map((one) => {
    const chain = stockChain(state, one.id);
    return [
      one.label,
      chain.product.label,
      words.entered(one.neatMassG),
      words.entered(one.totalMassG),
      chain.active.value === null ? `missing: ${chain.active.missing}` : words.number(chain.active.value),
      words.number(chain.asSupplied.value),
      `${one.waterType || "not noted"}${one.waterTemperatureC === null ? "" : `, ${words.both(one.waterTemperatureC, "temperatureC", 3)}`}`,
      words.moment(one.mixStartedAt),
      chain.usableFrom === null
        ? "not known"
        : `${words.moment(chain.usableFrom)}, ${words.moment(chain.discardAfter)}`,
    ];
  }),
  "none made",
)}</section>`;
}
