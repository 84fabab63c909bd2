import { z } from "zod";
import { bad, good, type Outcome } from "../../outcome.ts";
import { applyCommand, type SimpleCommand } from "../commands.ts";
import { emptyState, kinds, recordSchemas, type AnyRecord, type StudyState } from "../schema/records.ts";
import { importWords } from "../../words/imports.ts";
import { sheetWords } from "../../words/sheets.ts";

/** A whole study as one JSON value: every record by its kind, in the order of their ids. History is not in it. */
const studyDocumentSchema = z.strictObject({
  format: z.literal("flocwright-study"),
  version: z.literal(1),
  records: z.strictObject(
    Object.fromEntries(kinds.map((kind) => [kind, z.array(recordSchemas[kind])])) as unknown as {
      [K in keyof typeof recordSchemas]: z.ZodArray<(typeof recordSchemas)[K]>;
    },
  ),
});
export type StudyDocument = z.output<typeof studyDocumentSchema>;

/** A study as its document. */
export function wholeStudy(state: StudyState): StudyDocument {
  const records = Object.fromEntries(
    kinds.map((kind) => [kind, Object.values(state[kind]).sort((a, b) => (a.id < b.id ? -1 : 1))]),
  );
  return { format: "flocwright-study", version: 1, records } as unknown as StudyDocument;
}

/** A study from its document; every record, reference and rule is checked, or one sentence says what does not hold. */
export function studyFrom(value: unknown): Outcome<StudyState> {
  const parsed = studyDocumentSchema.safeParse(value);
  if (!parsed.success) {
    const [issue] = parsed.error.issues;
    return bad(
      sheetWords.clause(
        issue?.path.join(".") || importWords.wholeDocument,
        issue?.message ?? importWords.notRight,
      ),
    );
  }
  const commands = kinds.flatMap((kind) =>
    (parsed.data.records[kind] as AnyRecord[]).map((record): SimpleCommand => ({
      do: "add",
      kind,
      record: record as Record<string, unknown>,
    })),
  );
  const applied = applyCommand(emptyState(), { do: "together", label: "study", commands });
  return applied.ok ? good(applied.value.state) : applied;
}

/** The JSON schema of that document, generated from the schemas that the program itself parses by. */
export function studyJsonSchema(): unknown {
  return {
    ...z.toJSONSchema(studyDocumentSchema, { io: "output", reused: "ref" }),
    title: "Flocwright study",
    description:
      "A whole study: every record by its kind. Field names carry the unit (doseKgPerT, sampleVolumeMl, totalSolidsPct); doses are kg of active polymer per tonne of dry solids unless the name says otherwise; null is unknown.",
  };
}
