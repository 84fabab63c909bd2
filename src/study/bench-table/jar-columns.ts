import { bad, good, type Outcome } from "../../outcome.ts";
import { readingColumns } from "../../responses/registry.ts";
import { parseNumber, writeNumber, type DecimalMark } from "../../units/number-entry.ts";
import type { SimpleCommand } from "../commands.ts";
import type { JarChain, Reading, SeriesChain } from "../derive/jars.ts";
import { fieldText, parseReadingText, readingCommands, type ReadingColumn } from "./reading-columns.ts";
import { benchTableWords } from "../../words/bench-table.ts";

/** What a table's cells need of their surroundings: the series, how numbers are written, ids and the time. */
export interface TableContext {
  series: SeriesChain["series"];
  /** the readings the table shows */
  readings: ReadingColumn[];
  mark: DecimalMark;
  /** doses are typed and shown in the study's unit */
  doseUnit: string;
  doseToShown(kgPerT: number): number;
  doseToCanonical(shown: number): number;
  newId(): string;
  now(): string;
}

/** What a typed cell looks at of a jar: its record and its readings, nothing derived. */
export type TableJar = Pick<JarChain, "jar" | "readings">;

/** A typed column of the jar table: what stands in a cell, and the edits that a typed text means. */
export interface JarColumn {
  key: string;
  label: string;
  unit: string;
  numeric: boolean;
  /** the cell's name for its draft, so that one number typed in two places is one draft */
  place(jar: TableJar): string;
  text(jar: TableJar): string;
  /** the edits for a text, or the sentence why not; an empty list where nothing changes */
  commands(jar: TableJar, text: string): Outcome<SimpleCommand[]>;
  /** a short remark beside the number */
  note(jar: TableJar): string;
}

type NumberField =
  | "order"
  | "plannedDoseAKgPerT"
  | "plannedDoseBKgPerT"
  | "syringeAMl"
  | "syringeBMl"
  | "blankWaterMl"
  | "sampleVolumeMl";

function numberColumn(
  context: TableContext,
  field: NumberField,
  key: string,
  label: string,
  unit: string,
  dose = false,
): JarColumn {
  const write = (value: number) =>
    writeNumber(dose ? Number(context.doseToShown(value).toPrecision(8)) : value, context.mark);
  return {
    key,
    label,
    unit,
    numeric: true,
    place: ({ jar }) => `jar ${jar.id} ${key}`,
    text: ({ jar }) => (jar[field] === null ? "" : write(jar[field])),
    commands: ({ jar }, text) => {
      if (text.trim() === "")
        return field === "order"
          ? bad(benchTableWords.needsOrder)
          : good([{ do: "set", kind: "jar", id: jar.id, fields: { [field]: null } }]);
      const parsed = parseNumber(text, context.mark);
      if (!parsed.ok) return parsed;
      const value = dose ? context.doseToCanonical(parsed.value) : parsed.value;
      return good([{ do: "set", kind: "jar", id: jar.id, fields: { [field]: value } }]);
    },
    note: () => "",
  };
}

/** The reading of a column that counts in a jar: the first that is not left out. */
export function readingOf(jar: TableJar, column: ReadingColumn): Reading | null {
  return jar.readings.find(({ result, leftOut }) => result.kind === column.kind && leftOut === null) ?? null;
}

function readingAt(context: TableContext, column: ReadingColumn): JarColumn {
  const { series } = context;
  return {
    key: column.key,
    label: column.label,
    unit: column.unit(series),
    numeric: true,
    place: ({ jar }) => `jar ${jar.id} ${column.key}`,
    text: (jar) => {
      const reading = readingOf(jar, column);
      return reading ? fieldText(reading.result, column.field, context.mark) : "";
    },
    commands: (jar, text) => {
      const parsed = parseReadingText(column, text, series, context.mark);
      if (!parsed.ok) return parsed;
      return readingCommands(column, parsed.value, {
        jarId: jar.jar.id,
        before: readingOf(jar, column),
        series,
        newId: context.newId,
        now: context.now(),
      });
    },
    note: (jar) => {
      const reads = jar.readings.filter(({ result }) => result.kind === column.kind).length;
      return reads > 1 ? benchTableWords.reads(reads) : "";
    },
  };
}

/** Which readings a series shows: those it asks for, and those that any jar has. */
export function shownReadings(chain: SeriesChain): ReadingColumn[] {
  const kinds = new Set<string>(chain.series.readings);
  for (const jar of chain.jars) for (const { result } of jar.readings) kinds.add(result.kind);
  return readingColumns.filter((column) => kinds.has(column.kind));
}

/** The typed columns of a series' jar table, left to right. */
export function jarColumns(context: TableContext): JarColumn[] {
  const letters = context.series.stockBId === null ? (["A"] as const) : (["A", "B"] as const);
  const name: JarColumn = {
    key: "label",
    label: benchTableWords.name,
    unit: "",
    numeric: false,
    place: ({ jar }) => `jar ${jar.id} label`,
    text: ({ jar }) => jar.label,
    commands: ({ jar }, text) =>
      text.trim() === ""
        ? bad(benchTableWords.needsName)
        : good([{ do: "set", kind: "jar", id: jar.id, fields: { label: text.trim() } }]),
    note: ({ jar }) => benchTableWords.roles[jar.role],
  };
  return [
    name,
    numberColumn(context, "order", "order", benchTableWords.runningOrder, ""),
    ...letters.flatMap((letter) => [
      numberColumn(
        context,
        `plannedDose${letter}KgPerT`,
        `planned${letter}`,
        benchTableWords.plannedDose(letter),
        context.doseUnit,
        true,
      ),
      numberColumn(context, `syringe${letter}Ml`, `syringe${letter}`, benchTableWords.syringe(letter), "mL"),
    ]),
    numberColumn(context, "blankWaterMl", "blankWater", benchTableWords.blankWater, "mL"),
    ...context.readings.map((column) => readingAt(context, column)),
  ];
}
