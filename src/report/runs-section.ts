import { factorsOf, type FactorChain } from "../study/derive/plant-factor.ts";
import { runsOf, type RunChain, type RunPolymer } from "../study/derive/plant-runs.ts";
import { plantRunWords } from "../words/plant-runs.ts";
import type { DoseWay } from "../plant/run-dose.ts";
import { driftChain, watched, type Watched } from "../study/derive/plant-watch.ts";
import type { StudyState } from "../study/schema/records.ts";
import { markup, type Markup } from "./markup.ts";
import { table, type Column } from "./table.ts";
import type { PaperWords } from "./words.ts";
import { runsReportWords } from "../words/runs-report.ts";

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
    return markup`<section><h2>${runsReportWords.title}</h2><p class="gap">${runsReportWords.none}</p></section>`;
  return markup`<section><h2>${runsReportWords.title}</h2>${filled.map(({ caption, heads, rows }) =>
    table(
      caption,
      heads.map((head): Column => ({ head, whole: head === runsReportWords.runs.kind })),
      rows,
      runsReportWords.runs.noRow,
    ),
  )}${sentences.map((line) => markup`<p>${line}</p>`)}</section>`;
}

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
  const { runs: runHeads, ways } = runsReportWords;
  return {
    tables: [
      {
        caption: runHeads.caption,
        heads: [
          runHeads.run,
          runHeads.whenBy,
          runHeads.kind,
          runHeads.feed,
          runHeads.totalSolids,
          runHeads.dose,
          runHeads.cake,
          runHeads.filtrate,
          runHeads.capture,
          runHeads.machine,
          runHeads.counts,
        ],
        rows: runs.map((chain) => runRow(state, chain, words)),
      },
      {
        caption: ways.caption,
        heads: [
          runHeads.run,
          ways.polymer,
          ...Object.values(plantRunWords.ways),
          ways.differ,
          ways.benchDose,
        ],
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
  const doses = polymers.map(({ dose }) =>
    dose.value === null ? gap : words.bareInterval(dose.value, dose.low, dose.high, "doseKgPerT")(dose.value),
  );
  return [
    run.label,
    `${words.moment(run.at)}${run.byName ? `, ${run.byName}` : ""}`,
    runsReportWords.kinds[run.kind],
    run.feedM3PerH === null ? gap : words.enteredBare(run.feedM3PerH, "flowM3PerH"),
    plain(run.totalSolidsPct),
    doses.length === 0 ? gap : runsReportWords.runs.doses(doses),
    plain(run.cakePct),
    plain(run.filtrateTssMgPerL),
    capture.value === null ? gap : words.bare(capture.value, "percent"),
    [machine, run.machineSettings].filter((text) => text !== "").join(": ") || gap,
    [run.leftOut ? runsReportWords.runs.leftOut : run.best ? runsReportWords.runs.forFactor : "", run.note]
      .filter((text) => text !== "")
      .join("; "),
  ];
}

function wayRow({ run }: RunChain, polymer: RunPolymer, words: PaperWords): string[] {
  const { reconciled, lacking, benchProduct, benchDoseKgPerT } = polymer;
  const found = reconciled.ok ? reconciled.value : null;
  const says = runsReportWords.ways;
  return [
    run.label,
    benchProduct.label,
    ...(Object.keys(plantRunWords.ways) as DoseWay[]).map((way) => {
      const dose = found?.differences.find((one) => one.way === way);
      const shown = dose && words.bare(dose.doseKgPerT, "doseKgPerT");
      if (shown) return found?.from === way ? says.counting(shown) : shown;
      return says.notHad(lacking.find((one) => one.way === way)?.missing ?? says.notLogged);
    }),
    found?.spreadPct == null
      ? says.oneAlone
      : says[found.agrees ? "differBy" : "wrong"](words.number(found.spreadPct, 2)),
    benchDoseKgPerT === null ? gap : words.givenBare(benchDoseKgPerT, "doseKgPerT"),
  ];
}

function factorWords(state: StudyState, one: FactorChain, words: PaperWords): string {
  const used = Object.values(state.makeDown).some(
    ({ benchProductId, factorMachineId }) =>
      benchProductId === one.key.productId && factorMachineId === one.key.machineId,
  );
  const says = runsReportWords.factor;
  if (!one.factor.ok) return says.none(one.title, one.factor.message);
  const { factor, n, low, high, spreadPct } = one.factor.value;
  const write = words.interval(factor, low, high);
  const range =
    low === null || high === null || spreadPct === null
      ? says.oneRun
      : says.range(write(low), write(high), words.number(spreadPct, 2));
  return says[used ? "inUse" : "notInUse"](one.title, write(factor), n, range);
}
