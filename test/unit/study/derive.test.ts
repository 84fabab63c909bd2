import { describe, expect, test } from "vitest";
import { responseSpecs } from "../../../src/responses/registry.ts";
import { analyseJars } from "../../../src/curve/analyse.ts";
import { applyCommand, type Command } from "../../../src/study/commands.ts";
import { demoCommands } from "../../../src/study/demo.ts";
import { choiceChain } from "../../../src/study/derive/choice.ts";
import { decisionChain } from "../../../src/study/derive/decision.ts";
import { seriesChain } from "../../../src/study/derive/jars.ts";
import { plantChain } from "../../../src/study/derive/plant.ts";
import { analyseRows } from "../../../src/study/derive/points.ts";
import { sampleChain } from "../../../src/study/derive/sample.ts";
import { stockChain, stockClock } from "../../../src/study/derive/stock.ts";
import { stripNumbers } from "./strip-words.ts";
import { stripSegments } from "../../../src/study/derive/strip.ts";
import { emptyState, type StudyState } from "../../../src/study/schema/records.ts";

const apply = (state: StudyState, command: Command) => {
  const applied = applyCommand(state, command);
  if (!applied.ok) throw new Error(applied.message);
  return applied.value.state;
};
const at = "2026-03-01T12:00:00Z";
const demo = demoCommands(at).reduce(apply, emptyState());
const words = { name: "demo", responses: responseSpecs, number: String, jar: String };

test("the demo tells the whole story: every response of its first series has a verdict or a reason in words", () => {
  const { rows } = analyseRows(seriesChain(demo, "series-1"));
  // thirteen jars, one of them with its turbidity read twice
  expect(rows).toHaveLength(14);
  const analysed = analyseJars(rows, words);
  if (!analysed.ok) throw new Error(analysed.message);
  expect(analysed.value.analysis.axis).toBe("a");
  expect(analysed.value.analysis.responses.map((one) => one.name)).toEqual([
    "turbidity_ntu",
    "filtrate_tss_mg_per_l",
    "cst_s",
    "cake_ts_pct",
    "drained_ml",
  ]);
  expect(analysed.value.analysis.responses[0]!.verdict.kind).toBe("optimum");
  const choice = choiceChain(demo, seriesChain(demo, "series-1"), analysed.value.workings, String)!;
  expect(choice.window.kind).toBe("window");
  for (const rule of choice.rules)
    if (rule.dose !== null)
      expect(rule.dose >= choice.tested.low - 1e-9 && rule.dose <= choice.tested.high + 1e-9).toBe(true);
  const cheapest = choice.rules.find((rule) => rule.rule === "cheapest-in-limits")!;
  for (const bar of choice.bars) {
    const curve = choice.curves.find((one) => one.response === bar.limit.response)!;
    const bound =
      bar.limit.side === "at-most"
        ? curve.high95(cheapest.dose!) - bar.limit.value
        : bar.limit.value - curve.low95(cheapest.dose!);
    expect(bound, bar.limit.words).toBeLessThanOrEqual(1e-9);
  }
});

describe("an edit upstream is seen downstream at once, and named", () => {
  test("a dish moves solids, doses, the decision's state and the strip", () => {
    const before = seriesChain(demo, "series-1").jars[4]!.doseA.value!;
    const state = apply(demo, { do: "set", kind: "dish", id: "dish-1", fields: { dryG: 47.7 } });
    expect(seriesChain(state, "series-1").jars[4]!.doseA.value).toBeLessThan(before);
    expect(decisionChain(demo, "series-1")).toMatchObject({ word: "approved", moved: null });
    const decision = decisionChain(state, "series-1")!;
    expect(decision.word).toBe("out of date");
    expect(decision.moved).toMatch(/dish 1 dry was 47\.5336 g and is now 47\.7/);
    const segments = stripSegments({
      state,
      sampleId: "sample-1",
      seriesId: "series-1",
      analysis: null,
      running: false,
      changes: 1,
      words: stripNumbers,
    });
    expect(segments.find(({ room }) => room === "plant")!.word).toBe("out of date");
  });
  test("a note or a name moves nothing", () => {
    const state = apply(demo, {
      do: "set",
      kind: "sample",
      id: "sample-1",
      fields: { note: "smelt of eggs", label: "Sample one" },
    });
    expect(decisionChain(state, "series-1")!.moved).toBeNull();
  });
});

