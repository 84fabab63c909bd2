import type { Field, Slot } from "../../../exchange/columns.ts";
import type { OutCell } from "../../../exchange/csv-out.ts";
import type { RecordOf } from "../../schema/records.ts";
import type { ReadingKind } from "../../schema/bench.ts";
import type { RowReader } from "../row-reader.ts";
import { importWords } from "../../../words/imports.ts";

export type Reading = RecordOf<"reading">;
export type Result = Reading["result"];
export type Series = RecordOf<"series">;

/** A result read from a row, with the column that each part of it came from, so that a refused part can be named. */
export interface ReadValue {
  result: Result;
  from: Partial<Record<string, Field>>;
}

/** One thing read of a jar: which results it holds, how they are written, and how a row is read back into one. */
export interface SlotSpec {
  slot: Slot;
  kinds: ReadingKind[];
  fields: Field[];
  /** where two slots hold one kind: whether a result belongs to this one */
  holds?(result: Result, series: Series): boolean;
  write(result: Result, series: Series): Partial<Record<Field, OutCell>>;
  read(row: RowReader, series: Series): ReadValue | null;
}

/** A value with its bound, as it is written. */
export const bound = (value: number, censored: "above" | "below" | null): OutCell =>
  censored === null ? value : { bound: censored, value };

const agreement = 0.01;

/** Masses are the reading; a result beside them is only held against what they make (within 1 %). */
export function agrees(row: RowReader, field: Field, made: number | null): void {
  const stated = row.reading(field);
  if (stated === null || made === null) return;
  if (Math.abs(stated.value - made) > agreement * Math.abs(made))
    row.fault(field, importWords.disagrees(stated.value, made.toPrecision(4)));
}

/** Several cells that only mean something together: null where all are empty, or where a needed one is. */
export function group<N extends Field, O extends Field = never>(
  row: RowReader,
  needed: N[],
  optional: O[],
  what: keyof typeof importWords.emptyNeeded,
): (Record<N, number> & Record<O, number | null>) | null {
  if (![...needed, ...optional].some((field) => row.filled(field))) return null;
  const before = row.faults.length;
  const values: Partial<Record<Field, number | null>> = {};
  for (const field of needed) {
    const value = row.number(field);
    if (value === null && row.faults.length === before) row.fault(field, importWords.emptyNeeded[what]);
    values[field] = value;
  }
  for (const field of optional) values[field] = row.number(field);
  return row.faults.length === before ? (values as Record<N, number> & Record<O, number | null>) : null;
}

/** A reading that is one plain number in one column. */
export function plainSlot<K extends ReadingKind>(slot: Slot, kind: K, part: string, field: Field): SlotSpec {
  return {
    slot,
    kinds: [kind],
    fields: [field],
    write: (result) => ({ [field]: (result as unknown as Record<string, number>)[part] ?? null }),
    read: (row) => {
      const value = row.number(field);
      return value === null
        ? null
        : { result: { kind, [part]: value } as unknown as Result, from: { [part]: field } };
    },
  };
}
