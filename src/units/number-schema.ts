import { z } from "zod";

// A strict content policy forbids generated code; zod would otherwise probe for it.
z.config({ jitless: true });

const finite = z.number("is not a number");

/** A number above zero, at most `max`. */
export const positive = (max: number) =>
  finite.gt(0, "must be above 0").max(max, `is above ${max}, the most this can be`);

/** Zero or a number above, at most `max`. */
export const notNegative = (max: number) =>
  finite.min(0, "must not be negative").max(max, `is above ${max}, the most this can be`);

/** A number between two bounds, both included. */
export const between = (low: number, high: number) =>
  finite.min(low, `is below ${low}`).max(high, `is above ${high}`);

/** A share in percent, above 0 and at most 100. */
export const sharePct = positive(100);

/** Unknown until somebody enters it. */
export const unknown = <T extends z.ZodType>(schema: T) => schema.nullable().default(null);
