import { readdirSync } from "node:fs";
import { join } from "node:path";
import "../../../src/responses/registry.ts";
import { registeredAreas, type LanguageTable, type Texts } from "../../../src/words/language.ts";

const folder = join(import.meta.dirname, "..", "..", "..", "src", "words");
const notAreas = new Set(["language.ts", "speak-language.ts"]);

/** Every area of texts in English, loaded whether or not something uses it here; the responses bring their own. */
export async function wholeEnglish(): Promise<LanguageTable> {
  for (const name of readdirSync(folder))
    if (name.endsWith(".ts") && !notAreas.has(name)) await import(join(folder, name));
  return registeredAreas();
}

function paths(texts: Texts, before: string): [string, string][] {
  return Object.entries(texts).flatMap(([name, text]): [string, string][] => {
    const path = `${before}.${name}`;
    if (typeof text === "string") return [[path, text]];
    if (typeof text === "function") return [[path, `a text from ${text.length} parts`]];
    return paths(text, path);
  });
}

/** Every text of a table by its path; one made from parts says only how many. */
export function flatTexts(table: LanguageTable): Map<string, string> {
  return new Map(Object.entries(table).flatMap(([name, texts]) => paths(texts, name)));
}
