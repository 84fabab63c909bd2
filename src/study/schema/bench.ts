import { z } from "zod";
import {
  between,
  idSchema,
  instantSchema,
  labelSchema,
  leftOutSchema,
  noteSchema,
  notNegative,
  positive,
  sharePct,
  unknown,
} from "./common.ts";

const rangeSchema = z
  .strictObject({ low: notNegative(1e6), high: positive(1e6) })
  .refine((range) => range.high > range.low, "has its high end below its low end");

/** How the jars of a series are treated, so that two days can be compared. */
export const protocolSchema = z.strictObject({
  fastRpm: unknown(positive(10_000)),
  fastS: unknown(positive(3600)),
  slowRpm: unknown(positive(10_000)),
  slowS: unknown(positive(3600)),
  /** seconds of mixing between the first and the second polymer */
  betweenS: unknown(notNegative(3600)),
  pours: unknown(z.int().min(0).max(200)),
  /** the time at which the drained volume counts */
  drainS: unknown(positive(3600)),
  pressKPa: unknown(positive(10_000)),
  pressMin: unknown(positive(600)),
});

export const seriesSchema = z.strictObject({
  id: idSchema,
  label: labelSchema,
  sampleId: idSchema,
  stockAId: unknown(idSchema),
  stockBId: unknown(idSchema),
  sampleVolumeMl: unknown(positive(100_000)),
  sampleVolumeLimitMl: unknown(notNegative(1000)),
  syringeCapacityMl: unknown(positive(1000)),
  syringeLimitMl: unknown(notNegative(100)),
  turbidityUnit: z.enum(["NTU", "FNU"]).default("NTU"),
  turbidityRange: unknown(rangeSchema),
  cstWaterS: unknown(positive(10_000)),
  cstReservoirMm: unknown(positive(100)),
  protocol: protocolSchema.prefault({}),
  startedAt: unknown(instantSchema),
  note: noteSchema.default(""),
});

/** One jar: planned dose beside what was really injected; the dose itself is always derived. */
export const jarSchema = z.strictObject({
  id: idSchema,
  seriesId: idSchema,
  label: labelSchema,
  /** place in the running order, from 1 */
  order: z.int().min(1).max(100_000),
  role: z.enum(["dose", "no-polymer", "standard", "centre"]).default("dose"),
  plannedDoseAKgPerT: unknown(notNegative(10_000)),
  plannedDoseBKgPerT: unknown(notNegative(10_000)),
  syringeAMl: unknown(notNegative(10_000)),
  syringeBMl: unknown(notNegative(10_000)),
  blankWaterMl: unknown(notNegative(100_000)),
  sampleVolumeMl: unknown(positive(100_000)),
  /** bucket or day */
  block: z.string().trim().max(40).default(""),
  mixedAt: unknown(instantSchema),
  leftOut: unknown(leftOutSchema),
  note: noteSchema.default(""),
});

const censoredSchema = z.enum(["above", "below"]).nullable().default(null);
const massG = positive(100_000);

/** One reading of one jar. The same kind read again on the same jar is a re-read, never a replicate. */
export const readingSchema = z.strictObject({
  id: idSchema,
  jarId: idSchema,
  takenAt: unknown(instantSchema),
  leftOut: unknown(leftOutSchema),
  note: noteSchema.default(""),
  /** what was read, each kind with its own numbers */
  result: z.discriminatedUnion("kind", [
    z.strictObject({
      kind: z.literal("turbidity"),
      /** as shown by the instrument, before the dilution factor */
      value: positive(1e7),
      censored: censoredSchema,
      /** total volume over sample volume, 1 undiluted */
      dilution: between(1, 10_000),
    }),
    z.strictObject({ kind: z.literal("filtrate-tss"), mgPerL: positive(1e6), censored: censoredSchema }),
    z.strictObject({
      kind: z.literal("filtrate-tss-dish"),
      tareG: massG,
      dryG: massG,
      volumeMl: positive(100_000),
    }),
    z.strictObject({ kind: z.literal("drained"), ml: notNegative(100_000), atS: positive(36_000) }),
    z.strictObject({ kind: z.literal("cst"), seconds: positive(100_000) }),
    z.strictObject({ kind: z.literal("cake-dish"), tareG: massG, wetG: massG, dryG: massG }),
    z.strictObject({ kind: z.literal("cake-ts"), pct: sharePct }),
    z.strictObject({ kind: z.literal("capture"), pct: sharePct }),
    z.strictObject({
      kind: z.literal("floc-grade"),
      grade: z.int("must be a whole number from 1 to 5").min(1, "must be 1 to 5").max(5, "must be 1 to 5"),
    }),
  ]),
});
export type ReadingKind = z.infer<typeof readingSchema>["result"]["kind"];
