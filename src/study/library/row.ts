import { z } from "zod";
import { ruleSchema } from "../schema/choice.ts";
import { streamSchema } from "../schema/people.ts";

/** The classes of sludge a study may name. */
export const sludgeClassSchema = streamSchema.shape.sludgeClass.unwrap().unwrap();
export type SludgeClass = z.infer<typeof sludgeClassSchema>;

const text = z.string().max(4000);
const number = z.number().nullable();

/**
 * One series of a study as it is compared with others: what was conditioned with what, the approved dose and what the
 * study's own curves say at that dose now. A number that cannot be had is null, and `why` says what is missing.
 */
export const seriesSummarySchema = z.strictObject({
  studyName: text,
  invented: z.boolean(),
  currency: text,
  /** null for a study without a series */
  seriesId: text.nullable(),
  seriesLabel: text,
  streamLabel: text,
  sludgeClass: sludgeClassSchema.nullable(),
  productA: text.nullable(),
  productB: text.nullable(),
  jars: z.int().min(0),
  standing: z.enum(["approved", "out of date", "no dose approved"]),
  /** the first input that moved since the approval, in words */
  moved: text.nullable(),
  doseAKgPerT: number,
  doseBKgPerT: number,
  lowKgPerT: number,
  highKgPerT: number,
  rule: ruleSchema.nullable(),
  reason: text,
  approvedBy: text,
  approvedAt: text.nullable(),
  turbidity: number,
  /** one-sided 95 % bounds of each fitted mean at that dose */
  turbidityLow: number,
  turbidityHigh: number,
  turbidityUnit: z.enum(["NTU", "FNU"]),
  filtrateTssMgPerL: number,
  filtrateTssLow: number,
  filtrateTssHigh: number,
  cakePct: number,
  cakeLow: number,
  cakeHigh: number,
  capturePct: number,
  /** per tonne of dry feed solids; parts without a price are null and not in the total */
  polymerCost: number,
  disposalCost: number,
  returnCost: number,
  totalCost: number,
  why: text,
});
export type SeriesSummary = z.infer<typeof seriesSummarySchema>;

/** What is kept of one study file. */
export const studySummarySchema = z.array(seriesSummarySchema).max(5000);

export const sortColumns = [
  "study",
  "sludge",
  "product",
  "dose",
  "turbidity",
  "tss",
  "cake",
  "cost",
  "by",
  "date",
] as const;
export type SortColumn = (typeof sortColumns)[number];

/** What is asked of the index: every word of `text` must occur; null asks nothing. */
export const librarySearchSchema = z.strictObject({
  text: z.string().max(400).default(""),
  product: z.string().max(200).nullable().default(null),
  sludgeClass: sludgeClassSchema.nullable().default(null),
  onlyApproved: z.boolean().default(false),
  sort: z
    .strictObject({ column: z.enum(sortColumns), down: z.boolean() })
    .default({ column: "date", down: true }),
});
export type LibrarySearch = z.output<typeof librarySearchSchema>;

/** A series of the index with the host's token for its file. */
export const libraryRowSchema = seriesSummarySchema.extend({
  ref: z.string().max(200),
  fileName: z.string().max(1000),
});
export type LibraryRow = z.infer<typeof libraryRowSchema>;
