import { describe, expect, it } from "vitest";
import { applyCommand, type SimpleCommand } from "../../../src/study/commands.ts";
import { demoCommands } from "../../../src/study/demo.ts";
import { describeChange, type HistoryTold } from "../../../src/study/describe.ts";
import { emptyState, type StudyState } from "../../../src/study/schema/records.ts";
import { german } from "../../../src/words/german/all.ts";
import { speak } from "../../../src/words/language.ts";

const at = "2026-01-01T12:00:00Z";
const demo = demoCommands(at).reduce<StudyState>((state, command) => {
  const applied = applyCommand(state, command);
  if (!applied.ok) throw new Error(applied.message);
  return applied.value.state;
}, emptyState());

/** The sentence of a step on the demo, told over the state that it leads to. */
function told(command: SimpleCommand, how?: HistoryTold): string {
  const applied = applyCommand(demo, command);
  if (!applied.ok) throw new Error(applied.message);
  const { state, inverse } = applied.value;
  const change = { seq: 99, at, by: "", command, inverse, undoes: null, redoes: null, why: "" };
  return describeChange(change, state, how);
}
const set = (kind: SimpleCommand["kind"], id: string, fields: Record<string, unknown>): SimpleCommand =>
  ({ do: "set", kind, id, fields }) as SimpleCommand;
const [sample] = Object.values(demo.sample);
const [decision] = Object.values(demo.decision);

