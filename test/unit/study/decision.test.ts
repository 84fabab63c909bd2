import { expect, test } from "vitest";
import type { Command } from "../../../src/study/commands.ts";
import { describeChange } from "../../../src/study/describe.ts";
import { decisionChain } from "../../../src/study/derive/decision.ts";
import type { StudyState } from "../../../src/study/schema/records.ts";
import { apply, demoState } from "./state.ts";

const demo = demoState("2026-03-01T12:00:00.000Z");
const set = (
  kind: "study" | "jar" | "dish" | "series" | "reading" | "stock",
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
