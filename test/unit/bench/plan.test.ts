import { expect, test } from "vitest";
import { makePlan, type PlanInput } from "../../../src/bench/plan.ts";
import { seededRandom } from "../../../src/curve/random.ts";

const input: PlanInput = {
  design: "geometric",
  low: 2,
  high: 8,
  steps: 5,
  replicates: 2,
  seed: 4,
  sampleVolumeMl: 500,
  densityKgPerL: 1.003,
  totalSolidsPct: 2.5,
  solutionActivePct: 0.2,
};
const planned = (change: Partial<PlanInput>) => {
  const plan = makePlan({ ...input, ...change }, seededRandom(input.seed));
  if (!plan.ok) throw new Error(plan.message);
  return plan.value;
};

test("a geometric ladder in duplicate: roles, replicates, volumes, and one total volume", () => {
  const { jars } = planned({});
  const of = (role: string) => jars.filter((jar) => jar.role === role);
  expect(of("dose")).toHaveLength(10);
  expect(of("no-polymer")).toHaveLength(1);
  expect(of("standard")).toHaveLength(2);
  expect([...new Set(of("dose").map((jar) => jar.doseAKgPerT))].sort((a, b) => a - b).at(-1)).toBe(8);
  for (const jar of jars) expect(jar.syringeAMl + jar.syringeBMl + jar.blankWaterMl).toBeCloseTo(50.15, 8);
  // worked 1.1 of the trade table: 50.15 mL for 8 kg/t
  expect(jars.find((jar) => jar.doseAKgPerT === 8)!.syringeAMl).toBeCloseTo(50.15, 8);
  expect(jars.map((jar) => jar.order)).toEqual(jars.map((_, i) => i + 1));
  expect(planned({}).jars).toEqual(jars);
});

test("a central composite keeps to the extreme doses, its corners at 1 / sqrt 2", () => {
  const { jars } = planned({
    design: "central-composite",
    low: 3,
    high: 9,
    replicates: 1,
    second: { low: 2, high: 4, steps: 3, solutionActivePct: 0.2 },
  });
  const dosed = jars.filter((jar) => jar.role === "dose");
  expect(dosed).toHaveLength(8);
  expect(jars.filter((jar) => jar.role === "centre")).toHaveLength(4);
  expect(Math.min(...dosed.map((jar) => jar.doseAKgPerT))).toBe(3);
  expect(Math.max(...dosed.map((jar) => jar.doseBKgPerT))).toBe(4);
  expect(dosed.some((jar) => Math.abs(jar.doseAKgPerT - (6 - 3 / Math.SQRT2)) < 1e-12)).toBe(true);
});

test("bracketing, factorial and what cannot be planned", () => {
  expect(
    planned({ design: "bracketing", guess: 5, stepPct: 15, steps: 5 })
      .jars.filter((jar) => jar.role === "dose")
      .map((jar) => jar.doseAKgPerT)
      .sort(),
  ).toEqual([3.5, 3.5, 4.25, 4.25, 5, 5, 5.75, 5.75, 6.5, 6.5]);
  const factorial = planned({
    design: "factorial",
    replicates: 1,
    steps: 3,
    second: { low: 2, high: 4, steps: 3, solutionActivePct: 0.2 },
  });
  expect(factorial.jars.filter((jar) => jar.role === "dose")).toHaveLength(9);
  expect(factorial.jars.filter((jar) => jar.role === "centre")).toHaveLength(2);
  for (const change of [
    { low: 9 },
    { design: "factorial" as const },
    { design: "bracketing" as const },
    { low: 0 },
  ])
    expect(makePlan({ ...input, ...change }, seededRandom(1)).ok).toBe(false);
});

test("warnings: too little in the syringe, more than 10 % of water", () => {
  expect(planned({ low: 0.5 }).warnings.join(" ")).toMatch(/too small to be accurate/);
  expect(planned({ high: 9 }).warnings.join(" ")).toMatch(/more than 10 %/);
  expect(planned({ low: 2, high: 7 }).warnings).toEqual([]);
});
