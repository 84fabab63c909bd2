import { z } from "zod";
import { schemaWords } from "../../words/schema.ts";

/** A short sortable id: letters, digits and hyphens. */
export const idSchema = z.string().regex(/^[a-z0-9][a-z0-9-]{0,39}$/, { error: () => schemaWords.notId });

/**
 * Text as it can be stored and read back unchanged: half of a two-part character becomes the replacement character,
 * as SQLite would make of it.
 */
export const textSchema = z.string().overwrite((text) => text.toWellFormed());

/** A name that people read: one line, not empty. */
export const labelSchema = textSchema
  .trim()
  .min(1, { error: () => schemaWords.needsName })
  .max(120, { error: () => schemaWords.longName })
  .regex(/^[^\p{Cc}]*$/u, { error: () => schemaWords.unshowable });

/** Who did something, as they are called: one line, may be empty. */
export const byNameSchema = textSchema
  .trim()
  .max(120, { error: () => schemaWords.longName })
  .regex(/^[^\p{Cc}]*$/u, { error: () => schemaWords.unshowable });

/** Free text; may be empty. */
export const noteSchema = textSchema
  .max(4000, { error: () => schemaWords.longNote })
  .refine((text) => !text.includes("\u0000"), { error: () => schemaWords.unstorable });

/** A moment in time, ISO 8601 with its offset. */
export const instantSchema = z.iso.datetime({ offset: true, error: () => schemaWords.notInstant });

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
