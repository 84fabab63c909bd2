import { factorsOf, type FactorChain } from "../study/derive/plant-factor.ts";
import { runsOf, type RunChain, type RunPolymer } from "../study/derive/plant-runs.ts";
import { plantRunWords } from "../words/plant-runs.ts";
import type { DoseWay } from "../plant/run-dose.ts";
import { driftChain, watched, type Watched } from "../study/derive/plant-watch.ts";
import type { StudyState } from "../study/schema/records.ts";
import { markup, type Markup } from "./markup.ts";
import { table, type Column } from "./table.ts";
import type { PaperWords } from "./words.ts";

/** One table of what the plant did: its caption, its heads and its rows in words. */
export interface RunTable {
  caption: string;
  heads: string[];
  rows: string[][];
}

/** Plant runs as given, with what follows from them in sentences; without any, that none was logged. */
export function runsSection(tables: RunTable[], sentences: string[]): Markup {
  const filled = tables.filter(({ rows }) => rows.length > 0);
  if (filled.length === 0)
    return markup`<section><h2>Plant runs</h2><p class="gap">No plant runs logged.</p></section>`;
  return markup`<section><h2>Plant runs</h2>${filled.map(({ caption, heads, rows }) =>
    table(
      caption,
      heads.map((head): Column => ({ head })),
      rows,
      "none",
    ),
  )}${sentences.map((line) => markup`<p>${line}</p>`)}</section>`;
}

const kinds = { step: "step test", routine: "routine", comparison: "comparison" } as const;
const gap = "–";

/** Every run of a study: what was set and read, the dose by every way that was logged, and the factors they make. */
export function plantRuns(
  state: StudyState,
  seriesIds: string[],
  words: PaperWords,
): { tables: RunTable[]; sentences: string[] } {
  const bySeries = seriesIds.map((id) => runsOf(state, id));
  const runs = bySeries.flat();
  const streams = new Set(
    runs.flatMap(({ run }) => state.sample[state.series[run.seriesId]?.sampleId ?? ""]?.streamId ?? []),
  );
  return {
    tables: [
      {
        caption: "Runs as logged; –: not measured",
        heads: [
          "run",
          "when, by",
          "kind",
          "feed, m³/h",
          "TS, %",
          "dose, kg/t active",
          "cake TS, %",
          "filtrate TSS, mg/L",
          "capture, %",
          "machine",
          "counts, notes",
        ],
        rows: runs.map((chain) => runRow(state, chain, words)),
      },
      {
        caption: "Dose of each run by every way that was logged, kg/t active",
        heads: ["run", "polymer", ...Object.values(plantRunWords.ways), "ways differ by", "bench dose"],
        rows: runs.flatMap((chain) => chain.polymers.map((polymer) => wayRow(chain, polymer, words))),
      },
    ],
    sentences: [
      ...[...streams]
        .flatMap((streamId) => factorsOf(state, streamId))
        .map((one) => factorWords(state, one, words)),
      ...bySeries.flatMap((own) =>
        (Object.keys(watched) as Watched[]).flatMap((what) => driftChain(own, what).reason || []),
      ),
      ...runs.flatMap(({ run, warnings }) => warnings.map((warning) => `${run.label}: ${warning}`)),
    ],
  };
}

function runRow(state: StudyState, { run, polymers, capture }: RunChain, words: PaperWords): string[] {
  const plain = (value: number | null) => (value === null ? gap : words.entered(value));
  const machine = run.machineId ? (state.machine[run.machineId]?.label ?? "") : "";
  const doses = polymers.map(({ dose }) => (dose.value === null ? gap : words.number(dose.value, 3)));
  return [
    run.label,
    `${words.moment(run.at)}${run.byName ? `, ${run.byName}` : ""}`,
    kinds[run.kind],
    plain(run.feedM3PerH),
    plain(run.totalSolidsPct),
    doses.length === 0 ? gap : doses.join(" and "),
    plain(run.cakePct),
    plain(run.filtrateTssMgPerL),
    capture.value === null ? gap : words.number(capture.value),
    [machine, run.machineSettings].filter((text) => text !== "").join(": ") || gap,
    [run.leftOut ? "LEFT OUT" : run.best ? "for the factor" : "", run.note]
      .filter((text) => text !== "")
      .join("; "),
  ];
}

function wayRow({ run }: RunChain, polymer: RunPolymer, words: PaperWords): string[] {
  const { reconciled, lacking, benchProduct, benchDoseKgPerT } = polymer;
  const found = reconciled.ok ? reconciled.value : null;
  return [
    run.label,
    benchProduct.label,
    ...(Object.keys(plantRunWords.ways) as DoseWay[]).map((way) => {
      const dose = found?.differences.find((one) => one.way === way);
      if (dose) return `${words.number(dose.doseKgPerT, 3)}${found?.from === way ? " (counts)" : ""}`;
      return `not had: ${lacking.find((one) => one.way === way)?.missing ?? "not logged"}`;
    }),
    found?.spreadPct == null
      ? "one way alone"
      : `${words.number(found.spreadPct, 2)} %${found.agrees ? "" : ": a measurement is wrong"}`,
    benchDoseKgPerT === null ? gap : words.number(benchDoseKgPerT, 3),
  ];
}

function factorWords(state: StudyState, one: FactorChain, words: PaperWords): string {
  const used = Object.values(state.makeDown).some(
    ({ benchProductId, factorMachineId }) =>
      benchProductId === one.key.productId && factorMachineId === one.key.machineId,
  );
  const start = `Bench-to-plant factor of ${one.title}`;
  if (!one.factor.ok) return `${start}: none, ${one.factor.message}.`;
  const { factor, n, low, high, spreadPct } = one.factor.value;
  const range =
    low === null || high === null || spreadPct === null
      ? "one run alone has no spread"
      : `95 % ${words.number(low, 3)} to ${words.number(high, 3)}, runs scatter by ${words.number(spreadPct, 2)} %`;
  return `${start}: ${words.number(factor, 4)} from ${n} ${n === 1 ? "run" : "runs"} (${range}); ${used ? "in use for the settings" : "not in use"}.`;
}
