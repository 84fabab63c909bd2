import { z } from "zod";

/** A short sortable id: letters, digits and hyphens. */
export const idSchema = z.string().regex(/^[a-z0-9][a-z0-9-]{0,39}$/, "is not an id");

/**
 * Text as it can be stored and read back unchanged: half of a two-part character becomes the replacement character,
 * as SQLite would make of it.
 */
export const textSchema = z.string().overwrite((text) => text.toWellFormed());

/** A name that people read: one line, not empty. */
export const labelSchema = textSchema
  .trim()
  .min(1, "needs a name")
  .max(120, "is longer than 120 characters")
  .regex(/^[^\p{Cc}]*$/u, "holds a character that cannot be shown");

/** Who did something, as they are called: one line, may be empty. */
export const byNameSchema = textSchema
  .trim()
  .max(120, "is longer than 120 characters")
  .regex(/^[^\p{Cc}]*$/u, "holds a character that cannot be shown");

/** Free text; may be empty. */
export const noteSchema = textSchema
  .max(4000, "is longer than 4000 characters")
  .refine((text) => !text.includes("\u0000"), "holds a character that cannot be stored");

/** A moment in time, ISO 8601 with its offset. */
export const instantSchema = z.iso.datetime({ offset: true, message: "is not a date and time" });

/** Why a number or jar is left out: the number the technician pressed and the words. */
export const leftOutSchema = z.strictObject({
  reason: z.enum([
    "spilled",
    "wrong-dose",
    "mixing-failed",
    "timer-missed",
    "reading-failed",
    "sample-changed",
    "other",
  ]),
  note: noteSchema.default(""),
});
