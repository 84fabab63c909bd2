import { expect, test } from "vitest";
import type { Command } from "../../../src/study/commands.ts";
import { firstMissing, guideOf, wayOf, type GuideInput } from "../../../src/study/derive/guide/guide.ts";
import type { CurvesSoFar, StepKey } from "../../../src/study/derive/guide/step.ts";
import { decisionChain, upstreamOf } from "../../../src/study/derive/decision.ts";
import { emptyState, type Kind, type StudyState } from "../../../src/study/schema/records.ts";
import { apply, demoState } from "./state.ts";

const at = "2026-03-01T12:00:00Z";
const none: CurvesSoFar = { word: "none", sentence: "" };
const found: CurvesSoFar = { word: "found", sentence: "" };
const here = (curves: CurvesSoFar, more: Partial<GuideInput> = {}): GuideInput => ({
  seriesId: null,
  sampleId: null,
  curves,
  ...more,
});
const add = (kind: Kind, record: Record<string, unknown>): Command => ({ do: "add", kind, record });
const set = (kind: Kind, id: string, fields: Record<string, unknown>): Command => ({
  do: "set",
  kind,
  id,
  fields,
});

/** A study with the sample's two empty dishes, as the Sample room adds them. */
const sampled = [
  add("study", { id: "study", name: "New" }),
  add("stream", { id: "stream-1", label: "Stream" }),
  add("sample", { id: "s1", streamId: "stream-1", label: "Sample 1" }),
  add("dish", { id: "d1", sampleId: "s1", label: "1" }),
  add("dish", { id: "d2", sampleId: "s1", label: "2" }),
].reduce(apply, emptyState());

test("an empty study begins with its sample", () => {
  const guide = guideOf(emptyState(), here(none));
  expect(guide.next?.key).toBe("sample");
  expect(guide.next?.aim).toEqual({ room: "sample", target: "add sample" });
  expect(guide.steps.map(({ standing }) => standing)).toEqual(["next", ...Array(10).fill("later")]);
});

