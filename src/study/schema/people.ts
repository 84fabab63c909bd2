import { z } from "zod";
import { idSchema, labelSchema, noteSchema } from "./common.ts";
import { unknown } from "../../units/number-schema.ts";

/** The one record that describes the study itself. */
export const studySchema = z.strictObject({
  id: z.literal("study"),
  name: labelSchema,
  unitSystem: z.enum(["metric", "us"]).default("metric"),
  decimalMark: z.enum([".", ","]).default("."),
  /** true for the invented demo: every screen then says so */
  invented: z.boolean().default(false),
  currency: z.string().trim().min(1).max(8).default("EUR"),
  note: noteSchema.default(""),
});

/** Somebody who may be named beside a change or an approval. */
export const personSchema = z.strictObject({
  id: idSchema,
  name: labelSchema,
  role: z.enum(["technician", "engineer", "crew"]),
  note: noteSchema.default(""),
});

/** The sludge stream that is to be dewatered. */
export const streamSchema = z.strictObject({
  id: idSchema,
  label: labelSchema,
  sludgeClass: unknown(
    z.enum([
      "primary",
      "excess",
      "mixed",
      "digested",
      "aerobic",
      "flotation",
      "livestock",
      "water-works",
      "other",
    ]),
  ),
  place: noteSchema.default(""),
  note: noteSchema.default(""),
});
