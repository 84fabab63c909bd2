import { cellText } from "../../exchange/csv-out.ts";
import type { FileCell } from "../../responses/response.ts";
import { fieldLabel } from "../../exchange/column-words.ts";
import { about, type Field } from "../../exchange/columns.ts";
import { escapeText } from "../../exchange/text-cell.ts";
import type { ExportTold } from "../../exchange/told.ts";
import type { OutSheet } from "../../exchange/workbook-out.ts";
import type { DecimalMark } from "../../units/number-entry.ts";
import { fieldUnit, fieldWords } from "../issue-words.ts";
import { references } from "../references.ts";
import { kindWords } from "../../words/records.ts";
import { kinds, type Kind, type StudyState } from "../schema/records.ts";
import { flatTable } from "./flat-table.ts";
import { slotOf, writeSlot } from "./slots.ts";
import { importWords } from "../../words/imports.ts";

/** Kinds with a sheet of their own making, or that no sheet can hold. */
const elsewhere = new Set<Kind>(["jar", "reading", "photo"]);

type Cell = string | number | null;

/**
 * A study as the sheets of a workbook: first the jars with their readings, as our own import reads them back, then one
 * reading a row, then a sheet for each other kind of record, with units in the heads. Records are named, not numbered.
 */
export function studySheets(state: StudyState, mark: DecimalMark, told?: ExportTold): OutSheet[] {
  const jars = flatTable(state, null, told);
  const cell = (value: FileCell): Cell =>
    value === null || typeof value === "number" ? value : cellText(value, mark);
  return [
    { name: "jars", rows: [jars.heads, ...jars.rows.map((row) => row.map(cell))] },
    { name: "readings", rows: readingRows(state, cell) },
    ...kinds
      .filter((kind) => !elsewhere.has(kind) && Object.keys(state[kind]).length > 0)
      .map((kind) => ({ name: kindWords[kind].many.slice(0, 31), rows: kindRows(state, kind) })),
  ];
}

function readingRows(state: StudyState, cell: (value: FileCell) => Cell): Cell[][] {
  const words = importWords.workbook;
  const rows: Cell[][] = [
    [words.series, words.jar, words.read, words.value, words.takenAt, words.leftOut, words.note],
  ];
  for (const reading of Object.values(state.reading).sort((a, b) => (a.id < b.id ? -1 : 1))) {
    const jar = state.jar[reading.jarId]!;
    const series = state.series[jar.seriesId]!;
    const slot = slotOf(reading.result, series);
    const beside: readonly Field[] = about(slot);
    const cells = Object.entries(writeSlot(reading, series)) as [Field, FileCell][];
    for (const [field, value] of cells) {
      if (value === null || beside.includes(field)) continue;
      rows.push([
        escapeText(series.label),
        escapeText(jar.label),
        fieldLabel(field),
        cell(value),
        reading.takenAt,
        reading.leftOut?.reason ?? null,
        escapeText(reading.note),
      ]);
    }
  }
  return rows;
}

const unlisted = new Set(["id", "snapshot"]);

function kindRows(state: StudyState, kind: Kind): Cell[][] {
  const records = Object.values(state[kind]).sort((a, b) => (a.id < b.id ? -1 : 1));
  const flat = records.map((record) => flatten(record as Record<string, unknown>, state, kind, ""));
  const heads = [...new Set(flat.flatMap((cells) => [...cells.keys()]))];
  return [heads, ...flat.map((cells) => heads.map((head) => cells.get(head) ?? null))];
}

function flatten(
  record: Record<string, unknown>,
  state: StudyState,
  kind: Kind,
  before: string,
): Map<string, Cell> {
  const cells = new Map<string, Cell>();
  for (const [field, value] of Object.entries(record)) {
    if (unlisted.has(field)) continue;
    const link =
      before === "" ? references.find((one) => one.from === kind && one.field === field) : undefined;
    const unit = fieldUnit(field);
    const words = `${before}${fieldWords(link ? field.replace(/Id$/, "") : field)}`;
    const head = unit ? `${words}, ${unit}` : words;
    if (link && typeof value === "string") cells.set(head, escapeText(nameOf(state, link.to, value)));
    else if (value !== null && typeof value === "object" && !Array.isArray(value))
      for (const [inner, cell] of flatten(value as Record<string, unknown>, state, kind, `${words}: `))
        cells.set(inner, cell);
    else cells.set(head, plain(value));
  }
  return cells;
}

function plain(value: unknown): Cell {
  if (value === null || value === undefined) return null;
  if (typeof value === "number") return value;
  if (typeof value === "string") return escapeText(value);
  if (typeof value === "boolean") return value ? importWords.workbook.yes : importWords.workbook.no;
  return Array.isArray(value) && value.length === 0 ? null : JSON.stringify(value);
}

function nameOf(state: StudyState, kind: Kind, id: string): string {
  const record = state[kind][id] as { label?: string; name?: string } | undefined;
  return record?.label ?? record?.name ?? id;
}
