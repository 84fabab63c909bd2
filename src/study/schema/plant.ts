import { z } from "zod";
import { idSchema, instantSchema, labelSchema, noteSchema } from "./common.ts";
import { between, notNegative, positive, sharePct, unknown } from "../../units/number-schema.ts";

/** One feed condition of the plant: least, usual, most, or one of the user's own. */
export const feedCaseSchema = z.strictObject({
  id: idSchema,
  label: labelSchema,
  size: z.enum(["least", "usual", "most"]),
  /** how the flow was had; the fields of the other ways may stay filled and do not count */
  flowFrom: z.enum(["meter", "timed", "level", "difference"]).default("meter"),
  flowM3PerH: unknown(positive(100_000)),
  timedVolumeM3: unknown(positive(1e6)),
  tankAreaM2: unknown(positive(1e5)),
  levelChangeM: unknown(positive(100)),
  timedMin: unknown(positive(100_000)),
  supplyM3PerH: unknown(positive(100_000)),
  returnM3PerH: unknown(notNegative(100_000)),
  /** relative standard uncertainty of the flow, percent */
  flowUncertaintyPct: unknown(notNegative(50)),
  /** empty means: the series' sample, and the screen says so */
  totalSolidsPct: unknown(sharePct),
  /** standard uncertainty, percent of TS points */
  totalSolidsUncertaintyPct: unknown(notNegative(50)),
  temperatureC: unknown(between(-5, 80)),
  densityKgPerL: unknown(between(0.7, 2)),
  /** half-width of the density's range */
  densityLimitKgPerL: unknown(between(0, 0.5)),
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
  /** half-width of the solution strength's range, in percentage points */
  solutionLimitPct: unknown(between(0, 50)),
  carrierActivePct: unknown(sharePct),
  unit: z.enum(["batch", "continuous"]).default("batch"),
  batchL: unknown(positive(1e6)),
  ageingMin: unknown(notNegative(10_080)),
  fillMin: unknown(notNegative(10_080)),
  wetMin: unknown(notNegative(10_080)),
  transferMin: unknown(notNegative(10_080)),
  /** usable volume of the ageing tank that is there */
  ageingTankL: unknown(positive(1e6)),
  /** what the tank cannot give, on top of the ageing volume */
  deadVolumePct: unknown(between(0, 300)),
  containersInStock: unknown(notNegative(100_000)),
  /** share of the active polymer that stays in the cake */
  retainedPct: unknown(between(0, 100)),
  injectionPoint: z.string().trim().max(120).default(""),
  /** settings use the bench-to-plant factor found on this machine; empty: the bench dose as approved */
  factorMachineId: unknown(idSchema),
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
  /** "stroke-speed": the setting is a stroke in percent, run at the held speed */
  control: z.enum(["one", "stroke-speed"]).default("one"),
  heldSpeedPct: unknown(positive(200)),
  /** stroke at which the pump stops delivering */
  zeroStrokePct: unknown(between(0, 90)),
  shape: z.enum(["auto", "line", "curve"]).default("auto"),
  weights: z.enum(["equal", "relative"]).default("equal"),
  /** how well the cylinder (mL) or balance (g) and the stopwatch are read: half-widths, common practice, no source */
  readingLimit: notNegative(10_000).default(1),
  watchLimitS: notNegative(60).default(0.3),
  calibrationGoodDays: unknown(positive(10_000)),
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
  /** speed of a stroke-times-speed pump during this draw-down */
  speedPct: unknown(positive(200)),
  /** what was drawn, as it stood then: a later change makes the calibration stale */
  fluid: unknown(
    z.strictObject({
      lot: z.string().max(200),
      activePct: z.number().nullable(),
      densityKgPerL: z.number().nullable(),
      solutionActivePct: z.number().nullable(),
    }),
  ),
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
  /** which of the loadings counts for the sludge at hand */
  loadingClass: z.string().trim().max(60).default(""),
  feedLowPct: unknown(sharePct),
  feedHighPct: unknown(sharePct),
  solidsThresholdPct: unknown(sharePct),
  /** thresholds of the inorganic share, 100 - volatile share */
  inorganicLowPct: unknown(sharePct),
  inorganicHighPct: unknown(sharePct),
  washM3PerH: unknown(notNegative(100_000)),
  /** machine and pipe behind the injection point */
  holdUpL: unknown(positive(1e7)),
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
