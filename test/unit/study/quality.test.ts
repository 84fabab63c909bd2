import { describe, expect, test } from "vitest";
import type { Command } from "../../../src/study/commands.ts";
import { seriesChain } from "../../../src/study/derive/jars.ts";
import { qualityFlags } from "../../../src/study/derive/quality/quality.ts";
import type { StudyState } from "../../../src/study/schema/records.ts";
import { apply, demoState } from "./state.ts";

const at = "2026-03-01T12:00:00.000Z";
const demo = demoState(at);
const number = (value: number) => value.toPrecision(3);
const flagsOf = (state: StudyState, now = at, series = "series-1") =>
  qualityFlags(state, seriesChain(state, series), {
    now,
    number,
    doses: { number, given: number, unit: "kg/t" },
  });
const words = (state: StudyState, now = at) => flagsOf(state, now).map((flag) => flag.word);
const set = (
  kind: "jar" | "sample" | "series" | "stock" | "stream",
  id: string,
  fields: object,
): Command => ({
  do: "set",
  kind,
  id,
  fields: fields as Record<string, unknown>,
});
const read = (id: string, jarId: string, result: object): Command => ({
  do: "add",
  kind: "reading",
  record: { id, jarId, result },
});

test("the demo has one thing to know: a reading over range, at its number", () => {
  const flags = flagsOf(demo);
  expect(flags.map((flag) => flag.word)).toEqual(["over range"]);
  expect(flags[0]!.aim).toEqual({ room: "bench", jarId: "jar-1-01", column: "turbidity" });
});

describe("each slip of the trial day is seen", () => {
  test("an ageing and then an old sample, by the last jar once all are read", () => {
    const later = apply(demo, set("jar", "jar-1-13", { mixedAt: "2026-03-01T11:00:00.000Z" }));
    // taken 230 minutes before the demo's moment, so 2.83 h old at 11:00
    expect(words(later)).toContain("ageing sample");
    const old = apply(demo, set("jar", "jar-1-13", { mixedAt: "2026-03-02T09:00:00.000Z" }));
    expect(words(old)).toContain("old sample");
    expect(words(apply(demo, set("sample", "sample-1", { takenAt: null })))).toContain("sample time unknown");
  });
  test("a solution used too young, past its life, or never timed", () => {
    const start = demo.stock["stock-1"]!.mixStartedAt!;
    const after = (minutes: number) => new Date(Date.parse(start) + minutes * 60_000).toISOString();
    expect(words(apply(demo, set("jar", "jar-1-05", { mixedAt: after(10) })))).toContain("too young");
    expect(words(apply(demo, set("jar", "jar-1-05", { mixedAt: after(60) })))).not.toContain("too young");
    expect(words(apply(demo, set("jar", "jar-1-05", { mixedAt: after(9 * 60) })))).toContain("past its life");
    expect(words(apply(demo, set("stock", "stock-1", { mixStartedAt: null })))).toContain(
      "mixing time unknown",
    );
  });
  test("the standard jar drifting by more than 15 %", () => {
    let state = demo;
    for (const id of ["jar-1-06", "jar-1-07"]) state = apply(state, set("jar", id, { role: "standard" }));
    // 62.5 and 53.5 NTU in running order 5 and 13: 14.4 %
    expect(words(state)).not.toContain("standard jar drifts");
    const reading = Object.values(state.reading).find(
      ({ jarId, result }) => jarId === "jar-1-07" && result.kind === "turbidity",
    )!;
    const drifted = apply(state, {
      do: "set",
      kind: "reading",
      id: reading.id,
      fields: { result: { kind: "turbidity", value: 50, censored: null, dilution: 1 } },
    });
    const flag = flagsOf(drifted).find((one) => one.id === "drift-turbidity_ntu")!;
    expect(flag.sentence).toContain("-20.0 %");
    expect(flag.aim.jarId).toBe("jar-1-07");
  });
  test("re-reads out of their band, and within it", () => {
    expect(words(apply(demo, read("r-x", "jar-1-05", { kind: "cst", seconds: 33 })))).toContain(
      "re-reads differ",
    );
    expect(words(apply(demo, read("r-x", "jar-1-05", { kind: "cst", seconds: 29 })))).not.toContain(
      "re-reads differ",
    );
  });
  test("a volume too small for the syringe, off the plan, unequal volumes", () => {
    const small = apply(demo, set("jar", "jar-1-02", { syringeAMl: 6, plannedDoseAKgPerT: null }));
    expect(words(small)).toContain("syringe too coarse");
    expect(words(apply(demo, set("jar", "jar-1-02", { syringeAMl: 20 })))).toContain("off plan");
    expect(words(apply(demo, set("jar", "jar-1-02", { blankWaterMl: 200 })))).toContain("unequal volumes");
  });
  test("an order that was not kept, and blanks that are missing", () => {
    let state = apply(demo, set("jar", "jar-1-04", { mixedAt: "2026-03-01T09:40:00.000Z" }));
    state = apply(state, set("jar", "jar-1-08", { mixedAt: "2026-03-01T09:30:00.000Z" }));
    expect(words(state)).toContain("order not kept");
    expect(words(apply(demo, set("series", "series-1", { cstWaterS: null })))).toContain("no water blank");
    const bare = apply(demo, set("jar", "jar-1-01", { leftOut: { reason: "spilled", note: "" } }));
    expect(words(bare)).toContain("no jar without polymer");
  });
  test("neat taken for active: D lies outside the usual doses, D x a or D / a inside (trade table, section 1.1)", () => {
    // Flotation froth usually takes 2 to 8 kg/t; ten times the stock is far outside, and so is the number x 0.42.
    const froth = apply(demo, set("stream", "stream-1", { sludgeClass: "flotation" }));
    expect(words(froth)).not.toContain("neat for active?");
    // a stock weighed 2.38 times too strong by the record: 4 kg/t reads as 9.5
    const strong = apply(froth, set("stock", "stock-1", { neatMassG: 2.381 / 0.42, targetActivePct: null }));
    const flag = flagsOf(strong).find(({ id }) => id === "basis-A")!;
    expect(flag.word).toBe("neat for active?");
    expect(flag.sentence).toContain("common practice, no source");
  });
  test("what is left out is not judged", () => {
    const off = apply(demo, set("jar", "jar-1-02", { syringeAMl: 20 }));
    const out = apply(off, set("jar", "jar-1-02", { leftOut: { reason: "wrong-dose", note: "" } }));
    expect(words(out)).not.toContain("off plan");
  });
});
