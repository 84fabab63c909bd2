import { expect, test } from "vitest";
import { applyCommand } from "../../../src/study/commands.ts";
import { demoCommands } from "../../../src/study/demo.ts";
import { describeChange } from "../../../src/study/describe.ts";
import { fieldUnit, fieldWords } from "../../../src/study/issue-words.ts";
import { emptyState, type StudyState } from "../../../src/study/schema/records.ts";

const demo = demoCommands("2026-01-01T12:00:00Z").reduce<StudyState>((state, command) => {
  const applied = applyCommand(state, command);
  if (!applied.ok) throw new Error(applied.message);
  return applied.value.state;
}, emptyState());

test("a field's name becomes words, its unit apart", () => {
  expect([fieldWords("sampleVolumeMl"), fieldUnit("sampleVolumeMl")]).toEqual(["sample volume", "mL"]);
  expect([fieldWords("plannedDoseAKgPerT"), fieldUnit("plannedDoseAKgPerT")]).toEqual([
    "planned dose A",
    "kg/t",
  ]);
  expect([fieldWords("flowM3PerH"), fieldUnit("flowM3PerH")]).toEqual(["flow", "m³/h"]);
  expect([fieldWords("label"), fieldUnit("label")]).toEqual(["label", ""]);
});

test("a change is told in a sentence with what it was before", () => {
  const command = { do: "set", kind: "jar", id: "jar-1-04", fields: { syringeAMl: 18 } } as const;
  const applied = applyCommand(demo, command);
  if (!applied.ok) throw new Error(applied.message);
  const change = {
    seq: 11,
    at: "2026-01-01T12:00:00Z",
    by: "",
    command,
    inverse: applied.value.inverse,
    undoes: null,
    redoes: null,
    why: "",
  };
  expect(describeChange(change, demo)).toBe(
    "Changed jar 4 of series E-42 alone: syringe A from 18.6 to 18 mL.",
  );
  expect(describeChange({ ...change, undoes: 10 }, demo)).toMatch(/^Undid step 10: /);
});

test("a refused record says which field, what is wrong and what was given, in words", () => {
  const refuse = (kind: "jar" | "reading" | "sample", id: string, fields: object) => {
    const applied = applyCommand(demo, { do: "set", kind, id, fields: fields as Record<string, unknown> });
    return applied.ok ? "accepted" : applied.message;
  };
  expect(refuse("sample", "sample-1", { ph: 15 })).toBe("pH is above 14 (given: 15).");
  expect(refuse("jar", "jar-1-04", { syringeAMl: -5 })).toBe("Syringe A must not be negative (given: -5).");
  expect(refuse("reading", "jar-1-04-r6", { result: { kind: "floc-grade", grade: 9 } })).toBe(
    "Grade must be 1 to 5 (given: 9).",
  );
});
