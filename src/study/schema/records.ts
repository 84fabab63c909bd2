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

/** What a kind is called in a sentence, singular and plural. */
export const kindWords: Record<Kind, { one: string; many: string }> = {
  study: { one: "study", many: "studies" },
  person: { one: "person", many: "people" },
  stream: { one: "sludge stream", many: "sludge streams" },
  machine: { one: "machine", many: "machines" },
  product: { one: "product", many: "products" },
  sample: { one: "sample", many: "samples" },
  dish: { one: "dish", many: "dishes" },
  stock: { one: "stock solution", many: "stock solutions" },
  series: { one: "series", many: "series" },
  jar: { one: "jar", many: "jars" },
  reading: { one: "reading", many: "readings" },
  photo: { one: "photo", many: "photos" },
  targets: { one: "set of targets", many: "sets of targets" },
  decision: { one: "decision", many: "decisions" },
  feedCase: { one: "feed case", many: "feed cases" },
  makeDown: { one: "plant make-down", many: "plant make-downs" },
  pump: { one: "pump", many: "pumps" },
  drawDown: { one: "draw-down", many: "draw-downs" },
  cylinderCheck: { one: "cylinder check", many: "cylinder checks" },
  tableApproval: { one: "approval of settings", many: "approvals of settings" },
  landLimit: { one: "limit on land", many: "limits on land" },
  mixing: { one: "mixing place", many: "mixing places" },
  stepTest: { one: "step test", many: "step tests" },
  plantRun: { one: "plant run", many: "plant runs" },
  runDose: { one: "run's dose", many: "runs' doses" },
};
