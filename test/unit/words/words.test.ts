import { readdirSync } from "node:fs";
import { join } from "node:path";
import { afterEach, describe, expect, it } from "vitest";
import { german } from "../../../src/words/german/all.ts";
import {
  area,
  counted,
  registeredAreas,
  speak,
  spokenLanguage,
  type LanguageTable,
  type Texts,
} from "../../../src/words/language.ts";
import { warningWords } from "../../../src/words/warnings.ts";

const folder = join(import.meta.dirname, "..", "..", "..", "src", "words");
const notAreas = new Set(["language.ts", "table-of.ts"]);
const areaFiles = readdirSync(folder).filter((name) => name.endsWith(".ts") && !notAreas.has(name));

/** Every text of a table by its path, "" for a function. */
function paths(texts: Texts, before: string): [string, string][] {
  return Object.entries(texts).flatMap(([name, text]): [string, string][] => {
    const path = `${before}.${name}`;
    if (typeof text === "string") return [[path, text]];
    if (typeof text === "function") return [[path, `a text from ${text.length} parts`]];
    return paths(text, path);
  });
}
const flat = (table: LanguageTable) =>
  new Map(Object.entries(table).flatMap(([name, texts]) => paths(texts, name)));

/** Texts that are the same word or sign in both languages. */
const shared = new Set<string>(["choiceChain.responses.cst_s"]);

async function english(): Promise<LanguageTable> {
  for (const name of areaFiles) await import(join(folder, name));
  return registeredAreas();
}

afterEach(() => speak("english", null));

describe("the words of the program", () => {
  it("stand in English and German, text for text, each made from the same parts", async () => {
    const source = flat(await english());
    const other = flat(german);
    expect(source.size).toBeGreaterThan(5);
    expect([...other.keys()].sort()).toEqual([...source.keys()].sort());
    const differently = [...source].filter(
      ([path, text]) =>
        (text.startsWith("a text from") || other.get(path)?.startsWith("a text from")) &&
        other.get(path) !== text,
    );
    expect(differently).toEqual([]);
  });

  it("are translated, save for words that both languages share", async () => {
    const other = flat(german);
    const same = [...flat(await english())].filter(
      ([path, text]) =>
        !text.startsWith("a text from") &&
        /[A-Za-z]{3}/.test(text) &&
        text === other.get(path) &&
        !shared.has(path),
    );
    expect(same).toEqual([]);
  });

  it("change with the language and come back", async () => {
    const before = warningWords.outlier;
    speak("german", german);
    expect(spokenLanguage()).toBe("german");
    expect(warningWords.outlier).toMatch(/^Ein Becher/);
    speak("english", null);
    expect(warningWords.outlier).toBe(before);
  });

  it("are spoken by an area that is loaded after the language was chosen", () => {
    speak("german", { ...german, late: { good: "gut" } });
    expect(area("late", { good: "good", untold: "untold" })).toEqual({ good: "gut", untold: "untold" });
  });

  it("count things", () => {
    expect([counted(0, "jar", "jars"), counted(1, "jar", "jars"), counted(12, "jar", "jars")]).toEqual([
      "0 jars",
      "1 jar",
      "12 jars",
    ]);
  });
});