describe("the history in sentences", () => {
  it("tells a reading as the screens tell it, with its jar", () => {
    const result = { kind: "turbidity", value: 1000, censored: "above", dilution: 1 };
    expect(
      told({ do: "add", kind: "reading", record: { id: "r-x", jarId: "jar-1-04", result } } as SimpleCommand),
    ).toBe("Added reading of jar 4 (turbidity >1000 NTU).");
    const reading = Object.values(demo.reading).find(
      (one) => one.jarId === "jar-1-04" && one.result.kind === "turbidity",
    )!;
    expect(told(set("reading", reading.id, { result: { ...reading.result, value: 140 } }))).toBe(
      "Changed reading of jar 4: result from turbidity 146 NTU to turbidity 140 NTU.",
    );
    expect(told({ do: "remove", kind: "reading", id: reading.id } as SimpleCommand)).toBe(
      "Removed reading of jar 4.",
    );
  });

  it("says what was approved, by whom and why, and what was withdrawn", () => {
    expect(
      told({
        do: "add",
        kind: "decision",
        record: { ...decision!, id: "d-2", doseBKgPerT: 0.75, reason: "Both are needed.", byName: "Mara T." },
      } as SimpleCommand),
    ).toBe("Approved 5.2 kg/t of A and 0.75 kg/t of B for series E-42 alone (Mara T.: Both are needed).");
    expect(
      told(
        set("decision", decision!.id, { withdrawn: { byName: "Mara T.", at, reason: "The wrong sample." } }),
      ),
    ).toBe("Withdrew the approved 5.2 kg/t of series E-42 alone (Mara T.: The wrong sample).");
  });

  it("says what was left out and why, and what was taken back in", () => {
    expect(told(set("jar", "jar-1-04", { leftOut: { reason: "spilled", note: "half of it" } }))).toBe(
      "Left out jar 4 of series E-42 alone: spilled, half of it.",
    );
    expect(told(set("jar", "jar-1-04", { leftOut: null }))).toBe("Took jar 4 of series E-42 alone back in.");
    const [draw] = Object.values(demo.drawDown);
    expect(told(set("drawDown", draw!.id, { leftOut: true }))).toBe(
      "Left out draw-down of pump Neat pump P1.",
    );
  });

  it("names the record that a field leads to, and never shows an id", () => {
    const [series] = Object.values(demo.series);
    expect(told(set("series", series!.id, { stockBId: "stock-2" }))).toBe(
      "Changed series E-42 alone: stock B from nothing to C-40 at 1 %.",
    );
  });

  it("says a name once, and ends in one full stop", () => {
    expect(told(set("sample", "sample-1", { ph: 7.1 }))).toBe(
      "Changed Sample 1, after the blending tank: pH from 6.9 to 7.1.",
    );
    expect(
      told({
        do: "add",
        kind: "person",
        record: { id: "p-9", name: "Ada Z.", role: "crew" },
      } as SimpleCommand),
    ).toBe("Added person Ada Z.");
  });

  it("writes numbers, units and moments as it is told to", () => {
    const how: HistoryTold = {
      entry: String,
      plain: String,
      inUnit: (value, unit) => String(unit === "kg/t" ? 2 * value : value).replace(".", ","),
      unit: (unit) => (unit === "kg/t" ? "lb/ton" : unit),
      moment: () => "noon",
    };
    expect(told(set("jar", "jar-1-04", { plannedDoseAKgPerT: 3.2 }), how)).toBe(
      "Changed jar 4 of series E-42 alone: planned dose A from 6 to 6,4 lb/ton.",
    );
    expect(told(set("sample", "sample-1", { takenAt: "2026-01-02T08:00:00Z" }), how)).toMatch(/ to noon\.$/);
  });

  it("keeps the unit where a value is taken away", () => {
    expect(told(set("sample", "sample-1", { temperatureC: null }))).toMatch(
      /: temperature from 17 °C to nothing\.$/,
    );
  });

  it("says the series once whose name begins with the word", () => {
    const state = { ...demo, series: { ...demo.series } };
    const id = decision!.seriesId;
    state.series[id] = { ...state.series[id]!, label: "Series 1" };
    const command = { do: "add", kind: "decision", record: { ...decision!, id: "d-3" } } as SimpleCommand;
    const change = { seq: 9, at, by: "", command, inverse: command, undoes: null, redoes: null, why: "" };
    expect(describeChange(change, state)).toMatch(/^Approved 5\.2 kg\/t for Series 1 \(/);
  });

  it("tells a step whose records are gone by their kinds", () => {
    const command = { do: "remove", kind: "jar", id: "gone" } as SimpleCommand;
    const change = { seq: 1, at, by: "", command, inverse: command, undoes: null, redoes: null, why: "" };
    expect(describeChange(change, null)).toBe("Removed jar.");
  });

  it("tells words that are also names within the language itself, in every language", () => {
    const hostile = ["constructor", "__proto__", "toString", "hasOwnProperty"];
    for (const table of [null, german]) {
      speak(table ? "german" : "english", table);
      for (const word of hostile) {
        expect(told(set("jar", "jar-1-04", { note: word }))).toContain(word);
        expect(told(set("jar", "jar-1-04", { leftOut: { reason: "spilled", note: word } }))).toContain(word);
        expect(told(set("sample", sample!.id, { place: word }))).toContain(word);
      }
    }
    speak("english", null);
  });

  it("has a sentence for an entry of a spoilt history too, and takes little of a long list", () => {
    const entry = (command: SimpleCommand) =>
      describeChange(
        { seq: 1, at, by: "", command, inverse: command, undoes: null, redoes: null, why: "" },
        demo,
        strict,
      );
    // A number that is missing must not reach what writes numbers.
    const strict: HistoryTold = {
      entry: (value) => value.toFixed(1),
      plain: (value) => value.toFixed(1),
      inUnit: (value) => value.toFixed(1),
      unit: (unit) => unit,
      moment: (iso) => iso,
    };
    const add = (kind: SimpleCommand["kind"], record: Record<string, unknown>): SimpleCommand => ({
      do: "add",
      kind,
      record,
    });
    expect(entry(add("reading", { id: "r-x" }))).toBe("Added reading (nothing).");
    expect(entry(add("reading", { id: "r-x", result: { kind: "constructor" } }))).toContain("constructor");
    expect(entry(add("decision", { id: "d-x", seriesId: "__proto__" }))).toContain("Approved nothing");
    let read = 0;
    const long = Array.from({ length: 5000 }, (_, i) =>
      Object.defineProperty({}, "toString", { enumerable: true, get: () => ((read += 1), String(i)) }),
    );
    expect(entry(set("series", "series-1", { readings: long })).length).toBeLessThan(400);
    expect(read).toBeLessThan(100);
  });
});
