import { z } from "zod";
import { readingSchemas, runReadings } from "../../responses/registry.ts";
import { idSchema, instantSchema, labelSchema, leftOutSchema, noteSchema } from "./common.ts";
import { notNegative, positive, unknown } from "../../units/number-schema.ts";
import { schemaWords } from "../../words/schema.ts";

const rangeSchema = z
  .strictObject({ low: notNegative(1e6), high: positive(1e6) })
  .refine((range) => range.high > range.low, { error: () => schemaWords.rangeOrder });

/** How the jars of a series are treated, so that two days can be compared. */
const protocolSchema = z.strictObject({
  fastRpm: unknown(positive(10_000)),
  fastS: unknown(positive(3600)),
  slowRpm: unknown(positive(10_000)),
  slowS: unknown(positive(3600)),
  /** seconds of mixing between the first and the second polymer */
  betweenS: unknown(notNegative(3600)),
  pours: unknown(z.int().min(0).max(200)),
  /** pouring from beaker to beaker: from what height, and how long all pours take */
  pourHeightM: unknown(positive(5)),
  poursS: unknown(positive(3600)),
  /** the stirrer's own figures, for nominal mixing energy */
  stirrerDiameterMm: unknown(positive(1000)),
  stirrerPowerNumber: unknown(positive(20)),
  /** the time at which the drained volume counts */
  drainS: unknown(positive(3600)),
  pressKPa: unknown(positive(10_000)),
  pressMin: unknown(positive(600)),
  /** the press in its own terms: the pressure follows from force and piston */
  pressForceN: unknown(positive(1e6)),
  pistonDiameterMm: unknown(positive(1000)),
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
  /** which readings the running of a jar asks for */
  readings: z
    .array(z.enum(runReadings))
    .max(runReadings.length)
    .default(["floc-grade", "drained", "turbidity", "cst", "cake-ts"]),
  startedAt: unknown(instantSchema),
  note: noteSchema.default(""),
});

/** How a jar was really mixed, where a timer or somebody took it down. */
const asMixedSchema = z.strictObject({
  fastRpm: unknown(positive(10_000)),
  fastS: unknown(positive(36_000)),
  betweenS: unknown(positive(36_000)),
  slowRpm: unknown(positive(10_000)),
  slowS: unknown(positive(36_000)),
  pours: unknown(z.int().min(0).max(200)),
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
  asMixed: unknown(asMixedSchema),
  leftOut: unknown(leftOutSchema),
  note: noteSchema.default(""),
});

/** One reading of one jar. The same kind read again on the same jar is a re-read, never a replicate. */
export const readingSchema = z.strictObject({
  id: idSchema,
  jarId: idSchema,
  takenAt: unknown(instantSchema),
  leftOut: unknown(leftOutSchema),
  note: noteSchema.default(""),
  /** what was read, each kind with its own numbers */
  result: z.discriminatedUnion("kind", readingSchemas),
});

/** A picture of a jar, reduced on the screen before it is kept: JPEG, at most 1280 px a side. */
export const photoSchema = z.strictObject({
  id: idSchema,
  jarId: idSchema,
  label: labelSchema,
  takenAt: unknown(instantSchema),
  widthPx: z.int().min(1).max(1280),
  heightPx: z.int().min(1).max(1280),
  /** a data address of the JPEG, base64 */
  image: z
    .string()
    .max(420_000, { error: () => schemaWords.largePicture })
    .regex(/^data:image\/jpeg;base64,[A-Za-z0-9+/]+=*$/, { error: () => schemaWords.notPicture }),
  note: noteSchema.default(""),
});
