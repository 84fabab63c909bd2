import type { FileCell, FileRow, FileSlot } from "./response.ts";

/** A value with its bound, as it is written. */
export const bound = (value: number, censored: "above" | "below" | null): FileCell =>
  censored === null ? value : { bound: censored, value };

const agreement = 0.01;

/** Masses are the reading; a result beside them is only held against what they make (within 1 %). */
export function agrees<F extends string>(row: FileRow<F>, field: F, made: number | null): void {
  const stated = row.reading(field);
  if (stated === null || made === null) return;
  if (Math.abs(stated.value - made) > agreement * Math.abs(made))
    row.fault(
      field,
      `the file says ${stated.value}, but the values beside it make ${made.toPrecision(4)}: correct one of them, or leave this column out.`,
    );
}

/** Several cells that only mean something together: null where all are empty, or where a needed one is. */
export function group<A extends string, N extends A, O extends A = never>(
  row: FileRow<A>,
  needed: N[],
  optional: O[],
  what: string,
): (Record<N, number> & Record<O, number | null>) | null {
  if (![...needed, ...optional].some((field) => row.filled(field))) return null;
  const before = row.faults.length;
  const values: Partial<Record<A, number | null>> = {};
  for (const field of needed) {
    const value = row.number(field);
    if (value === null && row.faults.length === before) row.fault(field, `is empty, but ${what} needs it.`);
    values[field] = value;
  }
  for (const field of optional) values[field] = row.number(field);
  return row.faults.length === before ? (values as Record<N, number> & Record<O, number | null>) : null;
}

/** Columns for a reading that is one plain number in one column. */
export function plainSlot<const N extends string, const F extends string>(
  names: Pick<FileSlot<F>, "words" | "guesses"> & { slot: N; field: F; fieldWords: string },
  kind: string,
  part: string,
): FileSlot<F> & { slot: N } {
  const { slot, words, guesses, field, fieldWords } = names;
  return {
    slot,
    words,
    fields: { [field]: fieldWords } as Record<F, string>,
    ...(guesses ? { guesses } : {}),
    kinds: [kind],
    write: (result: Record<string, number>) =>
      ({ [field]: result[part] ?? null }) as Partial<Record<F, FileCell>>,
    read: (row) => {
      const value = row.number(field);
      return value === null ? null : { result: { kind, [part]: value }, from: { [part]: field } };
    },
  };
}
