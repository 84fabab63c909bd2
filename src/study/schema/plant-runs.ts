import { z } from "zod";
import { idSchema, instantSchema, labelSchema, noteSchema } from "./common.ts";
import { between, notNegative, positive, sharePct, unknown } from "../../units/number-schema.ts";

/** A plan of polymer steps at the machine. */
export const stepTestSchema = z.strictObject({
  id: idSchema,
  seriesId: idSchema,
  makeDownId: idSchema,
  machineId: unknown(idSchema),
  stepPct: between(1, 45).default(15),
  levels: z.union([z.literal(3), z.literal(5), z.literal(7)]).default(5),
  order: z.enum(["random", "down-then-up"]).default("random"),
  seed: z.int().min(0).max(1e9).default(1),
});

/** One run of the machine at one setting: what ran, what was sampled at once, and what the machine was set to. */
export const plantRunSchema = z.strictObject({
  id: idSchema,
  label: labelSchema,
  seriesId: idSchema,
  /** the approved bench dose this run is held against */
  decisionId: unknown(idSchema),
  machineId: unknown(idSchema),
  at: unknown(instantSchema),
  byName: z.string().trim().max(120).default(""),
  kind: z.enum(["step", "routine", "comparison"]).default("step"),
  feedM3PerH: unknown(positive(100_000)),
  totalSolidsPct: unknown(sharePct),
  densityKgPerL: unknown(between(0.7, 2)),
  washM3PerH: unknown(notNegative(100_000)),
  /** suspended solids of the feed, on one basis with the filtrate's */
  feedSuspendedPct: unknown(sharePct),
  filtrateTssMgPerL: unknown(positive(1e6)),
  filtrateTurbidityNtu: unknown(positive(1e7)),
  cakePct: unknown(sharePct),
  /** belt speed, pressure, torque and the like, as the machine names them */
  machineSettings: z.string().trim().max(400).default(""),
  /** the dose this trial settled on: counts for the bench-to-plant factor */
  best: z.boolean().default(false),
  /** for a paired comparison: which setting, and which pair */
  side: unknown(z.enum(["A", "B"])),
  pair: unknown(z.int().min(1).max(1000)),
  leftOut: z.boolean().default(false),
  note: noteSchema.default(""),
});

/** What one polymer's pump did in a run. */
export const runDoseSchema = z.strictObject({
  id: idSchema,
  runId: idSchema,
  makeDownId: idSchema,
  pumpId: unknown(idSchema),
  setting: unknown(notNegative(10_000)),
  caught: unknown(positive(1e6)),
  caughtS: unknown(positive(36_000)),
  /** loss of mass of the neat product's container, and over how long */
  containerLossKg: unknown(positive(1e6)),
  containerHours: unknown(positive(10_000)),
});

/** Somebody's word that the settings were right, with what they rested on. Never changed; a new one replaces it. */
export const tableApprovalSchema = z.strictObject({
  id: idSchema,
  seriesId: idSchema,
  byName: labelSchema,
  at: instantSchema,
  snapshot: z
    .array(
      z.strictObject({
        key: z.string().max(160),
        name: z.string().max(200),
        value: z.union([z.number(), z.string().max(2000), z.null()]),
      }),
    )
    .max(2000),
});

/** An optional limit of polymer on land: the user's own figures under the local rules. */
export const landLimitSchema = z.strictObject({
  id: idSchema,
  limitKgPerHa: unknown(positive(1e6)),
  years: unknown(positive(100)),
  /** dry solids spread per hectare in that many years */
  drySolidsTPerHa: unknown(positive(1e5)),
  /** active polymer dosed elsewhere on the same solids, for example in thickening */
  otherDoseKgPerT: unknown(notNegative(10_000)),
});

/** Where the plant mixes one polymer in; the jars that it is held against stand in their series. */
export const mixingSchema = z.strictObject({
  id: idSchema,
  makeDownId: idSchema,
  /** the jars' stirrer as studies kept it before it stood in the series alone; read where the series has none */
  jarPowerNumber: unknown(positive(50)),
  jarPaddleMm: unknown(positive(1000)),
  place: z.enum(["tank", "in-line"]).default("in-line"),
  tankVolumeL: unknown(positive(1e6)),
  tankPowerNumber: unknown(positive(50)),
  tankRpm: unknown(positive(10_000)),
  tankPaddleMm: unknown(positive(10_000)),
  pressureDropKPa: unknown(positive(10_000)),
  pipeDiameterMm: unknown(positive(5000)),
  pipeLengthM: unknown(positive(10_000)),
  /** mixing volume of the valve or static mixer */
  mixerVolumeL: unknown(positive(1e6)),
  /** time wanted between this injection point and the next, or the machine */
  wantedDelayS: unknown(positive(100_000)),
});
