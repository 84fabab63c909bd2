import { z } from "zod";
import { idSchema, instantSchema, labelSchema, noteSchema } from "./common.ts";
import { between, positive, sharePct, unknown } from "../../units/number-schema.ts";

const productFormSchema = z.enum(["dry", "emulsion", "dispersion", "solution", "mannich", "metal-salt"]);

/** A polymer as supplied: one lot of one product. */
export const productSchema = z.strictObject({
  id: idSchema,
  label: labelSchema,
  form: productFormSchema,
  charge: unknown(z.enum(["cationic", "anionic", "nonionic", "amphoteric"])),
  chargePct: unknown(between(0, 100)),
  lot: z.string().trim().max(80).default(""),
  activePct: unknown(sharePct),
  /** active by which test, on whose certificate; for a metal salt, as what it is counted */
  activeBasisNote: noteSchema.default(""),
  /** half-width of the active share's certificate range, in percentage points */
  activeLimitPct: unknown(between(0, 50)),
  /** neat product; bulk density for a dry one */
  densityKgPerL: unknown(between(0.2, 3)),
  pricePerKgNeat: unknown(positive(100_000)),
  containerKg: unknown(positive(100_000)),
  sheetDate: z.string().trim().max(40).default(""),
  note: noteSchema.default(""),
});

/** A stock solution made down on the bench. */
export const stockSchema = z.strictObject({
  id: idSchema,
  productId: idSchema,
  label: labelSchema,
  neatMassG: unknown(positive(100_000)),
  totalMassG: unknown(positive(1_000_000)),
  solutionDensityKgPerL: unknown(between(0.9, 1.5)),
  /** what was wanted when it was made: active strength, and the mass of the whole */
  targetActivePct: unknown(sharePct),
  targetTotalG: unknown(positive(1_000_000)),
  /** how well the weighing is known: standard uncertainty of the neat mass and half-width of the total */
  neatMassUncertaintyG: unknown(positive(1000)),
  totalMassLimitG: unknown(positive(10_000)),
  waterType: z.string().trim().max(80).default(""),
  waterTemperatureC: unknown(between(0, 60)),
  mixStartedAt: unknown(instantSchema),
  /** own limits where the supplier gives them; otherwise the common-practice window of the form */
  ageingMin: unknown(between(0, 10_080)),
  lifeHours: unknown(positive(2000)),
  note: noteSchema.default(""),
});
