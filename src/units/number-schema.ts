import { z } from "zod";
import { schemaWords } from "../words/schema.ts";

// A strict content policy forbids generated code; zod would otherwise probe for it.
z.config({ jitless: true });

const finite = z.number({ error: () => schemaWords.notNumber });

/** A number above zero, at most `max`. */
export const positive = (max: number) =>
  finite.gt(0, { error: () => schemaWords.aboveZero }).max(max, { error: () => schemaWords.aboveMost(max) });

/** Zero or a number above, at most `max`. */
export const notNegative = (max: number) =>
  finite
    .min(0, { error: () => schemaWords.notNegative })
    .max(max, { error: () => schemaWords.aboveMost(max) });

/** A number between two bounds, both included. */
export const between = (low: number, high: number) =>
  finite
    .min(low, { error: () => schemaWords.below(low) })
    .max(high, { error: () => schemaWords.above(high) });

/** A share in percent, above 0 and at most 100. */
export const sharePct = positive(100);

/** Unknown until somebody enters it. */
export const unknown = <T extends z.ZodType>(schema: T) => schema.nullable().default(null);