test("provisional solids stand in until the dishes are dry, and say so", () => {
  let state = demo;
  for (const id of ["dish-1", "dish-2", "dish-3"])
    state = apply(state, { do: "set", kind: "dish", id, fields: { dryG: null, ashG: null } });
  const sample = sampleChain(state, "sample-1");
  expect(sample.stage).toBe("provisional");
  expect(sample.totalSolids.value).toBe(2.5);
  expect(sample.densityNote).toMatch(/assumed/);
  state = apply(state, {
    do: "set",
    kind: "sample",
    id: "sample-1",
    fields: { provisionalTotalSolidsPct: null },
  });
  expect(sampleChain(state, "sample-1")).toMatchObject({ stage: "missing", totalSolids: { value: null } });
  expect(seriesChain(state, "series-1").jars[3]!.doseA).toMatchObject({
    value: null,
    missing: expect.stringMatching(/total solids/) as string,
  });
  expect(JSON.stringify(seriesChain(state, "series-1"))).not.toMatch(/NaN|Infinity/);
});

test("stock solutions: strength both ways and the clock", () => {
  const chain = stockChain(demo, "stock-1");
  expect(chain.active.value).toBeCloseTo(0.200004, 6);
  expect(chain.asSupplied.value).toBeCloseTo(0.4762, 6);
  const mixed = Date.parse(chain.stock.mixStartedAt!);
  const later = (minutes: number) => new Date(mixed + minutes * 60_000).toISOString();
  expect(stockClock(chain, later(10)).words).toMatch(/ageing, usable in 20 min/);
  expect(stockClock(chain, later(60)).tone).toBe("good");
  expect(stockClock(chain, later(60 * 9)).tone).toBe("bad");
});

test("shared error cancels by provenance: another lot at the plant keeps the active share's", () => {
  const same = seriesChain(demo, "series-1").uncertaintyA!;
  expect(same.sharedLeft).toBeLessThan(same.shared);
  const other = apply(demo, {
    do: "set",
    kind: "makeDown",
    id: "makedown-1",
    fields: { productId: "product-2" },
  });
  expect(seriesChain(other, "series-1").uncertaintyA!.sharedLeft).toBeGreaterThan(same.sharedLeft);
  const measured = apply(demo, {
    do: "set",
    kind: "feedCase",
    id: "feed-2",
    fields: { totalSolidsPct: 2.6 },
  });
  expect(seriesChain(measured, "series-1").uncertaintyA!.sharedLeft).toBeGreaterThan(same.sharedLeft);
});

test("the plant's rates follow the dose, and out of range is said, not extrapolated", () => {
  const chain = plantChain(demo, "series-1", { a: 5.2, b: null });
  const usual = chain.cases.find(({ feedCase }) => feedCase.size === "usual")!;
  expect(usual.polymers[0]!.setting).toMatchObject({ status: "ok" });
  const high = plantChain(demo, "series-1", { a: 9, b: null }).cases.find(
    ({ feedCase }) => feedCase.size === "usual",
  )!;
  expect(high.polymers[0]!.setting).toEqual({ status: "above", pct: null, low: null, high: null });
  expect(plantChain(demo, "series-1", null).missing).toMatch(/approve a dose/);
  const blind = apply(demo, { do: "set", kind: "product", id: "product-1", fields: { activePct: null } });
  expect(plantChain(blind, "series-1", { a: 5, b: null }).missing).toMatch(/enter the active share/);
});
