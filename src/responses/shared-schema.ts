import { z } from "zod";
import { positive } from "../units/number-schema.ts";

/** Whether a reading is only a bound: beyond the instrument's upper or lower end. */
export const censoredSchema = z.enum(["above", "below"]).nullable().default(null);

/** A mass on a balance, g. */
export const massG = positive(100_000);
