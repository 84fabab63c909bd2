import { bad, good, type Outcome } from "../../outcome.ts";
import { kindOf, readingColumns, type ReadingKind } from "../../responses/registry.ts";
import type { Column } from "../../responses/response.ts";
import { parseReading, writeNumber, type DecimalMark, type TypedReading } from "../../units/number-entry.ts";
import type { SimpleCommand } from "../commands.ts";
import type { Reading } from "../derive/jars.ts";
import type { RecordOf } from "../schema/records.ts";
import { benchTableWords } from "../../words/bench-table.ts";

type Result = Reading["result"];
type Series = RecordOf<"series">;

/** One number of a reading as it is typed, and the kind of reading it belongs to. */
export type ReadingColumn = Column & { kind: ReadingKind };

/** The column of a reading's field, or undefined. */
export function readingColumn(kind: string, field: string): ReadingColumn | undefined {
  return readingColumns.find((column) => column.kind === kind && column.field === field);
}

/** A reading's number in one of its fields; null where it is not there yet. */
export function fieldValue(result: Result, field: string): number | null {
  const value = (result as unknown as Record<string, unknown>)[field];
  return typeof value === "number" ? value : null;
}

/** The text of a reading's field as it would be typed. */
export function fieldText(result: Result, field: string, mark: DecimalMark): string {
  const value = fieldValue(result, field);
  if (value === null) return "";
  const censored = "censored" in result ? result.censored : null;
  return `${censored === "above" ? ">" : censored === "below" ? "<" : ""}${writeNumber(value, mark)}`;
}

/** Reads typed text for a column: a number, or where the instrument has an end also ">x" and "<x". */
export function parseReadingText(
  column: ReadingColumn,
  text: string,
  series: Series,
  mark: DecimalMark,
): Outcome<TypedReading | null> {
  if (text.trim() === "") return good(null);
  const parsed = parseReading(text, mark);
  if (!parsed.ok) return parsed;
  if (parsed.value.censored && !column.censorable) return bad(benchTableWords.plainNumber(column.label));
  const refusal = kindOf(column).refuse?.(parsed.value, series) ?? null;
  return refusal === null ? parsed : bad(refusal);
}

/**
 * The edits that make a typed value the reading of a jar: a new reading, a changed field, or, for nothing, the
 * reading taken back. `before` is the reading that stands in the cell.
 */
export function readingCommands(
  column: ReadingColumn,
  typed: TypedReading | null,
  context: { jarId: string; before: Reading | null; series: Series; newId(): string; now: string },
): Outcome<SimpleCommand[]> {
  const { before } = context;
  if (typed === null) {
    if (!before) return good([]);
    const emptied = { ...before.result, [column.field]: null } as Result;
    // The first number of several makes the reading: without it there is none.
    return good([
      kindOf(before.result).columns[0]?.field !== column.field
        ? { do: "set", kind: "reading", id: before.id, fields: { result: emptied } }
        : { do: "remove", kind: "reading", id: before.id },
    ]);
  }
  if (before) {
    const result = {
      ...before.result,
      [column.field]: typed.value,
      ...(column.censorable ? { censored: typed.censored } : {}),
    };
    return good([{ do: "set", kind: "reading", id: before.id, fields: { result } }]);
  }
  const result =
    kindOf(column).first?.(column.field, typed, context.series) ?? bad(benchTableWords.notHere(column.label));
  if (!result.ok) return result;
  return good([
    {
      do: "add",
      kind: "reading",
      record: {
        id: context.newId(),
        jarId: context.jarId,
        takenAt: context.now,
        result: { kind: column.kind, ...result.value },
      },
    },
  ]);
}
