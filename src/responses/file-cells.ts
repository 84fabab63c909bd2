import type { FileCell, FileRow, FileSlot } from "./response.ts";
import { area } from "../words/language.ts";

const fileWords = area("responseFiles", {
  disagrees: (stated: string, made: string) =>
    `the file says ${stated}, but the values beside it make ${made}: correct one of them, or leave this column out.`,
  needed: (what: string) => `is empty, but ${what} needs it.`,
});
export type ResponseFileWords = typeof fileWords;

/** A value with its bound, as it is written. */
export const bound = (value: number, censored: "above" | "below" | null): FileCell =>
  censored === null ? value : { bound: censored, value };

const agreement = 0.01;

/** Masses are the reading; a result beside them is only held against what they make (within 1 %). */
export function agrees<F extends string>(row: FileRow<F>, field: F, made: number | null): void {
  const stated = row.reading(field);
  if (stated === null || made === null) return;
  if (Math.abs(stated.value - made) > agreement * Math.abs(made))
    row.fault(field, fileWords.disagrees(row.words(stated.value), row.words(made)));
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
    if (value === null && row.faults.length === before) row.fault(field, fileWords.needed(what));
    values[field] = value;
  }
  for (const field of optional) values[field] = row.number(field);
  return row.faults.length === before ? (values as Record<N, number> & Record<O, number | null>) : null;
}

/** Columns for a reading that is one plain number in one column; its words are asked for whenever they are read. */
export function plainSlot<const N extends string, const F extends string>(
  names: Pick<FileSlot<F>, "guesses"> & { slot: N; field: F; words(): string; fieldWords(): string },
  kind: string,
  part: string,
): FileSlot<F> & { slot: N } {
  const { slot, guesses, field } = names;
  return {
    slot,
    get words() {
      return names.words();
    },
    get fields() {
      return { [field]: names.fieldWords() } as Record<F, string>;
    },
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
