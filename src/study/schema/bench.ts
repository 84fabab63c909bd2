import { z } from "zod";
import { schemaWords } from "../../words/schema.ts";
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
  .refine((range) => range.high > range.low, { error: () => schemaWords.rangeOrder });

/** How the jars of a series are treated, so that two days can be compared. */
export const protocolSchema = z.strictObject({
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

/** What may be read of each jar while it runs, in the order it is read. */
export const runReadings = [
  "floc-grade",
  "drained",
  "turbidity",
  "filtrate-tss",
  "filtrate-tss-dish",
  "cst",
  "filter-time",
  "cake-ts",
  "cake-dish",
] as const;

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
      /** null while the filter is still in the oven */
      dryG: unknown(massG),
      volumeMl: unknown(positive(100_000)),
    }),
    z.strictObject({ kind: z.literal("drained"), ml: notNegative(100_000), atS: positive(36_000) }),
    z.strictObject({ kind: z.literal("cst"), seconds: positive(100_000) }),
    z.strictObject({
      kind: z.literal("cake-dish"),
      tareG: massG,
      /** null until weighed; the dry mass comes from the oven a day later */
      wetG: unknown(massG),
      dryG: unknown(massG),
    }),
    z.strictObject({ kind: z.literal("cake-ts"), pct: sharePct }),
    z.strictObject({ kind: z.literal("capture"), pct: sharePct }),
    z.strictObject({
      kind: z.literal("floc-grade"),
      grade: z
        .int({ error: () => schemaWords.wholeGrade })
        .min(1, { error: () => schemaWords.grade })
        .max(5, { error: () => schemaWords.grade }),
    }),
    z.strictObject({ kind: z.literal("filter-time"), seconds: positive(100_000) }),
    z.strictObject({
      kind: z.literal("srf"),
      points: z
        .array(z.strictObject({ volumeMl: positive(100_000), seconds: positive(1e6) }))
        .min(3, { error: () => schemaWords.fewVolumes })
        .max(60),
      /** the straight part: first and last point used, counted from 1 */
      firstUsed: z.int().min(1).max(60),
      lastUsed: z.int().min(1).max(60),
      diameterMm: positive(1000),
      pressureKPa: positive(10_000),
      temperatureC: between(0, 60),
      /** dry cake for each volume of filtrate */
      cakeKgPerM3: positive(1000),
    }),
    z.strictObject({
      kind: z.literal("re-shear"),
      /** floc size before, after breaking, and regrown */
      firstMm: positive(1000),
      brokenMm: positive(1000),
      regrownMm: unknown(positive(1000)),
    }),
    z.strictObject({ kind: z.literal("zeta"), mV: between(-500, 500) }),
  ]),
});
export type ReadingKind = z.infer<typeof readingSchema>["result"]["kind"];

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
