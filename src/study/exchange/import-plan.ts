import { chooseColumns, holdsNumbers, type ColumnUse, type Field } from "../../exchange/columns.ts";
import type { Table } from "../../exchange/grid.ts";
import { bad, good, type Outcome } from "../../outcome.ts";
import { parseNumber, readsTwoWays } from "../../units/number-entry.ts";
import { applyInSteps, mostTogether, type Command, type SimpleCommand } from "../commands.ts";
import type { Kind, RecordOf, StudyState } from "../schema/records.ts";
import { readJarRow, type JarRow } from "./jar-row.ts";
import type { MissingBasis } from "./jar-doses.ts";
import { rowReader, type RowFault } from "./row-reader.ts";
import { slotsWith } from "./slots.ts";
import { seriesTargets, type NewSeriesChoice, type SeriesTarget } from "./series-targets.ts";
import { importWords } from "../../words/imports.ts";
import { sheetWords } from "../../words/sheets.ts";

export interface ImportOptions {
  /** a series of the study, or the name of a new one; null lets the file's series column, else its name, say it */
  seriesName: string | null;
  /** the name of a new series where nothing else names one, usually the file's */
  fallbackName: string;
  /** how a new series is set up, where somebody chose */
  choice: NewSeriesChoice;
  /** leave bad rows out and add the others; otherwise one bad row keeps everything out */
  skipBad: boolean;
  /** rows of jars that the series has already add their readings to them; otherwise they are faults */
  readAgain: boolean;
  /** short sortable ids, each later than the one before */
  nextId(): string;
  /** told how many rows are read, then how many of the records they make have been tried */
  told?(step: "rows" | "records", done: number, total: number): void;
}

/** What a plan reads of a study: of its jars nothing, unless rows may go into a series that is there. */
export function kindsToPlan(intoSeries: boolean): Kind[] {
  const needed: Kind[] = ["study", "product", "sample", "dish", "stock", "series"];
  return intoSeries ? [...needed, "jar"] : needed;
}

/** One row of the preview. */
export interface PreviewRow {
  row: number;
  series: string;
  jar: string;
  /** active kg/t; null where no dose was given */
  doseA: number | null;
  doseB: number | null;
  readings: number;
  reread: boolean;
}

/** What an import would do. `command` is null where it would do nothing. */
export interface ImportPlan {
  rows: number;
  /** rows that would be added */
  added: number;
  errors: RowFault[];
  command: Extract<Command, { do: "together" }> | null;
  preview: PreviewRow[];
  counts: { newSeries: string[]; intoSeries: string[]; jars: number; readings: number };
}

/** The most characters one undo step may be as it is sent to be kept, and the most rows a preview shows. */
const most = { characters: 36_000_000, preview: 200 };

/**
 * Reads a table into series, jars and readings as one command. Rows with the same jar name and doses are re-reads of
 * that jar; other names are jars of their own. A fault of a row is listed; what concerns the whole file (a column not
 * chosen, a figure of the study that is missing) is one sentence. The result was applied to `state` before it is
 * answered, so a plan that is had can be carried out.
 */
export function planImport(
  state: StudyState,
  table: Table,
  uses: ColumnUse[],
  options: ImportOptions,
): Outcome<ImportPlan> {
  const columns = chooseColumns(table.heads, uses, table.name, !options.readAgain);
  if (!columns.ok) return columns;
  const ambiguous = ambiguousCell(table, uses);
  if (ambiguous) return bad(ambiguous);
  const targets = seriesTargets(state, table, columns.value, options);
  if (!targets.ok) return targets;

  const specs = slotsWith((field) => columns.value.fields[field] !== undefined);
  const missing: MissingBasis[] = [];
  const errors: RowFault[] = [];
  const read: JarRow[] = [];
  const names = new Map<string, number>();
  let readRows = 0;
  for (const row of table.rows) {
    const reader = rowReader(table, row, columns.value);
    const key = columns.value.fields.series === undefined ? "" : reader.label("series").toLowerCase();
    const target = targets.value.get(key);
    if (!target) reader.fault("series", importWords.nameSeries);
    else {
      const jar = readJarRow(state, reader, columns.value, target, specs, (fault) => missing.push(fault));
      const [lack] = missing;
      if (lack) return bad(sheetWords.at(table.name, lack.row, table.heads[lack.column] ?? "", lack.message));
      if (jar && reader.faults.length === 0) {
        const fault = jarFault(jar, read, names, options.readAgain);
        if (fault) reader.fault(fault.column, fault.message);
        else read.push(jar);
      }
    }
    errors.push(...reader.faults);
    readRows += 1;
    options.told?.("rows", readRows, table.rows.length);
  }
  const badRows = new Set(errors.map(({ row }) => row));
  const wanted = errors.length > 0 && !options.skipBad ? [] : read;
  const commands = commandsOf(wanted, options.nextId);
  if (commands.length > mostTogether)
    return bad(importWords.tooMany(table.name, commands.length, mostTogether));
  const label = importWords.label(table.name.split(/[\\/]/).pop() ?? "").slice(0, 300);
  const command: ImportPlan["command"] = commands.length === 0 ? null : { do: "together", label, commands };
  if (command) {
    if (JSON.stringify(command).length > most.characters) return bad(importWords.tooLong(table.name));
    const steps = applyInSteps(state, command);
    let step = steps.next();
    for (; !step.done; step = steps.next()) options.told?.("records", step.value, commands.length);
    if (!step.value.ok) return bad(sheetWords.whole(table.name, step.value.message));
  }
  const used = [...new Set(wanted.map(({ target }) => target))];
  return good({
    rows: table.rows.length,
    added: errors.length > 0 && !options.skipBad ? 0 : table.rows.length - badRows.size,
    errors,
    command,
    preview: read.slice(0, most.preview).map((jar) => ({
      row: jar.line,
      series: jar.target.series.label,
      jar: jar.label,
      doseA: jar.doseA.doseKgPerT,
      doseB: jar.doseB.doseKgPerT,
      readings: jar.readings.length,
      reread: jar.first !== null || jar.existing !== null,
    })),
    counts: {
      newSeries: used.filter(({ isNew }) => isNew).map(({ series }) => series.label),
      intoSeries: used.filter(({ isNew }) => !isNew).map(({ series }) => series.label),
      jars: wanted.filter(({ first, existing }) => first === null && existing === null).length,
      readings: wanted.reduce((sum, { readings }) => sum + readings.length, 0),
    },
  });
}

