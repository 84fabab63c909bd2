import type { z } from "zod";
import type { Outcome } from "../outcome.ts";
import type { TypedReading } from "../units/number-entry.ts";

/** What a response looks at of the series that its jar belongs to. */
export interface SeriesBasis {
  label: string;
  turbidityUnit: "NTU" | "FNU";
  turbidityRange: { low: number; high: number } | null;
  protocol: { drainS: number | null };
}

// What is shown (label, ask, standard, title, words) is read in the language of the moment: a response gives it by a
// getter, since it is loaded before the language is known. A spread would copy the text of now; `extended` does not.

/** One number of a reading as it is typed in the jar table or while a jar runs. */
export interface Column {
  key: string;
  field: string;
  readonly label: string;
  unit(series: SeriesBasis): string;
  /** whether ">x" and "<x" make sense here */
  censorable: boolean;
  /** what the run mode asks in one line, and the standard behind it */
  readonly ask: string;
  readonly standard: string;
}

/** The numbers of a form: field, label, unit, and whether it may stay empty. */
export type FormFields = readonly (readonly [string, string, string, boolean?])[];

/** How numbers are written on paper: to the last digit as entered, or rounded. */
export interface PaperNumbers {
  entered(value: number | null): string;
  number(value: number): string;
}

/** How numbers are written on the screen. */
export interface ScreenNumbers {
  entry(value: number): string;
  plain(value: number): string;
}

/** One kind of record that a reading may be: its numbers, and what they make. */
export interface Kind<S extends z.ZodObject = z.ZodObject> {
  /** a strict object with a literal `kind` */
  schema: S;
  /** typed in the jar table, in the order they are taken down; the first one makes the reading */
  columns: readonly Column[];
  /** asked for while a jar runs, under this label; `later` is the field that comes from the oven */
  run?: { readonly label: string; fields: readonly string[]; later?: string };
  /** entered whole beside the jar */
  form?: { readonly title: string; readonly standard: string; readonly fields: FormFields };
  /** the value on the natural scale, or null where it is not known yet or cannot be made */
  value?(result: z.output<S>): number | null;
  /** whether this reading is comparable between the jars of its series; all are where this is absent */
  counts?(result: z.output<S>, series: SeriesBasis): boolean;
  /** why a typed number cannot be, or null */
  refuse?(typed: TypedReading, series: SeriesBasis): string | null;
  /** the new reading that a first number typed in a column makes */
  first?(field: string, typed: TypedReading, series: SeriesBasis): Outcome<Omit<z.output<S>, "kind">>;
  /** its head and its numbers in a report; `given` is what they make, or null */
  head(series: SeriesBasis): string;
  onPaper(result: z.output<S>, numbers: PaperNumbers, given: number | null): string;
  onScreen(result: z.output<S>, numbers: ScreenNumbers, given: number | null, series: SeriesBasis): string;
}

/** A cell to write: a number, a bound such as ">1000", or text. */
export type FileCell = number | string | null | { bound: "above" | "below"; value: number };

/** Reads the cells of one row by their columns; whatever is wrong is noted, not thrown. */
export interface FileRow<F extends string = string> {
  has(field: F): boolean;
  filled(field: F): boolean;
  label(field: F): string;
  number(field: F): number | null;
  reading(field: F): TypedReading | null;
  fault(field: F, message: string): void;
  /** a number in a sentence, under the file's decimal mark */
  words(value: number): string;
  faults: readonly unknown[];
}

/** A result read from a row, with the column that each part came from, so that a refused part can be named. */
export interface FromFile<F extends string = string> {
  result: { kind: string };
  from: Partial<Record<string, F>>;
}

/** One thing read of a jar as columns of a file, both ways: usually a kind of reading, or two that measure the same. */
export interface FileSlot<F extends string = string> {
  slot: string;
  readonly words: string;
  /** the columns by their heads, with their words; the first one says that something was read */
  readonly fields: Record<F, string>;
  /** columns that hold text, not numbers */
  texts?: readonly NoInfer<F>[];
  /** heads of other people's files that probably mean a column */
  guesses?: readonly (readonly [RegExp, NoInfer<F>])[];
  kinds: readonly string[];
  /** where two slots hold one kind: whether a result belongs to this one */
  holds?(result: never, series: SeriesBasis): boolean;
  write(result: never, series: SeriesBasis): Partial<Record<F, FileCell>>;
  read(row: FileRow<F>, series: SeriesBasis): FromFile<F> | null;
}

/** One thing that is read of a jar: all that tells it from the next one. A new one is a file here and a registry line. */
export interface Response {
  name: string;
  readonly label: string;
  readonly unit: string;
  /** the unit where the series chooses it */
  unitIn?(series: SeriesBasis): string;
  /** its place in the order in which a jar is read; what is never asked for in the run comes last */
  taken: number;
  /** how it is fitted against dose; null where it is only noted */
  fitted: {
    scale: "linear" | "log";
    wanted: "minimum" | "maximum";
    /** the most it can be */
    highest?: number;
    /** relative difference of re-reads that is still good, percent of the mean (common practice, no source) */
    rereadBandPct?: number;
  } | null;
  /** where the lists of a file's columns show it */
  group: "filtrate" | "drainage-and-cake";
  kinds: readonly Kind[];
  files: readonly FileSlot[];
}

/** A kind of record with the types of its own schema. */
export const kind = <S extends z.ZodObject>(spec: Kind<S>): Kind<S> => spec;

/** Columns of a file with the types of their own heads. */
export const fileSlot = <const N extends string, const F extends string>(
  spec: FileSlot<F> & { slot: N },
): FileSlot<F> & { slot: N } => spec;

/** A response that keeps its own name as a type. */
export const response = <const R extends Response>(spec: R): R => spec;

/** The sign of a bound. */
export const boundSign = (censored: "above" | "below" | null, blank = ""): string =>
  censored === null ? "" : `${censored === "above" ? ">" : "<"}${blank}`;

/** An object with more properties, all read where they are read: a spread would copy texts in the language of now. */
export const extended = <T extends object, M extends object>(one: T, more: M): T & M =>
  Object.defineProperties(
    { ...more } as T & M,
    Object.getOwnPropertyDescriptors(one) as PropertyDescriptorMap,
  );
