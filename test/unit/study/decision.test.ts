import { expect, test } from "vitest";
import type { Command } from "../../../src/study/commands.ts";
import { describeChange } from "../../../src/study/describe.ts";
import { fittedChoice, targetsOf } from "../../../src/study/derive/choice.ts";
import { decisionChain, upstreamOf } from "../../../src/study/derive/decision.ts";
import { seriesChain } from "../../../src/study/derive/jars.ts";
import type { StudyState } from "../../../src/study/schema/records.ts";
import { apply, demoState } from "./state.ts";

const demo = demoState("2026-03-01T12:00:00.000Z");
const set = (
  kind: "study" | "jar" | "dish" | "series" | "reading" | "stock" | "product" | "sample",
  id: string,
  fields: object,
): Command => ({
  do: "set",
  kind,
  id,
  fields: fields as Record<string, unknown>,
});
const moved = (state: StudyState) => decisionChain(state, "series-1")!.moved;

test("what moved since an approval is said in the trade's words", () => {
  expect(moved(demo)).toBeNull();
  expect(moved(apply(demo, set("dish", "dish-1", { dryG: 47.6 })))).toBe(
    "dish 1 dry was 47.5336 g and is now 47.6 g",
  );
  const protocol = { ...demo.series["series-1"]!.protocol, fastRpm: 150 };
  expect(moved(apply(demo, set("series", "series-1", { protocol })))).toBe(
    "series E-42 alone protocol, fast was 200 rpm and is now 150 rpm",
  );
});

test("what carries no result moves nothing", () => {
  for (const change of [
    set("series", "series-1", { readings: ["cst"] }),
    set("stock", "stock-1", { targetActivePct: 0.3 }),
    set("jar", "jar-1-02", { note: "smells" }),
  ])
    expect(moved(apply(demo, change))).toBeNull();
});

test("a snapshot from before a field existed is not out of date for it", () => {
  const decision = demo.decision["decision-1"]!;
  const older = decision.snapshot
    .filter(({ key }) => !key.endsWith(" readings") && !key.endsWith(" targetActivePct"))
    .map((one) => {
      if (!one.key.endsWith(" protocol")) return one;
      const protocol = JSON.parse(String(one.value)) as Record<string, unknown>;
      delete protocol["pourHeightM"];
      delete protocol["pistonDiameterMm"];
      return { ...one, value: JSON.stringify(protocol) };
    });
  const state = { ...demo, decision: { "decision-1": { ...decision, snapshot: older } } };
  expect(moved(state)).toBeNull();
});

/** Every number that a pick of a dose rests on: doses with their spread, strengths, what was read, what a dose costs. */
function numbersOf(state: StudyState) {
  const chain = seriesChain(state, "series-1");
  const stock = chain.stockA!;
  const choice = fittedChoice(state, chain, [flatCurve], targetsOf(state, "series-1"))!;
  return {
    jars: chain.jars.map(({ doseA, suppliedA, addedMl, responses, capture }) => ({
      doseA,
      suppliedA,
      addedMl,
      responses,
      capture,
    })),
    uncertainty: chain.uncertaintyA,
    strength: [
      stock.active,
      stock.asSupplied,
      stock.parts,
      stock.usableFrom,
      stock.discardAfter,
      stock.warnings,
    ],
    solids: [chain.sample.totalSolids, chain.sample.density],
    tested: choice.tested,
    price: choice.cost.pricePerKgNeat,
    active: choice.cost.activePct,
  };
}
const flatCurve = {
  response: "turbidity_ntu",
  tested: { low: 2, high: 8 },
  mean: () => 50,
  low95: () => 40,
  high95: () => 60,
};

test("what is needed for the pump's rates alone leaves an approved dose standing, entered late, changed or taken away", () => {
  const fields = { densityKgPerL: 1.07, charge: "anionic", chargePct: 40 };
  const late = apply(demo, set("product", "product-1", { densityKgPerL: null, charge: null }));
  expect(moved(late)).toBeNull();
  for (const [field, value] of Object.entries(fields)) {
    const changed = apply(demo, set("product", "product-1", { [field]: value }));
    // Holds as long as it moves no number; should it ever come to move one, a decision rests on it again.
    expect(numbersOf(changed), field).toEqual(numbersOf(demo));
    expect(moved(changed), field).toBeNull();
  }
});

test("what of a product moves a number of the decision, and the sludge's own density, still make it out of date", () => {
  for (const [kind, id, fields, words] of [
    ["product", "product-1", { activePct: 41 }, "active was 42 % and is now 41 %"],
    ["product", "product-1", { activeLimitPct: 2 }, "was 1"],
    ["product", "product-1", { pricePerKgNeat: 4 }, "was 3.2"],
    ["product", "product-1", { form: "dispersion" }, "was emulsion and is now dispersion"],
    ["sample", "sample-1", { densityKgPerL: 1.02 }, "density was nothing and is now 1.02 kg/L"],
    ["stock", "stock-1", { solutionDensityKgPerL: 1.01 }, "was 1 kg/L and is now 1.01 kg/L"],
  ] as const) {
    const changed = apply(demo, set(kind, id, fields));
    expect(moved(changed), words).toContain(words);
  }
});

test("a snapshot from when a product's density and charge were kept with it is not out of date, whatever became of them", () => {
  const decision = demo.decision["decision-1"]!;
  const before = [
    { key: "product-1 densityKgPerL", name: "product E-42 density, neat", value: 1.03 },
    { key: "product-1 charge", name: "product E-42 charge", value: "cationic" },
  ];
  for (const { key } of before) expect(decision.snapshot.map((one) => one.key)).not.toContain(key);
  const older = {
    ...demo,
    decision: { "decision-1": { ...decision, snapshot: [...before, ...decision.snapshot] } },
  };
  expect(moved(older)).toBeNull();
  for (const fields of [
    { densityKgPerL: 1.05, charge: "anionic" },
    { densityKgPerL: null, charge: null },
  ])
    expect(moved(apply(older, set("product", "product-1", fields)))).toBeNull();
  // nor does it hide what moved beside it
  expect(moved(apply(older, set("product", "product-1", { activePct: 40, densityKgPerL: null })))).toContain(
    "active was 42 %",
  );
  // A sample may bear the very field's name: there it counts.
  const measured = apply(demo, set("sample", "sample-1", { densityKgPerL: 1.01 }));
  const kept = {
    ...measured,
    decision: { "decision-1": { ...decision, snapshot: upstreamOf(measured, "series-1") } },
  };
  expect(moved(kept)).toBeNull();
  expect(moved(apply(kept, set("sample", "sample-1", { densityKgPerL: null })))).toContain("is gone");
});

test("under a decimal comma no sentence about a study has a stray point", () => {
  const comma = apply(demo, set("study", "study", { decimalMark: "," }));
  const change = set("dish", "dish-1", { dryG: 47.6 });
  const sentence = moved(apply(comma, change))!;
  expect(sentence).toContain("47,6 g");
  expect(sentence).not.toMatch(/\d\.\d/);
  const told = {
    command: change,
    inverse: set("dish", "dish-1", { dryG: 47.5336 }),
    undoes: null,
    redoes: null,
  } as unknown as Parameters<typeof describeChange>[0];
  expect(describeChange(told, comma)).toMatch(/47,5336.*47,6/);
  expect(describeChange(told, demo)).toMatch(/47\.5336.*47\.6/);
});
