import { responseSpecs } from "../../../src/responses/registry.ts";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { workingWindow } from "../../../src/choice/window.ts";
import { analyseJars } from "../../../src/curve/analyse.ts";
import type { AnalyseRow } from "../../../src/curve/analyse-types.ts";
import { modelNamed } from "../../../src/curve/models/registry.ts";
import { fieldLabel } from "../../../src/exchange/column-words.ts";
import { fields } from "../../../src/exchange/columns.ts";
import { feedFlowM3PerH } from "../../../src/plant/feed.ts";
import { plantCautions } from "../../../src/study/cautions.ts";
import { unitText } from "../../../src/units/display.ts";
import { parseNumber, readsTwoWays } from "../../../src/units/number-entry.ts";
import { german } from "../../../src/words/german/all.ts";
import { speak, type Texts } from "../../../src/words/language.ts";
import { planned } from "../exchange/bench-study.ts";

const message = (outcome: { ok: true } | { ok: false; message: string }) =>
  outcome.ok ? "no fault" : outcome.message;

/** Turbidity over single and repeated doses of polymer A. */
function sentence(doses: number[], values: number[]): string {
  const rows = doses.map((dose, i): AnalyseRow => {
    const readings = { turbidity_ntu: { value: values[i]!, censored: null } };
    return { row: i + 2, jar: String(i + 1), doseA: dose, doseB: 0, block: null, order: null, readings };
  });
  const result = analyseJars(rows, {
    name: "f.csv",
    responses: responseSpecs,
    number: (value) => String(Number(value.toPrecision(3))),
    jar: (row) => String(row - 1),
  });
  return result.ok ? result.value.analysis.responses[0]!.verdict.sentence : result.message;
}

/** Every plain text of a group by its path. */
function plain(texts: Texts, before: string): [string, string][] {
  return Object.entries(texts).flatMap(([name, text]): [string, string][] =>
    typeof text === "string"
      ? [[`${before}.${name}`, text]]
      : typeof text === "function"
        ? []
        : plain(text, `${before}.${name}`),
  );
}

beforeEach(() => speak("german", german));
afterEach(() => speak("english", null));

describe("the domain speaks German, and English again", () => {
  it("of a typed number", () => {
    expect(message(parseNumber("1,5", "."))).toBe(
      "„1,5“ hat ein Komma, das Dezimalzeichen ist hier aber der Punkt: bitte damit eingeben.",
    );
    speak("english", null);
    expect(message(parseNumber("1,5", "."))).toBe(
      '"1,5" uses a comma, but the decimal mark here is a point: enter it with that.',
    );
  });

  it("of units that hold a word", () => {
    expect(unitText("costPerTDs", "metric")).toBe("je t TR");
    expect(unitText("asSuppliedKgPerT", "metric")).toBe("kg/t Handelsware");
    speak("english", null);
    expect(unitText("costPerTDs", "metric")).toBe("per t dry solids");
  });

  it("of what is missing, of models and of cautions", () => {
    const none = {
      flowM3PerH: null,
      timedVolumeM3: null,
      tankAreaM2: null,
      levelChangeM: null,
      timedMin: null,
      supplyM3PerH: null,
      returnM3PerH: null,
    };
    expect(message(feedFlowM3PerH({ ...none, flowFrom: "meter" }))).toBe("den Zulaufstrom eintragen");
    expect(modelNamed("quadratic")!.words).toMatch(/^Ein Tal/);
    expect(modelNamed("plateau")!.words).toMatch(/^Gerade/);
    expect(plantCautions()[2]).toMatch(/äußerst rutschig/);
    speak("english", null);
    expect(modelNamed("plateau")!.words).toBe("Straight up to a knee, level after it.");
    expect(plantCautions()[2]).toMatch(/^Spilled polymer/);
  });

  it("of a verdict, made of whole sentences", () => {
    expect(sentence([4], [60])).toMatch(/1 einzelne Dosis ist zu wenig/);
    const valley = [485, 475, 142, 151, 77.6, 72.9, 47.1, 47.6, 50.3, 47.7, 95.4, 111];
    expect(sentence([2, 2, 3, 3, 4, 4, 5, 5, 6, 6, 8, 8], valley)).toMatch(
      /^5\.\d+ kg\/t, [\d.]+ bis [\d.]+; .*Becher \d+ hat den größten Einfluss\.$/,
    );
  });

  it("of limits that shut each other out", () => {
    const limit = (words: string, low: number, high: number) => ({
      limit: { response: "x", words, side: "at-most" as const, value: 1 },
      spans: [{ low, high }],
    });
    const window = workingWindow([limit("eins", 1, 2), limit("zwei", 4, 5)], { low: 1, high: 5 }, (dose) =>
      String(dose).replace(".", ","),
    );
    expect(window).toMatchObject({
      sentence:
        "Keine geprüfte Dosis hält „eins“ und „zwei“ zugleich ein; am nächsten kommen sie sich bei 3 kg/t. Keiner der Grenzwerte wurde gelockert.",
    });
  });

  it("of a file: a number that reads two ways is still refused for the whole file", () => {
    const plan = planned("jar;dose_a_kg_per_t;turbidity_ntu\n1;4;1,234\n");
    expect(message(plan)).toMatch(/Zeile 2, Spalte turbidity_ntu: „1,234“ lässt sich auf zwei Arten lesen/);
    expect([readsTwoWays("1,234"), readsTwoWays("1,2340"), readsTwoWays("0,234")]).toEqual([
      true,
      false,
      false,
    ]);
  });

  it("of every column, each by a name of its own", () => {
    const names = fields.map(fieldLabel);
    expect(new Set(names).size).toBe(fields.length);
    expect(fieldLabel("cake_left_out")).toBe("Kuchen-TR weggelassen, Grund");
  });

  it("without English words left in a text", () => {
    const texts = Object.entries(german).flatMap(([name, area]) => plain(area, name));
    expect(texts.length).toBeGreaterThan(200);
    // "Enter" alone is the key's name on a German keyboard too.
    const left = (text: string) => text.replace(/\bEnter\b(?! (the|a|an|it)\b)/g, "");
    expect(
      texts.filter(([, text]) => /\b(the|must|is|are|of|and|with|enter|first)\b/i.test(left(text))),
    ).toEqual([]);
  });
});
