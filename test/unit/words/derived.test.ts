import { afterEach, describe, expect, it } from "vitest";
import { decisionChain } from "../../../src/study/derive/decision.ts";
import { responseWords } from "../../../src/responses/registry.ts";
import { limitsOf } from "../../../src/study/derive/choice.ts";
import type { Figure } from "../../../src/study/derive/figure.ts";
import { seriesChain } from "../../../src/study/derive/jars.ts";
import { machineChain } from "../../../src/study/derive/plant-machine.ts";
import { outletChain, supplyFigures } from "../../../src/study/derive/plant-supply.ts";
import { landChain, unitChain } from "../../../src/study/derive/plant-unit.ts";
import { plantChain } from "../../../src/study/derive/plant.ts";
import { qualityFlags } from "../../../src/study/derive/quality/quality.ts";
import { stripNumbers } from "../study/strip-words.ts";
import { stripSegments } from "../../../src/study/derive/strip.ts";
import type { StudyState } from "../../../src/study/schema/records.ts";
import { german } from "../../../src/words/german/all.ts";
import { speak } from "../../../src/words/language.ts";
import { apply, demoState } from "../study/state.ts";

const at = "2026-03-01T12:00:00.000Z";

afterEach(() => speak("english", null));

/** Every figure within what was derived, in a fixed order. */
function figuresIn(value: unknown): Figure[] {
  if (value === null || typeof value !== "object") return [];
  if ("made" in value && "quantity" in value) return [value as Figure];
  return Object.values(value).flatMap(figuresIn);
}

function figures(state: StudyState): Figure[] {
  const expected = { cakePct: 20, capturePct: 97 };
  const plant = plantChain(state, "series-1", { a: 5.2, b: null }, expected);
  const usual = plant.cases.find(({ feedCase }) => feedCase.size === "usual")!;
  const series = seriesChain(state, "series-1");
  return figuresIn([
    series.sample,
    series.stockA,
    series.jars,
    plant.cases.map(({ feed, load, polymers }) => ({
      feed,
      load,
      polymers: polymers.map(({ neat, solution, polymer }) => ({ neat, solution, dose: polymer.dose })),
    })),
    unitChain(usual.polymers[0]!, usual.feedCase),
    supplyFigures(usual.polymers[0]!, usual.feedCase, usual.load.value!),
    outletChain(usual, expected, null),
    Object.values(state.machine).map((machine) => machineChain(machine, usual.feed, series.sample)),
    landChain({ id: "l", limitKgPerHa: 30, drySolidsTPerHa: null, otherDoseKgPerT: 0 } as never, [5]),
  ]);
}

describe("derived texts", () => {
  it("are made in the language spoken, with the very same numbers", () => {
    const before = figures(demoState(at));
    speak("german", german);
    // a state of its own: what was worked out for a record in one language is kept with that record
    const after = figures(demoState(at));
    expect(before.length).toBeGreaterThan(100);
    expect(after.map(({ value, low, high }) => [value, low, high])).toEqual(
      before.map(({ value, low, high }) => [value, low, high]),
    );
    const untold = after.flatMap(({ made }, index) => {
      const english = before[index]!.made;
      return made.formula === english.formula || made.source === english.source ? [english.formula] : [];
    });
    expect(untold).toEqual([]);
    const names = new Set(after.flatMap(({ made }) => made.inputs.map(({ name }) => name)));
    const english = new Set(before.flatMap(({ made }) => made.inputs.map(({ name }) => name)));
    expect([...names].filter((name) => english.has(name))).toEqual([]);
  });

  it("name the responses and limits in the language spoken when they are read", () => {
    const label = responseWords["turbidity_ntu"]!.label;
    speak("german", german);
    expect([label, responseWords["turbidity_ntu"]!.label]).toEqual(["Turbidity", "Trübung"]);
    const targets = Object.values(demoState(at).targets)[0]!;
    const limits = limitsOf(targets, "NTU", String).map(({ words }) => words);
    expect(limits.length).toBeGreaterThan(0);
    expect(limits.filter((words) => !/höchstens|mindestens/.test(words))).toEqual([]);
  });

  it("tell flags and the strip", () => {
    speak("german", german);
    const state = apply(demoState(at), {
      do: "set",
      kind: "sample",
      id: "sample-1",
      fields: { takenAt: null },
    });
    const flags = qualityFlags(state, seriesChain(state, "series-1"), {
      now: at,
      number: String,
      doses: { number: String, given: String, unit: "kg/t" },
    });
    expect(flags.map(({ word }) => word).sort()).toEqual([
      "Probenahmezeit unbekannt",
      "über dem Messbereich",
    ]);
    const strip = stripSegments({
      state,
      sampleId: "sample-1",
      seriesId: "series-1",
      analysis: null,
      running: true,
      changes: 1,
      words: stripNumbers,
    });
    expect(strip.map(({ word }) => word)).toEqual([
      "endgültig",
      "alle abgelesen",
      "läuft",
      "freigegeben",
      "geprüft",
      "gespeichert",
    ]);
    expect(strip[5]!.headline).toBe("1 Änderung");
  });

  it("do not move an approval: what was kept in one language still stands in another", () => {
    const state = demoState(at);
    speak("german", german);
    expect(decisionChain(state, "series-1")).toMatchObject({ moved: null, word: "freigegeben" });
    const moved = apply(state, { do: "set", kind: "dish", id: "dish-1", fields: { dryG: 47.6 } });
    expect(decisionChain(moved, "series-1")!.moved).toMatch(/^Schale .*: war .*, ist jetzt 47\.6 g$/);
  });
});
