import type { ChosenColumns, Field } from "../../exchange/columns.ts";
import type { Table } from "../../exchange/grid.ts";
import { unescapeText } from "../../exchange/text-cell.ts";
import { bad, good, type Outcome } from "../../outcome.ts";
import { parseNumber } from "../../units/number-entry.ts";
import { sampleChain, type SampleChain } from "../derive/sample.ts";
import { stockChain, type StockChain } from "../derive/stock.ts";
import { recordSchemas, type RecordOf, type StudyState } from "../schema/records.ts";
import { describeIssue } from "../issue-words.ts";
import { importWords } from "../../words/imports.ts";
import { kindWords } from "../../words/records.ts";
import { sheetWords } from "../../words/sheets.ts";

type Series = RecordOf<"series">;

/** What a new series is set up with, where the person chose; what is not given comes from the study. */
export interface NewSeriesChoice {
  sampleId?: string | null;
  stockAId?: string | null;
  stockBId?: string | null;
  sampleVolumeMl?: number | null;
}

/** A series that rows go to: one of the study, or a new one, with what its doses are made from. */
export interface SeriesTarget {
  series: Series;
  isNew: boolean;
  sample: SampleChain;
  sampleLabel: string;
  stockA: StockChain | null;
  stockB: StockChain | null;
  /** the jars it holds already, by their names in small letters */
  jarsByName: Map<string, RecordOf<"jar">>;
  lastOrder: number;
  /** the last number given as a name to a jar of a file without names */
  lastNumber: number;
}

export interface TargetOptions {
  /** a series of the study or a new one, for every row; null lets the file say */
  seriesName: string | null;
  /** the name of a new series where nothing else names one */
  fallbackName: string;
  choice: NewSeriesChoice;
  nextId(): string;
}

const lower = (text: string) => text.trim().toLowerCase();

/** The series for each row of the table, by its name in small letters ("" where the file has no series column). */
export function seriesTargets(
  state: StudyState,
  table: Table,
  columns: ChosenColumns,
  options: TargetOptions,
): Outcome<Map<string, SeriesTarget>> {
  const column = columns.fields.series;
  const rowsByName = new Map<string, { name: string; rows: Table["rows"] }>();
  for (const row of table.rows) {
    const name = column === undefined ? "" : unescapeText(row.cells[column] ?? "").trim();
    if (column !== undefined && name === "") continue;
    const group = rowsByName.get(lower(name));
    if (group) group.rows.push(row);
    else rowsByName.set(lower(name), { name, rows: [row] });
  }
  if (options.seriesName !== null && rowsByName.size > 1)
    return bad(importWords.manySeries(table.name, rowsByName.size, table.heads[column ?? 0] ?? ""));
  const targets = new Map<string, SeriesTarget>();
  for (const [key, group] of rowsByName) {
    const named = options.seriesName ?? (group.name || null);
    const name = (named ?? options.fallbackName).trim();
    const existing = Object.values(state.series).find((series) => lower(series.label) === lower(name));
    if (existing && named === null) return bad(importWords.seriesThere(table.name, name));
    const target = existing
      ? good(targetOf(state, existing, false))
      : newTarget(state, table, group.rows, columns, name, options);
    if (!target.ok) return target;
    targets.set(key, target.value);
  }
  return good(targets);
}

function targetOf(state: StudyState, series: Series, isNew: boolean): SeriesTarget {
  const jars = isNew ? [] : Object.values(state.jar).filter((jar) => jar.seriesId === series.id);
  return {
    series,
    isNew,
    sample: sampleChain(state, series.sampleId),
    sampleLabel: state.sample[series.sampleId]?.label ?? "",
    stockA: series.stockAId ? stockChain(state, series.stockAId) : null,
    stockB: series.stockBId ? stockChain(state, series.stockBId) : null,
    jarsByName: new Map(jars.map((jar) => [lower(jar.label), jar])),
    lastOrder: jars.reduce((most, jar) => Math.max(most, jar.order), 0),
    lastNumber: jars.length,
  };
}

/** The value most rows have in a column of numbers, or null. */
function usualNumber(table: Table, rows: Table["rows"], column: number | undefined): number | null {
  if (column === undefined) return null;
  const counts = new Map<number, number>();
  for (const row of rows) {
    const parsed = parseNumber(row.cells[column] ?? "", table.mark);
    if (parsed.ok) counts.set(parsed.value, (counts.get(parsed.value) ?? 0) + 1);
  }
  return [...counts].sort((a, b) => b[1] - a[1])[0]?.[0] ?? null;
}

