import type { Figure } from "../study/derive/figure.ts";
import { kindsAsTaken, type ReadingKind } from "../responses/registry.ts";
import type { JarChain, SeriesChain } from "../study/derive/jars.ts";
import type { RecordOf } from "../study/schema/records.ts";
import { leftOutWords } from "./sample-section.ts";
import { markup, type Markup } from "./markup.ts";
import { readingWords } from "./reading-words.ts";
import { facts, table, type Column } from "./table.ts";
import type { PaperWords } from "./words.ts";
import { onPaperWords } from "../words/on-paper.ts";
import { reportWords } from "../words/report.ts";

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
    { head: reportWords.jars.jar },
    { head: reportWords.jars.order, number: true },
    ...letters.flatMap((letter) => [
      { head: reportWords.jars.planned(letter), number: true },
      { head: reportWords.jars.syringe(letter), number: true },
      { head: reportWords.jars.dose(letter), number: true },
    ]),
    { head: reportWords.jars.blankWater, number: true },
    ...shown.map(({ spec }) => ({ head: spec.head(series), number: true })),
    { head: reportWords.jars.capture, number: true },
    { head: reportWords.jars.leftOutAndNotes },
  ];
  return markup`<h3>${reportWords.jars.title}</h3>
${facts([
  [
    reportWords.jars.polymer("A"),
    stockA ? `${stockA.product.label}, ${stockA.stock.label}` : reportWords.jars.noStock,
  ],
  ...(two
    ? [
        [
          reportWords.jars.polymer("B"),
          stockB ? `${stockB.product.label}, ${stockB.stock.label}` : reportWords.jars.noStock,
        ] as [string, string],
      ]
    : []),
  [reportWords.jars.started, words.moment(series.startedAt)],
  [
    reportWords.jars.sample,
    series.sampleVolumeMl === null
      ? onPaperWords.notMeasured
      : `${words.entered(series.sampleVolumeMl)} mL${series.sampleVolumeLimitMl === null ? "" : ` ± ${words.entered(series.sampleVolumeLimitMl)} mL`}`,
  ],
  [reportWords.jars.treatment, protocolWords(series.protocol, words)],
  [reportWords.jars.doseError, uncertaintyWords(chain, words)],
  ...(series.note ? [[reportWords.note, series.note] as [string, string]] : []),
])}
${table(
  reportWords.jars.caption,
  columns,
  jars.map((jar) => jarRow(jar, letters, kinds, chain.surestSpread, words)),
  reportWords.jars.none,
)}`;
}

/** A dose to the place of the surest of the series, or what is missing for it. */
function doseWords(dose: Figure, surest: number | null, words: PaperWords): string {
  return dose.value === null
    ? onPaperWords.missing(dose.missing ?? onPaperWords.anInput)
    : words.bareBeside(dose.value, surest, "doseKgPerT");
}

function jarRow(
  chain: JarChain,
  letters: readonly ("A" | "B")[],
  kinds: ReadingKind[],
  surestSpread: SeriesChain["surestSpread"],
  words: PaperWords,
): string[] {
  const { jar, readings, capture } = chain;
  const dose = { A: chain.doseA, B: chain.doseB };
  const planned = { A: jar.plannedDoseAKgPerT, B: jar.plannedDoseBKgPerT };
  const syringe = { A: jar.syringeAMl, B: jar.syringeBMl };
  const plain = (value: number | null) => (value === null ? "–" : words.entered(value));
  const role = jar.role === "dose" ? "" : ` (${reportWords.jars.roles[jar.role]})`;
  const notes = [
    jar.leftOut ? reportWords.jars.leftOut(leftOutWords(jar.leftOut)) : "",
    jar.asMixed ? reportWords.jars.mixedAs(protocolWords(jar.asMixed, words)) : "",
    jar.note,
    ...readings.map(({ note }) => note),
    jar.block ? reportWords.jars.block(jar.block) : "",
  ].filter((text) => text !== "");
  return [
    `${jar.label}${role}`,
    String(jar.order),
    ...letters.flatMap((letter) => [
      planned[letter] === null ? "–" : words.enteredBare(planned[letter], "doseKgPerT"),
      plain(syringe[letter]),
      doseWords(dose[letter], surestSpread[letter], words),
    ]),
    plain(jar.blankWaterMl),
    ...kinds.map((kind) => {
      const own = readings.filter(({ result }) => result.kind === kind);
      return own.length === 0
        ? onPaperWords.notMeasured
        : own.map((reading) => readingWords(reading, words)).join("; ");
    }),
    capture.value === null ? onPaperWords.notKnown : words.bare(capture.value, "percent"),
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
    number === null ? onPaperWords.notMeasured : `${words.entered(number)} ${unit}`;
  const pair = (
    text: (one: string, other: string) => string,
    one: number | null,
    unit: string,
    other: number | null,
    otherUnit: string,
  ) => (one === null && other === null ? null : text(value(one, unit), value(other, otherUnit)));
  const single = (text: (one: string) => string, one: number | null, unit: string) =>
    one === null ? null : text(value(one, unit)).trim();
  const parts = [
    pair(reportWords.jars.fast, protocol.fastRpm, "rpm", protocol.fastS, "s"),
    single(reportWords.jars.between, protocol.betweenS, "s"),
    pair(reportWords.jars.slow, protocol.slowRpm, "rpm", protocol.slowS, "s"),
    single(reportWords.jars.pours, protocol.pours, ""),
    single(reportWords.jars.drained, protocol.drainS ?? null, "s"),
    protocol.pressKPa == null && protocol.pressMin == null
      ? null
      : reportWords.jars.pressed(
          protocol.pressKPa == null
            ? onPaperWords.notMeasured
            : words.enteredBoth(protocol.pressKPa, "pressureKPa"),
          value(protocol.pressMin ?? null, "min"),
        ),
  ].filter((text) => text !== null);
  return parts.length === 0 ? onPaperWords.notNoted : parts.join(", ");
}

function uncertaintyWords({ uncertaintyA }: SeriesChain, words: PaperWords): string {
  if (!uncertaintyA) return reportWords.jars.noUncertainty;
  const pct = (relative: number) => `${words.number(relative * 100, 2)} %`;
  return reportWords.jars.uncertainty(
    pct(uncertaintyA.shared),
    pct(uncertaintyA.sharedLeft),
    pct(uncertaintyA.perJar),
  );
}
