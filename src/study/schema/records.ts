import type { z } from "zod";
import { jarSchema, photoSchema, readingSchema, seriesSchema } from "./bench.ts";
import { decisionSchema, targetsSchema } from "./choice.ts";
import { personSchema, streamSchema, studySchema } from "./people.ts";
import {
  cylinderCheckSchema,
  drawDownSchema,
  feedCaseSchema,
  machineSchema,
  makeDownSchema,
  pumpSchema,
} from "./plant.ts";
import {
  landLimitSchema,
  mixingSchema,
  plantRunSchema,
  runDoseSchema,
  stepTestSchema,
  tableApprovalSchema,
} from "./plant-runs.ts";
import { productSchema, stockSchema } from "./product.ts";
import { dishSchema, sampleSchema } from "./sample.ts";

/** Every kind of record a study holds, in the order of the job. A new kind is one line here and one in references.ts. */
export const recordSchemas = {
  study: studySchema,
  person: personSchema,
  stream: streamSchema,
  machine: machineSchema,
  product: productSchema,
  sample: sampleSchema,
  dish: dishSchema,
  stock: stockSchema,
  series: seriesSchema,
  jar: jarSchema,
  reading: readingSchema,
  photo: photoSchema,
  targets: targetsSchema,
  decision: decisionSchema,
  feedCase: feedCaseSchema,
  makeDown: makeDownSchema,
  pump: pumpSchema,
  drawDown: drawDownSchema,
  cylinderCheck: cylinderCheckSchema,
  tableApproval: tableApprovalSchema,
  landLimit: landLimitSchema,
  mixing: mixingSchema,
  stepTest: stepTestSchema,
  plantRun: plantRunSchema,
  runDose: runDoseSchema,
} as const;

export type Kind = keyof typeof recordSchemas;
export type RecordOf<K extends Kind> = z.output<(typeof recordSchemas)[K]>;
export type NewRecordOf<K extends Kind> = z.input<(typeof recordSchemas)[K]>;
export type AnyRecord = RecordOf<Kind>;

export const kinds = Object.keys(recordSchemas) as Kind[];

/** The whole study in memory: one table a kind, keyed by id. Never mutated. */
export type StudyState = { readonly [K in Kind]: Readonly<Record<string, RecordOf<K>>> };

/** A study with no record at all. */
export function emptyState(): StudyState {
  return Object.fromEntries(kinds.map((kind) => [kind, {}])) as unknown as StudyState;
}
