import { z } from "zod";
import { idSchema, instantSchema, labelSchema, noteSchema } from "./common.ts";
import { between, notNegative, positive, sharePct, unknown } from "../../units/number-schema.ts";
import { schemaWords } from "../../words/schema.ts";

/** What the engineer asks of a series: limits, costs and the plant's present dose. One record a series. */
export const targetsSchema = z.strictObject({
  id: idSchema,
  seriesId: idSchema,
  turbidityAtMost: unknown(positive(1e7)),
  filtrateTssAtMostMgPerL: unknown(positive(1e6)),
  cstAtMostS: unknown(positive(1e5)),
  cakeAtLeastPct: unknown(sharePct),
  drainedAtLeastMl: unknown(positive(1e5)),
  captureAtLeastPct: unknown(sharePct),
  guardPct: between(0, 50).default(10),
  disposalPerWetT: unknown(notNegative(1e6)),
  returnPerT: unknown(notNegative(1e6)),
  /** used where capture was not read */
  assumedCapturePct: unknown(sharePct),
  presentDoseKgPerT: unknown(positive(10_000)),
  /** relative spread (one standard deviation) of the feed's solids over a day, in percent */
  feedDriftPct: unknown(notNegative(100)),
  /** the responses' wanted ranges for the desirability rule, worst to best */
  wishes: z
    .array(
      z.strictObject({
        response: z.enum(["turbidity", "filtrateTss", "cst", "cake", "drained", "capture", "cost"]),
        worst: z.number(),
        best: z.number(),
        weight: between(0, 100),
      }),
    )
    .max(12)
    .default([]),
});

export const ruleSchema = z.enum([
  "minimum",
  "knee",
  "cheapest-in-limits",
  "desirability",
  "least-cost",
  "near-least-cost",
  "own",
]);
export type RuleName = z.infer<typeof ruleSchema>;

const snapshotValueSchema = z.strictObject({
  /** which record and field, independent of what it is called */
  key: z.string().max(120),
  name: z.string().max(200),
  value: z.union([z.number(), z.string().max(2000), z.null()]),
});

/** A dose that somebody answers for. Its snapshot is never changed: a later edit upstream marks it out of date. */
export const decisionSchema = z.strictObject({
  id: idSchema,
  seriesId: idSchema,
  doseAKgPerT: notNegative(10_000),
  doseBKgPerT: unknown(notNegative(10_000)),
  lowKgPerT: unknown(notNegative(10_000)),
  highKgPerT: unknown(notNegative(10_000)),
  rule: ruleSchema,
  /** the response whose curve the rule used, where it used one */
  response: z.string().max(40).nullable().default(null),
  reason: noteSchema.min(1, { error: () => schemaWords.needsReason }),
  byName: labelSchema,
  at: instantSchema,
  methodVersion: z.string().max(40),
  snapshot: z.array(snapshotValueSchema).max(4000),
  withdrawn: unknown(z.strictObject({ byName: labelSchema, at: instantSchema, reason: noteSchema.min(1) })),
});
