import { z } from "zod";
import {
  between,
  idSchema,
  instantSchema,
  labelSchema,
  noteSchema,
  notNegative,
  positive,
  sharePct,
  unknown,
} from "./common.ts";

/** One feed condition of the plant: least, usual, most, or one of the user's own. */
export const feedCaseSchema = z.strictObject({
  id: idSchema,
  label: labelSchema,
  size: z.enum(["least", "usual", "most"]),
  flowM3PerH: unknown(positive(100_000)),
  /** empty means: the series' sample, and the screen says so */
  totalSolidsPct: unknown(sharePct),
  totalSolidsUncertaintyPct: unknown(notNegative(50)),
  densityKgPerL: unknown(between(0.7, 2)),
  hoursPerDay: unknown(positive(24)),
  daysPerYear: unknown(positive(366)),
});

/**
 * How one polymer is made down and injected at the plant. `benchProductId` is the lot the jars were dosed with,
 * `productId` the lot that stands at the plant: where they differ the active share's error does not cancel.
 */
export const makeDownSchema = z.strictObject({
  id: idSchema,
  benchProductId: idSchema,
  productId: idSchema,
  solutionActivePct: unknown(sharePct),
  solutionDensityKgPerL: unknown(between(0.9, 1.5)),
  carrierActivePct: unknown(sharePct),
  batchL: unknown(positive(1e6)),
  ageingMin: unknown(notNegative(10_080)),
  injectionPoint: z.string().trim().max(120).default(""),
});

/** A metering pump or dry feeder, with the number its panel shows. */
export const pumpSchema = z.strictObject({
  id: idSchema,
  label: labelSchema,
  /** the plant make-down whose neat product or solution it moves */
  makeDownId: idSchema,
  stream: z.enum(["neat", "solution"]),
  /** a dry feeder is checked on a balance, in g/min */
  measuredIn: z.enum(["ml", "g"]).default("ml"),
  settingUnit: z.enum(["%", "Hz", "mm", "% stroke"]).default("%"),
  settingLow: unknown(notNegative(10_000)),
  settingHigh: unknown(positive(10_000)),
  reciprocating: z.boolean().default(false),
  note: noteSchema.default(""),
});

/** One cylinder (or balance) draw-down at one setting. */
export const drawDownSchema = z.strictObject({
  id: idSchema,
  pumpId: idSchema,
  setting: notNegative(10_000),
  amount: positive(1e6),
  seconds: positive(36_000),
  takenAt: unknown(instantSchema),
  leftOut: z.boolean().default(false),
  note: noteSchema.default(""),
});

/** The dewatering machine with its owner's own limits: blank until somebody enters them. */
export const machineSchema = z.strictObject({
  id: idSchema,
  label: labelSchema,
  effectiveWidthM: unknown(positive(100)),
  loadings: z
    .array(z.strictObject({ sludgeClass: z.string().trim().min(1).max(60), kgPerHPerM: positive(10_000) }))
    .max(20)
    .default([]),
  hydraulicLimitM3PerH: unknown(positive(100_000)),
  feedLowPct: unknown(sharePct),
  feedHighPct: unknown(sharePct),
  note: noteSchema.default(""),
});

/** What the crew caught in the cylinder after setting the pump. */
export const cylinderCheckSchema = z.strictObject({
  id: idSchema,
  pumpId: idSchema,
  setting: notNegative(10_000),
  amount: positive(1e6),
  seconds: positive(36_000),
  takenAt: instantSchema,
  byName: z.string().trim().max(120).default(""),
});