test("each entry that is made leads to the very next one, from the first dish to the settings", () => {
  const way: [Command | null, string, string][] = [
    [null, "solids", "dish d1 tareG"],
    [set("dish", "d1", { tareG: 50 }), "solids", "dish d1 wetG"],
    [set("dish", "d1", { wetG: 80 }), "solids", "dish d1 dryG"],
    [set("dish", "d1", { dryG: 50.9 }), "product", "add product"],
    [add("product", { id: "p1", label: "P", form: "emulsion" }), "product", "product p1 activePct"],
    [set("product", "p1", { activePct: 40 }), "stock", "add stock"],
    [add("stock", { id: "k1", productId: "p1", label: "K" }), "stock", "stock k1 neatMassG"],
    [set("stock", "k1", { neatMassG: 2.5 }), "stock", "stock k1 totalMassG"],
    [set("stock", "k1", { totalMassG: 500 }), "stock", "stock k1 solutionDensityKgPerL"],
    [set("stock", "k1", { solutionDensityKgPerL: 1 }), "series", "add series"],
    [add("series", { id: "r1", sampleId: "s1", label: "R" }), "series", "series r1 stockA"],
    [set("series", "r1", { stockAId: "k1" }), "series", "series r1 sampleVolumeMl"],
    [set("series", "r1", { sampleVolumeMl: 500 }), "series", "lay out jars"],
    [
      add("jar", { id: "j1", seriesId: "r1", label: "1", order: 2, syringeAMl: 30 }),
      "readings",
      "next empty",
    ],
    [add("jar", { id: "j2", seriesId: "r1", label: "2", order: 1 }), "series", "next empty"],
    [set("jar", "j2", { syringeAMl: 40 }), "readings", "next empty"],
  ];
  let state = sampled;
  for (const [command, key, target] of way) {
    if (command) state = apply(state, command);
    const { next } = guideOf(
      state,
      here(none, { sampleId: "s1", seriesId: state.series["r1"] ? "r1" : null }),
    );
    expect([next?.key, next?.aim.target]).toEqual([key, target]);
    expect(next?.why).toMatch(/^[A-Z].*\.$/);
    expect(next?.why).not.toContain("..");
  }
  const input = here(none, { sampleId: "s1", seriesId: "r1" });
  // the running order counts, not the table's
  expect(guideOf(state, input).next?.aim).toMatchObject({ jarId: "j2", column: "turbidity" });
  for (const jar of ["j1", "j2"])
    state = apply(
      state,
      add("reading", { id: `${jar}-r`, jarId: jar, result: { kind: "turbidity", value: 90, dilution: 1 } }),
    );
  expect(guideOf(state, input).next?.key).toBe("curve");
  const refused: CurvesSoFar = { word: "refused", sentence: "two doses make no curve" };
  expect(guideOf(state, { ...input, curves: refused }).next?.why).toContain(
    "Two doses make no curve. More jars help",
  );
  expect(guideOf(state, { ...input, curves: found }).next?.aim).toEqual({
    room: "dose",
    target: "pick dose a",
  });
  state = approved(state, "r1", 5);
  const plantWay: [Command | null, string, string][] = [
    [null, "feed", "add feed"],
    [
      add("feedCase", { id: "f1", label: "usual", size: "usual", hoursPerDay: 8, daysPerYear: 250 }),
      "feed",
      "feed f1 flowM3PerH",
    ],
    [set("feedCase", "f1", { flowM3PerH: 12 }), "pump", "add makedown p1"],
    [
      add("makeDown", { id: "m1", benchProductId: "p1", productId: "p1", solutionDensityKgPerL: 1 }),
      "pump",
      "product p1 densityKgPerL",
    ],
    [set("product", "p1", { densityKgPerL: 1.05 }), "pump", "makedown m1 solutionActivePct"],
    [set("makeDown", "m1", { solutionActivePct: 0.2 }), "pump", "add pump"],
    [add("pump", { id: "q1", label: "Q", makeDownId: "m1", stream: "neat" }), "pump", "add draw-down q1"],
    [
      add("drawDown", { id: "w1", pumpId: "q1", setting: 20, amount: 30, seconds: 60 }),
      "pump",
      "add draw-down q1",
    ],
  ];
  for (const [command, key, target] of plantWay) {
    if (command) state = apply(state, command);
    const { next } = guideOf(state, input);
    expect([next?.key, next?.aim.target]).toEqual([key, target]);
    expect(next?.why).toMatch(/^[A-Z].*\.$/);
    expect(next?.why).not.toContain("..");
    // asked for after the approval: it says why, and that the dose does not move
    if (target === "product p1 densityKgPerL")
      expect(next?.why).toMatch(/neat density of P: a pump moves volumes.* The approved dose stays/);
  }
  const low = apply(state, add("drawDown", { id: "w2", pumpId: "q1", setting: 30, amount: 32, seconds: 60 }));
  expect(guideOf(low, input).next).toMatchObject({
    key: "settings",
    why: expect.stringContaining("outside the settings"),
  });
  state = apply(state, add("drawDown", { id: "w2", pumpId: "q1", setting: 90, amount: 157, seconds: 60 }));
  const last = guideOf(state, input);
  expect(last.next).toBeNull();
  // what the guide asks for after the approval does not take it back
  expect(decisionChain(state, "r1")).toMatchObject({ word: "approved", moved: null });
  // nobody looked at the curves of two jars, and the approved dose did without
  expect(last.steps.find(({ key }) => key === "curve")?.standing).toBe("passed");
});

function approved(
  state: StudyState,
  seriesId: string,
  doseAKgPerT: number,
  doseBKgPerT: number | null = null,
) {
  return apply(
    state,
    add("decision", {
      id: `decision-${seriesId}`,
      seriesId,
      doseAKgPerT,
      doseBKgPerT,
      lowKgPerT: null,
      highKgPerT: null,
      rule: "own",
      reason: "known from last year",
      byName: "A. Tester",
      at,
      methodVersion: "1",
      snapshot: upstreamOf(state, seriesId),
    }),
  );
}

