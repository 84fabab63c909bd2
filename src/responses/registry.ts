import type { z } from "zod";
import type { ResponseSpec } from "../curve/analyse-types.ts";
import { cakeTs } from "./cake-ts.ts";
import { capture } from "./capture.ts";
import { cst } from "./cst.ts";
import { drained } from "./drained.ts";
import { filterTime } from "./filter-time.ts";
import { filtrateTss } from "./filtrate-tss.ts";
import { flocGrade } from "./floc-grade.ts";
import { reShear } from "./re-shear.ts";
import {
  extended,
  type Column,
  type FileSlot,
  type Kind,
  type Response,
  type SeriesBasis,
} from "./response.ts";
import { srf } from "./srf.ts";
import { turbidity } from "./turbidity.ts";
import { zeta } from "./zeta.ts";

/** Everything that is read of a jar, in the order of the analysis. A new response is one file and one line here. */
export const responses = [
  turbidity,
  filtrateTss,
  cst,
  srf,
  cakeTs,
  drained,
  filterTime,
  capture,
  flocGrade,
  reShear,
  zeta,
] as const;

type Any = (typeof responses)[number];
type KeysOfEach<T> = T extends unknown ? keyof T : never;
type Fitted<T> = T extends { fitted: object; name: infer N } ? N : never;

/** The names of the responses that are fitted against dose. */
export type ResponseName = Fitted<Any>;
export type ResponseSlot = Any["files"][number]["slot"];
export type ResponseField = KeysOfEach<Any["files"][number]["fields"]>;
type ReadingSchema = Any["kinds"][number]["schema"];
/** What was read, each kind with its own numbers. */
export type ReadingResult = z.output<ReadingSchema>;
export type ReadingKind = ReadingResult["kind"];

const every: readonly Response[] = responses;
const kinds: readonly Kind[] = every.flatMap((one) => one.kinds);
const kindName = (one: Kind) => (one.schema.shape["kind"] as z.ZodLiteral<ReadingKind>).value;
const byKind = new Map<string, Kind>(kinds.map((one) => [kindName(one), one]));
const responseByKind = new Map(every.flatMap((one) => one.kinds.map((each) => [kindName(each), one])));

/** The schemas of all kinds of readings, for the records. */
export const readingSchemas = kinds.map(({ schema }) => schema) as unknown as [
  ReadingSchema,
  ...ReadingSchema[],
];

type FittedSpec = ResponseSpec & { name: ResponseName };

/** Everything read of a jar as columns of a file. */
export const fileSlots: readonly FileSlot[] = every.flatMap(({ files }) => files);

/** What the analysis needs to know of each response that is fitted. */
export const responseSpecs: readonly FittedSpec[] = every.flatMap((one) =>
  one.fitted
    ? [
        {
          name: one.name as ResponseName,
          scale: one.fitted.scale,
          wanted: one.fitted.wanted,
          get label() {
            return one.label;
          },
          get unit() {
            return one.unit;
          },
        },
      ]
    : [],
);

/** A response by its name, fitted or only noted; undefined for a name that is none. */
export const responseNamed = (name: string): Response | undefined => every.find((one) => one.name === name);

/** Names and units of responses as the engineer reads them. */
export const responseWords: Record<string, Pick<Response, "label" | "unit">> = Object.fromEntries(
  every.map((one) => [one.name, one]),
);

/** The unit of a response in a series. */
export function unitOf(name: string, series: SeriesBasis): string {
  const found = responseNamed(name);
  return found?.unitIn?.(series) ?? found?.unit ?? "";
}

/** The kind of a reading, with what belongs to it. */
export const kindOf = (result: { kind: ReadingKind }): Kind => byKind.get(result.kind)!;

/** The kind of reading of this name; undefined for a name that is none. */
export const kindNamed = (name: string): Kind | undefined => byKind.get(name);

/** All kinds of readings in the order in which a jar is read. */
export const kindsAsTaken: readonly { kind: ReadingKind; spec: Kind; response: Response }[] = [...every]
  .sort((a, b) => a.taken - b.taken)
  .flatMap((one) => one.kinds.map((spec) => ({ kind: kindName(spec), spec, response: one })));

/** What may be read of each jar while it runs, in the order it is read. */
export const runReadings = kindsAsTaken.flatMap(({ kind, spec }) => (spec.run ? [kind] : []));

/** Every number of a reading that the table or the run mode takes, in the order a jar is read. */
export const readingColumns: readonly (Column & { kind: ReadingKind })[] = kindsAsTaken.flatMap(
  ({ kind, spec }) => spec.columns.map((column) => extended(column, { kind })),
);

/** What a reading gives on the natural scale, or null where it gives nothing yet. */
export function valueOf(result: ReadingResult): number | null {
  return kindOf(result).value?.(result) ?? null;
}

/** The response a reading feeds, with its value, or null where it feeds none. */
export function responseOf(reading: {
  result: ReadingResult;
}): { name: ResponseName; value: number; censored: "above" | "below" | null } | null {
  const { result } = reading;
  const one = responseByKind.get(result.kind)!;
  const value = valueOf(result);
  if (!one.fitted || value === null) return null;
  return { name: one.name as ResponseName, value, censored: "censored" in result ? result.censored : null };
}

/** Whether a reading is comparable between the jars of its series. */
export const counts = (result: ReadingResult, series: SeriesBasis): boolean =>
  kindOf(result).counts?.(result, series) ?? true;