/** Where no cell tells the decimal mark, a cell that can be read two ways concerns the whole file. */
function ambiguousCell(table: Table, uses: ColumnUse[]): string | null {
  if (table.mark !== null) return null;
  const numeric = uses.flatMap((use, column) => (holdsNumbers(use) ? [column] : []));
  for (const row of table.rows)
    for (const column of numeric) {
      const text = (row.cells[column] ?? "").replace(/^[<>]/, "");
      const parsed = parseNumber(text, null);
      if (!parsed.ok && readsTwoWays(text))
        return sheetWords.at(table.name, row.line, table.heads[column] ?? "", parsed.message);
    }
  return null;
}

const sameDose = (a: number | null, b: number | null) =>
  a === b || (a !== null && b !== null && Math.abs(a - b) <= 1e-9 * Math.max(Math.abs(a), Math.abs(b)));

/** Whether a row that gives a dose gives the volume (within 1 %) that the jar of the study was injected with. */
const agrees = (injectedMl: number | null, { syringeMl }: JarRow["doseA"]) =>
  syringeMl === null ||
  (injectedMl !== null && Math.abs(syringeMl - injectedMl) <= 0.01 * Math.max(syringeMl, injectedMl));

/** Settles whether a row is a new jar or a re-read; answers what keeps it from being either. */
function jarFault(
  jar: JarRow,
  read: JarRow[],
  names: Map<string, number>,
  readAgain: boolean,
): { column: Field | number; message: string } | null {
  const { target, label } = jar;
  const key = `${target.series.id} ${label.toLowerCase()}`;
  const at = names.get(key);
  if (at === undefined) {
    const existing = target.jarsByName.get(label.toLowerCase());
    if (existing && !readAgain)
      return {
        column: "jar",
        message: importWords.jarThere(label, target.series.label),
      };
    if (!existing && !jar.canMake)
      return {
        column: "jar",
        message: importWords.jarMissing(label, target.series.label),
      };
    const [empty] = jar.emptyDoses;
    if (!existing && empty !== undefined) return { column: empty, message: importWords.doseMissing };
    if (existing && !(agrees(existing.syringeAMl, jar.doseA) && agrees(existing.syringeBMl, jar.doseB)))
      return {
        column: "jar",
        message: importWords.jarDosedOtherwise(label, target.series.label),
      };
    if (existing) {
      names.set(key, read.length);
      jar.existing = existing;
      return null;
    }
    names.set(key, read.length);
    if (!jar.hasOrder) jar.record.order = target.lastOrder + 1;
    target.lastOrder = Math.max(target.lastOrder, jar.record.order);
    return null;
  }
  const first = read[at]!;
  const blankDose = jar.doseA.doseKgPerT === null && jar.doseB.doseKgPerT === null;
  if (
    !blankDose &&
    !(
      sameDose(first.doseA.doseKgPerT, jar.doseA.doseKgPerT) &&
      sameDose(first.doseB.doseKgPerT, jar.doseB.doseKgPerT)
    )
  )
    return {
      column: "jar",
      message: importWords.otherDoses(label, first.line),
    };
  jar.first = first;
  return null;
}

function commandsOf(jars: JarRow[], nextId: () => string): SimpleCommand[] {
  const commands: SimpleCommand[] = [];
  const targets = new Set<SeriesTarget>(jars.map(({ target }) => target));
  for (const { series, isNew } of targets)
    if (isNew) commands.push({ do: "add", kind: "series", record: series });
  const ids = new Map<JarRow, string>();
  for (const jar of jars) {
    if (jar.existing) ids.set(jar, jar.existing.id);
    else if (jar.first === null) {
      const id = nextId();
      ids.set(jar, id);
      commands.push({ do: "add", kind: "jar", record: { ...jar.record, id } });
    }
    const jarId = ids.get(jar.first ?? jar)!;
    for (const { result, leftOut, note, takenAt } of jar.readings)
      commands.push({
        do: "add",
        kind: "reading",
        record: { id: nextId(), jarId, result, leftOut, note, takenAt } satisfies Partial<
          RecordOf<"reading">
        >,
      });
  }
  return commands;
}
