import { z } from "zod";
import { idSchema, instantSchema, labelSchema, leftOutSchema, noteSchema } from "./common.ts";
import { between, positive, sharePct, unknown } from "../../units/number-schema.ts";

export const sampleSchema = z.strictObject({
  id: idSchema,
  streamId: idSchema,
  label: labelSchema,
  takenAt: unknown(instantSchema),
  place: noteSchema.default(""),
  temperatureC: unknown(between(-5, 80)),
  ph: unknown(between(0, 14)),
  conductivityMsPerCm: unknown(positive(500)),
  /** moisture-balance value: stands in until the dishes are dry */
  provisionalTotalSolidsPct: unknown(sharePct),
  /** measured; where empty the density is estimated from the solids and said so */
  densityKgPerL: unknown(between(0.7, 2)),
  /** suspended solids of the feed, for capture on one basis with the filtrate */
  suspendedSolidsPct: unknown(sharePct),
  note: noteSchema.default(""),
});

const massG = positive(100_000);

/** One dish of a sample: ignited and cooled, with wet sludge, dried, ashed. */
export const dishSchema = z.strictObject({
  id: idSchema,
  sampleId: idSchema,
  label: labelSchema,
  tareG: unknown(massG),
  wetG: unknown(massG),
  dryG: unknown(massG),
  ashG: unknown(massG),
  leftOut: unknown(leftOutSchema),
});
