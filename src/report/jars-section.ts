import type { Figure } from "../study/derive/figure.ts";
import { kindsAsTaken, type ReadingKind } from "../responses/registry.ts";
import type { JarChain, SeriesChain } from "../study/derive/jars.ts";
import type { RecordOf } from "../study/schema/records.ts";
import { leftOutWords } from "./sample-section.ts";
import { markup, type Markup } from "./markup.ts";
import { readingWords } from "./reading-words.ts";
import { facts, table, type Column } from "./table.ts";
import { notMeasured, type PaperWords } from "./words.ts";

/** How the jars of a series were treated, and every jar with every reading: re-reads beside each other, gaps as gaps. */
export function jarsSection(chain: SeriesChain, words: PaperWords): Markup {
  const { series, jars, stockA, stockB } = chain;
  const shown = kindsAsTaken.filter(({ kind }) =>
    jars.some(({ readings }) => readings.some(({ result }) => result.kind === kind)),
  );
  const kinds = shown.map(({ kind }) => kind);
  const two = stockB !== null || jars.some(({ jar }) => (jar.syringeBMl ?? 0) > 0);
  const letters = two ? (["A", "B"] as const) : (["A"] as const);
  const columns: Column[] = [
    { head: "jar" },
    { head: "run as", number: true },
    ...letters.flatMap((letter) => [
      { head: `planned ${letter}, kg/t`, number: true },
      { head: `syringe ${letter}, mL`, number: true },
      { head: `dose ${letter}, kg/t active`, number: true },
    ]),
    { head: "blank water, mL", number: true },
    ...shown.map(({ spec }) => ({ head: spec.head(series), number: true })),
    { head: "capture, %", number: true },
    { head: "left out, notes" },
  ];
  return markup`<h3>Jars</h3>
${facts([
  ["Polymer A", stockA ? `${stockA.product.label}, ${stockA.stock.label}` : "no stock solution picked"],
  ...(two
    ? [
        [
          "Polymer B",
          stockB ? `${stockB.product.label}, ${stockB.stock.label}` : "no stock solution picked",
        ] as [string, string],
      ]
    : []),
  ["Started", words.moment(series.startedAt)],
  [
    "Sample in a jar",
    series.sampleVolumeMl === null
      ? notMeasured
      : `${words.entered(series.sampleVolumeMl)} mL${series.sampleVolumeLimitMl === null ? "" : ` ± ${words.entered(series.sampleVolumeLimitMl)} mL`}`,
  ],
  ["Treatment", protocolWords(series.protocol, words)],
  ["Dose error", uncertaintyWords(chain, words)],
  ...(series.note ? [["Note", series.note] as [string, string]] : []),
])}
${table(
  "Every jar with every reading; re-reads stand beside each other; –: nothing planned or noted",
  columns,
  jars.map((jar) => jarRow(jar, letters, kinds, words)),
  "no jars yet",
)}`;
}

/** A dose to three decimals, or what is missing for it. */
function doseWords(dose: Figure, words: PaperWords): string {
  return dose.value === null ? `missing: ${dose.missing ?? "an input"}` : words.fixed(dose.value, 3);
}

function jarRow(
  chain: JarChain,
  letters: readonly ("A" | "B")[],
  kinds: ReadingKind[],
  words: PaperWords,
): string[] {
  const { jar, readings, capture } = chain;
  const dose = { A: chain.doseA, B: chain.doseB };
  const planned = { A: jar.plannedDoseAKgPerT, B: jar.plannedDoseBKgPerT };
  const syringe = { A: jar.syringeAMl, B: jar.syringeBMl };
  const plain = (value: number | null) => (value === null ? "–" : words.entered(value));
  const role = jar.role === "dose" ? "" : ` (${jar.role.replaceAll("-", " ")})`;
  const notes = [
    jar.leftOut ? `LEFT OUT: ${leftOutWords(jar.leftOut)}` : "",
    jar.asMixed ? `mixed as: ${protocolWords(jar.asMixed, words)}` : "",
    jar.note,
    ...readings.map(({ note }) => note),
    jar.block ? `block ${jar.block}` : "",
  ].filter((text) => text !== "");
  return [
    `${jar.label}${role}`,
    String(jar.order),
    ...letters.flatMap((letter) => [
      plain(planned[letter]),
      plain(syringe[letter]),
      doseWords(dose[letter], words),
    ]),
    plain(jar.blankWaterMl),
    ...kinds.map((kind) => {
      const own = readings.filter(({ result }) => result.kind === kind);
      return own.length === 0 ? notMeasured : own.map((reading) => readingWords(reading, words)).join("; ");
    }),
    capture.value === null ? "not known" : words.number(capture.value),
    notes.join("; "),
  ];
}

type Treatment = Pick<
  RecordOf<"series">["protocol"],
  "fastRpm" | "fastS" | "betweenS" | "slowRpm" | "slowS" | "pours"
> &
  Partial<RecordOf<"series">["protocol"]>;

/** Treatment as asked, or as it was really given where a timer took it down. */
function protocolWords(protocol: Treatment, words: PaperWords): string {
  const value = (number: number | null, unit: string) =>
    number === null ? notMeasured : `${words.entered(number)} ${unit}`;
  const pair = (name: string, one: number | null, unit: string, other: number | null, otherUnit: string) =>
    one === null && other === null ? null : `${name} ${value(one, unit)} for ${value(other, otherUnit)}`;
  const single = (name: string, one: number | null, unit: string) =>
    one === null ? null : `${name} ${value(one, unit)}`.trim();
  const parts = [
    pair("fast mixing at", protocol.fastRpm, "rpm", protocol.fastS, "s"),
    single("between the polymers", protocol.betweenS, "s"),
    pair("slow mixing at", protocol.slowRpm, "rpm", protocol.slowS, "s"),
    single("pours:", protocol.pours, ""),
    single("drained read at", protocol.drainS ?? null, "s"),
    pair("pressed at", protocol.pressKPa ?? null, "kPa", protocol.pressMin ?? null, "min"),
  ].filter((text) => text !== null);
  return parts.length === 0 ? "not noted" : parts.join(", ");
}

function uncertaintyWords({ uncertaintyA }: SeriesChain, words: PaperWords): string {
  if (!uncertaintyA) return "not known: no limit of syringe, masses or solids is entered";
  const pct = (relative: number) => `${words.number(relative * 100, 2)} %`;
  return `shared by all jars ${pct(uncertaintyA.shared)} (${pct(uncertaintyA.sharedLeft)} once what the plant repeats cancels), of each jar's own ${pct(uncertaintyA.perJar)}; standard uncertainties of polymer A's dose`;
}
