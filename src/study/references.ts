import type { Kind } from "./schema/records.ts";

/** Which field of which kind names a record of another kind; a named record must exist and cannot be removed alone. */
export const references: { from: Kind; field: string; to: Kind }[] = [
  { from: "sample", field: "streamId", to: "stream" },
  { from: "dish", field: "sampleId", to: "sample" },
  { from: "stock", field: "productId", to: "product" },
  { from: "series", field: "sampleId", to: "sample" },
  { from: "series", field: "stockAId", to: "stock" },
  { from: "series", field: "stockBId", to: "stock" },
  { from: "jar", field: "seriesId", to: "series" },
  { from: "reading", field: "jarId", to: "jar" },
  { from: "photo", field: "jarId", to: "jar" },
  { from: "targets", field: "seriesId", to: "series" },
  { from: "decision", field: "seriesId", to: "series" },
  { from: "makeDown", field: "benchProductId", to: "product" },
  { from: "makeDown", field: "productId", to: "product" },
  { from: "pump", field: "makeDownId", to: "makeDown" },
  { from: "drawDown", field: "pumpId", to: "pump" },
  { from: "cylinderCheck", field: "pumpId", to: "pump" },
  { from: "makeDown", field: "factorMachineId", to: "machine" },
  { from: "tableApproval", field: "seriesId", to: "series" },
  { from: "mixing", field: "makeDownId", to: "makeDown" },
  { from: "stepTest", field: "seriesId", to: "series" },
  { from: "stepTest", field: "makeDownId", to: "makeDown" },
  { from: "stepTest", field: "machineId", to: "machine" },
  { from: "plantRun", field: "seriesId", to: "series" },
  { from: "plantRun", field: "decisionId", to: "decision" },
  { from: "plantRun", field: "machineId", to: "machine" },
  { from: "runDose", field: "runId", to: "plantRun" },
  { from: "runDose", field: "makeDownId", to: "makeDown" },
  { from: "runDose", field: "pumpId", to: "pump" },
];

/** Within which records a label must be unique: all of the kind, or those sharing the named parent. */
export const uniqueLabels: { kind: Kind; within: string | null }[] = [
  { kind: "person", within: null },
  { kind: "stream", within: null },
  { kind: "sample", within: null },
  { kind: "stock", within: null },
  { kind: "series", within: null },
  { kind: "jar", within: "seriesId" },
  { kind: "dish", within: "sampleId" },
  { kind: "pump", within: null },
  { kind: "machine", within: null },
  { kind: "plantRun", within: "seriesId" },
];
