import { expect, test } from "vitest";
import { sameQuestion, type Question } from "../../../renderer/worker/question.ts";
import { seriesChain, seriesChainInSteps } from "../../../src/study/derive/jars.ts";
import { analyseRows } from "../../../src/study/derive/points.ts";
import type { StudyState } from "../../../src/study/schema/records.ts";
import { gridCommand } from "../../bench/grid.ts";
import { apply, demoState } from "./state.ts";

const large = apply(demoState("2026-01-01T00:00:00Z"), gridCommand());
const seriesId = Object.keys(large.series).find(
  (id) => Object.values(large.jar).filter((jar) => jar.seriesId === id).length >= 400,
)!;
const questionOf = (state: StudyState): Question => {
  const { rows, labels } = analyseRows(seriesChain(state, seriesId));
  return { rows, labels: [...labels], mark: ".", system: "metric", name: "one" };
};

test("a series worked out in steps is the series worked out in one go, and what was worked out is not repeated", () => {
  const copy = { ...large };
  const steps = seriesChainInSteps(copy, seriesId);
  let pauses = 0;
  let step = steps.next();
  for (; !step.done; step = steps.next()) pauses += 1;
  expect(pauses).toBeGreaterThan(1);
  expect(step.value).toEqual(seriesChain({ ...large }, seriesId));
  expect(seriesChain(copy, seriesId)).toBe(step.value);
});

test("an edit that moves no number asks the fits nothing new; one that moves a number, a name or the units does", () => {
  const asked = questionOf(large);
  const jar = Object.values(large.jar).find((one) => one.seriesId === seriesId && one.role === "dose")!;
  const reading = Object.values(large.reading).find(
    (one) => one.jarId === jar.id && one.result.kind === "turbidity",
  )!;
  const set = (kind: "jar" | "reading", id: string, fields: Record<string, unknown>) =>
    questionOf(apply(large, { do: "set", kind, id, fields }));
  expect(sameQuestion(asked, questionOf({ ...large }))).toBe(true);
  expect(sameQuestion(asked, set("jar", jar.id, { note: "foam on top" }))).toBe(true);
  expect(sameQuestion(asked, set("jar", jar.id, { syringeAMl: 1.5 }))).toBe(false);
  expect(sameQuestion(asked, set("jar", jar.id, { label: "another name" }))).toBe(false);
  expect(
    sameQuestion(asked, set("reading", reading.id, { result: { ...reading.result, value: 1234 } })),
  ).toBe(false);
  expect(sameQuestion(asked, { ...asked, system: "us" })).toBe(false);
  expect(sameQuestion(asked, { ...asked, rows: asked.rows.slice(1) })).toBe(false);
});
