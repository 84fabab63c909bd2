import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { demoCommands } from "../../../src/study/demo.ts";
import { guideOf } from "../../../src/study/derive/guide/guide.ts";
import { standingWords } from "../../../src/study/library/glance.ts";
import { emptyState, type StudyState } from "../../../src/study/schema/records.ts";
import { glossaryWords } from "../../../src/words/glossary.ts";
import { german } from "../../../src/words/german/all.ts";
import { speak } from "../../../src/words/language.ts";
import { apply, demoState } from "../study/state.ts";

const at = "2026-03-01T12:00:00Z";

/** Small words that English sentences cannot do without and German does not have. */
const englishWords =
  /(?<![\p{L}-])(the|and|of|with|from|not|is|are|by|at|to|for|its|this|no|jars?|dose|sludge|pump)(?![\p{L}-])/iu;

beforeEach(() => speak("german", german));
afterEach(() => speak("english", null));

/** Every text in a value, wherever it stands. */
function textsIn(value: unknown): string[] {
  if (typeof value === "string") return [value];
  return typeof value === "object" && value !== null ? Object.values(value).flatMap(textsIn) : [];
}

/** A value without its texts: its numbers, moments and how it hangs together. */
function withoutTexts(value: unknown): unknown {
  if (typeof value === "string") return /^\d{4}-|^[a-z]+-[\d-]+/.test(value) ? value : "…";
  if (typeof value !== "object" || value === null) return value;
  return Object.fromEntries(Object.entries(value).map(([key, inner]) => [key, withoutTexts(inner)]));
}

describe("the invented demo made in German", () => {
  it("is written in German with a decimal comma, and has the very numbers of the English one", () => {
    const made = demoCommands(at, ",").reduce(apply, emptyState());
    expect(made.study["study"]).toMatchObject({
      name: "Beispiel: Mischschlamm, Straße 2",
      decimalMark: ",",
      invented: true,
    });
    // What is kept with an approval to be compared later is the same in every language; what it is called is not.
    const kept = Object.values(made.tableApproval).flatMap(({ snapshot }) => snapshot);
    expect(kept.length).toBeGreaterThan(5);
    const texts = [...textsIn({ ...made, tableApproval: {} }), ...kept.map(({ name }) => name)];
    expect(texts.filter((text) => text.includes(" ") && englishWords.test(text))).toEqual([]);
    speak("english", null);
    expect(withoutTexts(made)).toEqual(withoutTexts(demoState(at)));
    expect(made.series["series-2"]!.label).toBe("C-40, dann E-42");
  });

  it("keeps its language when another is spoken, for it is the study's own text", () => {
    const made = demoCommands(at).reduce(apply, emptyState());
    speak("english", null);
    expect(made.stream["stream-1"]!.label).toBe("Mischschlamm, Straße 2");
    expect(demoState(at).stream["stream-1"]!.label).toBe("Blended sludge, line 2");
  });
});

describe("the guide in German", () => {
  const words = (state: StudyState, seriesId: string | null) =>
    guideOf(state, {
      seriesId,
      sampleId: "sample-1",
      curves: { word: "refused", sentence: "Zu wenige Dosen." },
    }).steps.flatMap(({ title, why }) => [title, why]);

  it("says every step of an empty study and of the whole demo without an English word", () => {
    const demo = demoState(at);
    for (const said of [words(emptyState(), null), words(demo, "series-1"), words(demo, "series-2")]) {
      expect(said.length).toBe(22);
      expect(said.filter((text) => englishWords.test(text))).toEqual([]);
    }
  });

  it("says one jar and several jars that are not read yet", () => {
    const demo = demoState(at);
    const unread = Object.values(demo.reading)
      .filter(({ jarId }) => jarId === "jar-1-01" || jarId === "jar-1-02")
      .map(({ id }) => ({ do: "remove", kind: "reading", id }) as const)
      .reduce(apply, demo);
    expect(words(unread, "series-1").join(" ")).toContain("2 Becher haben noch keine Ablesung");
  });
});

describe("what a list says of a study", () => {
  it("follows the language that is spoken, and counts", () => {
    const far = { jars: 1, series: 1, samples: 1, approvedBy: null };
    expect(standingWords(far)).toBe("1 Becher in 1 Reihe, noch keine Dosis freigegeben");
    expect(standingWords({ ...far, jars: 24, series: 2, approvedBy: "Jon R." })).toBe(
      "24 Becher in 2 Reihen; Dosis freigegeben von Jon R.",
    );
    expect(standingWords({ ...far, jars: 0 })).toBe("Probe eingetragen, noch keine Becher");
    speak("english", null);
    expect(standingWords(far)).toBe("1 jar in 1 series, no dose approved yet");
    expect(standingWords({ ...far, jars: 0, samples: 0 })).toBe("nothing entered yet");
  });
});

describe("the glossary in German", () => {
  it("names each word once and says what it means in a sentence that a note can hold", () => {
    const entries = Object.values(glossaryWords);
    expect(new Set(entries.map(({ term }) => term)).size).toBe(entries.length);
    for (const { term, means } of entries) {
      expect(means, term).toMatch(/^[A-ZÄÖÜ].*\.$/);
      expect(means.length, term).toBeLessThan(140);
    }
  });
});
