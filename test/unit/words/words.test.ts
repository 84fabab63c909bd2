import { afterEach, describe, expect, it } from "vitest";
import { german } from "../../../src/words/german/all.ts";
import { area, counted, speak, spokenLanguage } from "../../../src/words/language.ts";
import { flatTexts, wholeEnglish } from "./catalogue.ts";
import { warningWords } from "../../../src/words/warnings.ts";

/** Texts that are the same word or sign in both languages. */
const shared = new Set([
  "% TSS",
  "CST",
  "CST, s",
  "Enter",
  "Enter, Tab",
  "Letter",
  "Name",
  "Person",
  "Polymer",
]);

afterEach(() => speak("english", null));

describe("the words of the program", () => {
  it("stand in English and German, text for text, each made from the same parts", async () => {
    const source = flatTexts(await wholeEnglish());
    const other = flatTexts(german);
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
    const other = flatTexts(german);
    const same = [...flatTexts(await wholeEnglish())].filter(
      ([path, text]) =>
        !text.startsWith("a text from") &&
        /[A-Za-z]{3}/.test(text) &&
        text === other.get(path) &&
        !shared.has(text),
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
