import type { Figure } from "../study/derive/figure.ts";
import type { JarChain, Reading, SeriesChain } from "../study/derive/jars.ts";
import type { RecordOf } from "../study/schema/records.ts";
import { leftOutWords } from "./sample-section.ts";
import { markup, type Markup } from "./markup.ts";
import { facts, table, type Column } from "./table.ts";
import { notMeasured, type PaperWords } from "./words.ts";

type Kind = Reading["result"]["kind"];

const kindHeads: Record<Kind, string> = {
  turbidity: "turbidity",
  "filtrate-tss": "filtrate TSS, mg/L",
  "filtrate-tss-dish": "filtrate TSS dish: empty, dry g; mL",
  drained: "drained, mL at s",
  cst: "CST, s",
  "cake-dish": "cake dish: empty, wet, dry g",
  "cake-ts": "cake TS, %",
  capture: "capture as read, %",
  "floc-grade": "floc, 1 to 5",
};

function readingWords({ result, leftOut }: Reading, words: PaperWords): string {
  const sign = "censored" in result && result.censored ? (result.censored === "above" ? "> " : "< ") : "";
  const text = ((): string => {
    switch (result.kind) {
      case "turbidity":
        return `${sign}${words.entered(result.value)}${result.dilution === 1 ? "" : ` × ${words.entered(result.dilution)}`}`;
      case "filtrate-tss":
        return `${sign}${words.entered(result.mgPerL)}`;
      case "filtrate-tss-dish":
        return `${words.entered(result.tareG)}, ${words.entered(result.dryG)}; ${words.entered(result.volumeMl)}`;
      case "drained":
        return `${words.entered(result.ml)} at ${words.entered(result.atS)}`;
      case "cst":
        return words.entered(result.seconds);
      case "cake-dish":
        return `${words.entered(result.tareG)}, ${words.entered(result.wetG)}, ${words.entered(result.dryG)}`;
      case "cake-ts":
      case "capture":
        return words.entered(result.pct);
      case "floc-grade":
        return words.entered(result.grade);
    }
  })();
  return leftOut === null ? text : `${text} (left out: ${leftOutWords(leftOut)})`;
}

/** How the jars of a series were treated, and every jar with every reading: re-reads beside each other, gaps as gaps. */
export function jarsSection(chain: SeriesChain, words: PaperWords): Markup {
  const { series, jars, stockA, stockB } = chain;
  const kinds = (Object.keys(kindHeads) as Kind[]).filter((kind) =>
    jars.some(({ readings }) => readings.some(({ result }) => result.kind === kind)),
  );
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
    ...kinds.map((kind) => ({
      head: kind === "turbidity" ? `turbidity, ${series.turbidityUnit}` : kindHeads[kind],
      number: true,
    })),
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
  kinds: Kind[],
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

function protocolWords(protocol: RecordOf<"series">["protocol"], words: PaperWords): string {
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
    single("drained read at", protocol.drainS, "s"),
    pair("pressed at", protocol.pressKPa, "kPa", protocol.pressMin, "min"),
  ].filter((text) => text !== null);
  return parts.length === 0 ? "not noted" : parts.join(", ");
}

function uncertaintyWords({ uncertaintyA }: SeriesChain, words: PaperWords): string {
  if (!uncertaintyA) return "not known: no limit of syringe, masses or solids is entered";
  const pct = (relative: number) => `${words.number(relative * 100, 2)} %`;
  return `shared by all jars ${pct(uncertaintyA.shared)} (${pct(uncertaintyA.sharedLeft)} once what the plant repeats cancels), of each jar's own ${pct(uncertaintyA.perJar)}; standard uncertainties of polymer A's dose`;
}
