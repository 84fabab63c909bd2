import { expect, test } from "vitest";
import { planFault } from "../../../renderer/rooms/bench/plan-words.ts";

const fields = [
  { name: "low", label: "Lowest dose" },
  { name: "high", label: "Highest dose" },
  { name: "steps", label: "Steps" },
  { name: "replicates", label: "Jars for each dose" },
];
const fine = { low: 2, high: 8, steps: 6, replicates: 2 };

test.each([
  [{}, null],
  [{ low: null }, "Enter this first: lowest dose."],
  [{ low: 9 }, "Lowest dose must be below the highest: lower the one or raise the other."],
  [{ low: -1 }, "Lowest dose must not be negative."],
  [{ low: 0 }, "Lowest dose must be above 0: a jar without polymer is added apart."],
  [{ steps: 2.5 }, "Steps must be a whole number from 2 to 50."],
  [{ steps: 1e9 }, "Steps must be a whole number from 2 to 50."],
  [{ replicates: 0 }, "Jars for each dose must be a whole number from 1 to 10."],
])("a ladder with %o says %s", (change, sentence) => {
  expect(planFault("geometric", { ...fine, ...change }, fields)).toBe(sentence);
});

test("both polymers are looked at, and a bracket may begin at 0", () => {
  const two = [
    ...fields,
    { name: "lowB", label: "Lowest dose B" },
    { name: "highB", label: "Highest dose B" },
  ];
  expect(planFault("fix-one", { ...fine, lowB: 4, highB: 4 }, two)).toMatch(/^Lowest dose B must be below/);
  expect(planFault("bracketing", { ...fine, low: 0 }, fields)).toBeNull();
});