test("a provisional value of the moisture balance is enough to go on", () => {
  const state = apply(sampled, set("sample", "s1", { provisionalTotalSolidsPct: 2.5 }));
  expect(guideOf(state, here(none, { sampleId: "s1" })).next?.key).toBe("product");
});

test("a dose of one's own passes over the bench: only the plant is left to do", () => {
  const bare = [add("series", { id: "r1", sampleId: "s1", label: "R" })].reduce(apply, sampled);
  const state = approved(bare, "r1", 6);
  const guide = guideOf(state, here(none, { seriesId: "r1", sampleId: "s1" }));
  expect(guide.steps.map(({ key, standing }) => `${key} ${standing}`)).toEqual([
    "sample done",
    "solids passed",
    "product passed",
    "stock passed",
    "series passed",
    "readings passed",
    "curve passed",
    "dose done",
    "feed next",
    "pump later",
    "settings later",
  ]);
});

test("the demo has nothing left to ask, whichever series is looked at", () => {
  const demo = demoState(at);
  for (const seriesId of ["series-1", "series-2"])
    expect(guideOf(demo, here(found, { seriesId, sampleId: "sample-1" })).next).toBeNull();
});

test("two polymers: both stock solutions, both doses and both pumps are asked for", () => {
  const demo = demoState(at);
  const withdrawn = { byName: "A", at, reason: "another try" };
  const undecided = apply(demo, set("decision", "decision-1", { withdrawn }));
  const input = here(found, { seriesId: "series-2", sampleId: "sample-1" });
  expect(guideOf(undecided, input).next?.key).toBe("dose");
  const unweighed = apply(undecided, set("stock", "stock-1", { neatMassG: null }));
  expect(guideOf(unweighed, input).next?.aim.target).toBe("stock stock-1 neatMassG");
  const undosed = apply(undecided, set("jar", "jar-2-03", { syringeBMl: null }));
  expect(guideOf(undosed, input).next?.aim).toMatchObject({ jarId: "jar-2-03", column: "syringeB" });
  // the demo's neat pump moves polymer B of this series; A's has no pump yet
  const { next } = guideOf(approved(undecided, "series-2", 6, 3), input);
  expect([next?.key, next?.aim.target]).toEqual(["pump", "add pump"]);
  expect(next?.why).toContain("Coagulant C-40");
});

test("what is missing first on the way to a step follows the series asked about, and no approved dose waits for a curve", () => {
  const keyOf = (state: StudyState, until: StepKey, curves: CurvesSoFar, seriesId: string | null) =>
    firstMissing(wayOf(state, here(curves, { seriesId })), until, curves)?.key ?? null;
  expect(keyOf(emptyState(), "settings", none, null)).toBe("sample");
  expect(keyOf(sampled, "sample", none, null)).toBe("sample");
  expect(firstMissing(wayOf(sampled, here(none, { sampleId: "s1" })), "sample", none)).toBeNull();
  expect(firstMissing(wayOf(sampled, here(none, { sampleId: "s1" })), "stock", none)?.aim.target).toBe(
    "dish d1 tareG",
  );
  const demo = demoState(at);
  // The dose of one series is approved: the other's way is still its own.
  expect(keyOf(demo, "settings", found, "series-1")).toBeNull();
  expect(keyOf(demo, "settings", found, "series-2")).toBe("dose");
  const refused: CurvesSoFar = { word: "refused", sentence: "Too few doses." };
  expect(keyOf(demo, "curve", refused, "series-2")).toBe("curve");
  expect(keyOf(demo, "dose", refused, "series-2")).toBe("dose");
  expect(keyOf(demo, "dose", { word: "running", sentence: "" }, "series-2")).toBe("curve");
});
