import type { z } from "zod";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { applyCommand } from "../../../src/study/commands.ts";
import { demoCommands } from "../../../src/study/demo.ts";
import { describeChange } from "../../../src/study/describe.ts";
import { fieldUnit, fieldWords } from "../../../src/study/issue-words.ts";
import { references } from "../../../src/study/references.ts";
import { emptyState, kinds, recordSchemas, type StudyState } from "../../../src/study/schema/records.ts";
import { german } from "../../../src/words/german/all.ts";
import { fieldNames } from "../../../src/words/german/field-names.ts";
import { valueNamed } from "../../../src/words/german/value-names.ts";
import { speak } from "../../../src/words/language.ts";
import { kindWords } from "../../../src/words/records.ts";

type Loose = z.core.$ZodTypeDef & {
  shape?: Record<string, z.core.$ZodType>;
  element?: z.core.$ZodType;
  options?: z.core.$ZodType[];
  innerType?: z.core.$ZodType;
  in?: z.core.$ZodType;
  entries?: Record<string, string | number>;
  values?: unknown[];
};

const same = new Set(["id", "decimalMark", "turbidityUnit", "side"]);

/** The texts that a schema chooses from, each with the field it stands in. */
function choices(schema: z.core.$ZodType, field: string): [string, string][] {
  const def = schema._zod.def as Loose;
  const own = [...Object.values(def.entries ?? {}), ...(def.values ?? [])];
  return [
    ...own.flatMap((value): [string, string][] => (typeof value === "string" ? [[field, value]] : [])),
    ...Object.entries(def.shape ?? {}).flatMap(([name, inner]) => choices(inner, name)),
    ...[...(def.options ?? []), def.element, def.innerType, def.in].flatMap((inner) =>
      inner ? choices(inner, field) : [],
    ),
  ];
}

/** The groups of fields in a schema, each as the names that stand side by side in it. */
function groups(schema: z.core.$ZodType): string[][] {
  const def = schema._zod.def as Loose;
  const inner = [
    ...Object.values(def.shape ?? {}),
    ...(def.options ?? []),
    ...[def.element, def.innerType, def.in].filter((one) => one !== undefined),
  ];
  return [...(def.shape ? [Object.keys(def.shape)] : []), ...inner.flatMap(groups)];
}

const demo = demoCommands("2026-01-01T12:00:00Z").reduce<StudyState>((state, command) => {
  const applied = applyCommand(state, command);
  if (!applied.ok) throw new Error(applied.message);
  return applied.value.state;
}, emptyState());

const refusal = (
  kind: "jar" | "reading" | "sample" | "study",
  id: string,
  fields: Record<string, unknown>,
) => {
  const applied = applyCommand(demo, { do: "set", kind, id, fields });
  return applied.ok ? "accepted" : applied.message;
};

beforeEach(() => speak("german", german));
afterEach(() => speak("english", null));

describe("the records of a study in German", () => {
  it("have a word for every field", () => {
    const names = new Set(kinds.flatMap((kind) => groups(recordSchemas[kind]).flat()));
    for (const { field } of references) names.add(field.replace(/Id$/, ""));
    expect(names.size).toBeGreaterThan(150);
    expect([...names].filter((name) => fieldNames[name] === undefined)).toEqual([]);
    expect(Object.keys(fieldNames).filter((name) => !names.has(name))).toEqual([]);
  });

  it("have a word for every value that a field chooses from", () => {
    const all = kinds.flatMap((kind) => choices(recordSchemas[kind], kind));
    expect(all.length).toBeGreaterThan(80);
    const lacking = all.filter(
      ([field, value]) => !same.has(field) && valueNamed(field, value) === undefined,
    );
    expect(lacking).toEqual([]);
  });

  it("call no two fields that stand side by side the same, so that no column of a sheet hides another", () => {
    const twins = kinds.flatMap((kind) =>
      groups(recordSchemas[kind]).flatMap((names) => {
        const heads = names.map((name) => `${fieldWords(name)}, ${fieldUnit(name)}`);
        return heads.filter((head, index) => heads.indexOf(head) !== index).map((head) => `${kind}: ${head}`);
      }),
    );
    expect(twins).toEqual([]);
  });

  it("give each kind a name that a sheet can have", () => {
    const names = kinds.map((kind) => kindWords[kind].many);
    expect(new Set(names).size).toBe(kinds.length);
    expect(names.filter((name) => name.length > 31 || /[[\]:*?/\\]/.test(name))).toEqual([]);
  });

  it("say what is wrong with a field, though the schemas were made in English", () => {
    expect(refusal("sample", "sample-1", { ph: 15 })).toBe("pH-Wert liegt über 14 (angegeben: 15).");
    expect(refusal("jar", "jar-1-04", { label: "" })).toBe("Bezeichnung braucht einen Namen.");
    expect(refusal("reading", "jar-1-04-r6", { result: { kind: "floc-grade", grade: 9 } })).toBe(
      "Note muss 1 bis 5 sein (angegeben: 9).",
    );
  });

  it("tell the library's own faults too", () => {
    expect(refusal("study", "study", { currency: "Golddukaten" })).toBe(
      "Währung ist zu groß oder zu lang (höchstens 8) (angegeben: Golddukaten).",
    );
    expect(refusal("study", "study", { invented: "x" })).toMatch(/^Erfunden ist nicht Ja oder Nein/);
    speak("english", null);
    expect(refusal("study", "study", { currency: "Golddukaten" })).toMatch(
      /^Currency is not right: too big: .* \(given: Golddukaten\)\.$/,
    );
  });

  it("tell a change in the order of German words", () => {
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
      "Becher 4 zu Reihe E-42 alone geändert: Spritze A von 18.6 auf 18 mL.",
    );
    const role = { ...command, fields: { role: "standard" } };
    const inverse = { ...command, fields: { role: "no-polymer" } };
    expect(describeChange({ ...change, command: role, inverse }, demo)).toBe(
      "Becher 4 zu Reihe E-42 alone geändert: Rolle von ohne Polymer auf Standard.",
    );
    expect(describeChange({ ...change, undoes: 10 }, demo)).toMatch(
      /^Schritt 10 rückgängig gemacht: Becher 4/,
    );
  });
});
