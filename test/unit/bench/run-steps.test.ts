import { expect, test } from "vitest";
import { cakePerFiltrateKgPerM3, flocStrength } from "../../../src/bench/measurements.ts";
import { openStep, runSteps, stepAfter, type RunStep } from "../../../src/bench/run-steps.ts";
import { usualDoses } from "../../../src/bench/usual-doses.ts";
import { strengthSlip } from "../../../src/product/make-down.ts";

const protocol = {
  fastRpm: 200,
  fastS: 15,
  betweenS: 60,
  slowRpm: 60,
  slowS: 45,
  pours: null,
  drainS: 10,
};
const jar = {
  sampleMl: 500,
  blankWaterMl: 0,
  protocol,
  readings: [
    { reading: "drained", fields: ["ml"] },
    { reading: "turbidity", fields: ["value"] },
    { reading: "cake-dish", fields: ["tareG", "wetG"] },
  ],
};
const words = (steps: RunStep[]) =>
  steps.map((step) =>
    step.kind === "inject"
      ? `inject ${step.letter}`
      : step.kind === "mix"
        ? `${step.pace} ${step.seconds}`
        : step.kind === "read"
          ? `${step.reading} ${step.field}`
          : step.kind,
  );

test("one polymer, two in sequence, none: the steps in their order", () => {
  expect(words(runSteps({ ...jar, polymers: ["A"] }))).toEqual([
    "measure",
    "inject A",
    "fast 15",
    "slow 45",
    "drain",
    "turbidity value",
    "cake-dish tareG",
    "cake-dish wetG",
  ]);
  expect(words(runSteps({ ...jar, polymers: ["A", "B"] })).slice(0, 6)).toEqual([
    "measure",
    "inject A",
    "between 60",
    "inject B",
    "fast 15",
    "slow 45",
  ]);
  expect(words(runSteps({ ...jar, polymers: [] })).slice(0, 2)).toEqual(["measure", "fast 15"]);
  const poured = runSteps({
    ...jar,
    polymers: ["A"],
    protocol: { ...protocol, fastS: null, slowS: null, pours: 10 },
  });
  expect(words(poured).slice(1, 4)).toEqual(["inject A", "pour", "drain"]);
});

test("a jar goes on at its first empty reading once something was read, and ends where nothing is left", () => {
  const steps = runSteps({ ...jar, polymers: ["A"] });
  const done = (names: string[]) => (step: RunStep) => names.includes(words([step])[0]!);
  expect(openStep(steps, done([]))).toBe(0);
  expect(openStep(steps, done(["measure", "inject A"]))).toBe(2);
  expect(openStep(steps, done(["turbidity value"]))).toBe(4);
  expect(openStep(steps, done(["drain", "turbidity value", "cake-dish tareG", "cake-dish wetG"]))).toBeNull();
  expect(stepAfter(steps, 1, done(["fast 15"]))).toBe(3);
  expect(stepAfter(steps, 7, done([]))).toBeNull();
});

test("neat weighed as active, and the share divided out twice (trade table, section 1.1: 0.2 % of product is 0.084 % active)", () => {
  expect(strengthSlip(0.2 * 0.42, 0.2, 42)).toBe("neat-as-active");
  expect(strengthSlip(0.2 / 0.42, 0.2, 42)).toBe("divided-twice");
  expect(strengthSlip(0.204, 0.2, 42)).toBeNull();
  expect(strengthSlip(0.15, 0.2, 42)).toBe("off");
  expect(strengthSlip(0.18, 0.2, 90)).toBe("off");
});

test("cake per filtrate, floc strength, usual doses", () => {
  // 1 / (1/25 - 1/200) = 28.571
  const cake = cakePerFiltrateKgPerM3(25, 200);
  expect(cake.ok && cake.value).toBeCloseTo(28.5714, 4);
  expect(cakePerFiltrateKgPerM3(25, 20).ok).toBe(false);
  expect(flocStrength(4, 2, 3)).toEqual({ strength: 0.5, recovery: 0.5 });
  expect(flocStrength(4, 4, 3).recovery).toBeNull();
  expect(usualDoses("excess")).toMatchObject({ low: 3, high: 15, source: "common practice, no source" });
  expect(usualDoses("mixed")!.source).toContain("from memory");
  expect(usualDoses(null)).toBeNull();
  expect(usualDoses("constructor")).toBeNull();
});