function newTarget(
  state: StudyState,
  table: Table,
  rows: Table["rows"],
  columns: ChosenColumns,
  name: string,
  { choice, nextId }: TargetOptions,
): Outcome<SeriesTarget> {
  const hasB =
    columns.doses.some(({ polymer, column }) => polymer === "b" && filled(rows, column)) ||
    filled(rows, columns.fields.planned_dose_b_kg_per_t) ||
    filled(rows, columns.fields.stock_b);
  const allSeries = Object.values(state.series).sort((a, b) => (a.id < b.id ? -1 : 1));
  const sameCount = allSeries.filter((series) => (series.stockBId !== null) === hasB);
  const alike = sameCount.length > 0 ? sameCount : allSeries;
  const pattern = alike.at(-1) ?? null;

  const byName = (field: Field, kind: "sample" | "stock"): Outcome<string | null> => {
    const place = columns.fields[field];
    const row = place === undefined ? undefined : rows.find(({ cells }) => cells[place] !== "");
    if (place === undefined || !row) return good(null);
    const label = unescapeText(row.cells[place] ?? "").trim();
    const record = Object.values(state[kind]).find((one) => lower(one.label) === lower(label));
    if (record) return good(record.id);
    return bad(
      sheetWords.at(
        table.name,
        row.line,
        table.heads[place] ?? "",
        kind === "sample"
          ? importWords.noSample(label.slice(0, 60))
          : importWords.noStock(label.slice(0, 60)),
      ),
    );
  };
  const namedSample = byName("sample", "sample");
  if (!namedSample.ok) return namedSample;
  const namedA = byName("stock_a", "stock");
  if (!namedA.ok) return namedA;
  const namedB = byName("stock_b", "stock");
  if (!namedB.ok) return namedB;

  // Which sludge and which polymer the jars had is never picked out of several: it must be said, or be the only one.
  const samples = Object.keys(state.sample);
  const sampleId = namedSample.value ?? choice.sampleId ?? (samples.length === 1 ? samples[0]! : null);
  if (sampleId === null)
    return bad(
      samples.length === 0
        ? importWords.sampleFirst(table.name)
        : importWords.whichSample(table.name, samples.length, name),
    );
  const stocks = Object.keys(state.stock);
  // A file that names solutions says with an empty cell that there is none.
  const saysStocks = columns.fields.stock_a !== undefined || columns.fields.stock_b !== undefined;
  const stockId = (
    named: string | null,
    chosen: string | null | undefined,
    letter: "A" | "B",
  ): Outcome<string | null> => {
    if (named !== null || chosen !== undefined) return good(named ?? chosen ?? null);
    if (saysStocks || stocks.length === 0 || (letter === "B" && !hasB)) return good(null);
    const used = new Set(
      alike.flatMap((series) => (letter === "A" ? series.stockAId : series.stockBId) ?? []),
    );
    const usual = used.size > 0 ? [...used] : stocks;
    if (usual.length === 1) return good(usual[0]!);
    return bad(importWords.whichStock(table.name, `stock_${letter.toLowerCase()}`, letter, name));
  };
  const stockA = stockId(namedA.value, choice.stockAId, "A");
  if (!stockA.ok) return stockA;
  const stockB = stockId(namedB.value, choice.stockBId, "B");
  if (!stockB.ok) return stockB;
  const stockAId = stockA.value;
  const stockBId = stockB.value;
  const fnu = filled(rows, columns.fields.turbidity_fnu);
  const ntu = filled(rows, columns.fields.turbidity_ntu);
  const drainS = usualNumber(table, rows, columns.fields.drained_at_s);
  const setUp: Partial<Series> = { ...pattern, startedAt: null, note: "" };
  const record = {
    ...setUp,
    id: nextId(),
    label: name,
    sampleId,
    stockAId,
    stockBId,
    sampleVolumeMl:
      usualNumber(table, rows, columns.fields.sample_volume_ml) ??
      choice.sampleVolumeMl ??
      setUp.sampleVolumeMl ??
      null,
    turbidityUnit: fnu && !ntu ? "FNU" : ntu ? "NTU" : (setUp.turbidityUnit ?? "NTU"),
    protocol: { ...setUp.protocol, ...(drainS === null ? {} : { drainS }) },
  };
  const parsed = recordSchemas.series.safeParse(record);
  if (!parsed.success)
    return bad(
      importWords.seriesRefused(
        table.name,
        name.slice(0, 60),
        describeIssue(parsed.error, kindWords.series.one, record),
      ),
    );
  if (stockAId !== null && stockAId === stockBId)
    return bad(importWords.seriesRefused(table.name, name, importWords.sameStock));
  return good(targetOf(state, parsed.data, true));
}

function filled(rows: Table["rows"], column: number | undefined): boolean {
  return column !== undefined && rows.some(({ cells }) => cells[column] !== "");
}
