import { difference } from "../units/difference.ts";
import { z } from "zod";
import { bad, good, type Outcome } from "../outcome.ts";
import { syringeForDose, type JarBasis } from "./dose.ts";
import { jarPlanWords } from "../words/jar-plan.ts";

// Wide enough for any plant, narrow enough that no product of such numbers leaves what a double holds.
const amount = z.number().min(0).max(1e12);
const positive = z.number().gt(0).min(1e-12).max(1e12);
const secondSchema = z.strictObject({
  low: amount,
  high: positive,
  steps: z.int().min(2).max(50),
  solutionActivePct: positive.max(100),
});

/** What a trial plan is asked: low and high are the extreme doses really dosed, kg active per t dry solids. */
export const planInputSchema = z.strictObject({
  design: z.enum(["geometric", "bracketing", "fix-one", "factorial", "central-composite"]),
  low: amount,
  high: positive,
  steps: z.int().min(2).max(50),
  guess: positive.optional(),
  stepPct: positive.max(90).optional(),
  replicates: z.int().min(1).max(10),
  centres: z.int().min(0).max(20).optional(),
  noPolymer: z.int().min(0).max(10).optional(),
  standard: z.int().min(0).max(20).optional(),
  seed: z.int().min(0),
  sampleVolumeMl: positive,
  densityKgPerL: positive.max(3),
  totalSolidsPct: positive.max(100),
  solutionActivePct: positive.max(100),
  solutionDensityKgPerL: positive.max(3).optional(),
  second: secondSchema.optional(),
});
export type PlanInput = z.infer<typeof planInputSchema>;

export interface PlannedJar {
  order: number;
  label: string;
  role: "dose" | "no-polymer" | "standard" | "centre";
  doseAKgPerT: number;
  doseBKgPerT: number;
  syringeAMl: number;
  syringeBMl: number;
  blankWaterMl: number;
}

export interface Plan {
  jars: PlannedJar[];
  warnings: string[];
}

interface Pair {
  a: number;
  b: number;
}

const geometric = (low: number, high: number, steps: number) =>
  Array.from({ length: steps }, (_, i) => (i === steps - 1 ? high : low * (high / low) ** (i / (steps - 1))));
const even = (low: number, high: number, steps: number) =>
  Array.from({ length: steps }, (_, i) => low + ((high - low) * i) / (steps - 1));

/** The distinct doses of a design, and its centre. */
function dosesOf(input: PlanInput, warnings: string[]): Outcome<{ doses: Pair[]; centre: Pair | null }> {
  const { design, low, high, steps, second } = input;
  if (low >= high) return bad(jarPlanWords.lowHigh);
  if (second && second.low >= second.high) return bad(jarPlanWords.secondLowHigh);
  const needsSecond = design === "fix-one" || design === "factorial" || design === "central-composite";
  if (needsSecond && !second) return bad(jarPlanWords.secondMissing(design));
  if (!needsSecond && second) return bad(jarPlanWords.secondNotWanted(design));
  switch (design) {
    case "geometric":
      if (low <= 0) return bad(jarPlanWords.geometricLow);
      return good({ doses: geometric(low, high, steps).map((a) => ({ a, b: 0 })), centre: null });
    case "bracketing": {
      if (input.guess === undefined || input.stepPct === undefined) return bad(jarPlanWords.bracketingNeeds);
      const middle = (steps - 1) / 2;
      const wanted = Array.from(
        { length: steps },
        (_, i) => input.guess! * (1 + ((i - middle) * input.stepPct!) / 100),
      );
      const doses = wanted.filter((dose) => dose >= low - 1e-12 && dose <= high + 1e-12 && dose > 0);
      if (doses.length < wanted.length)
        warnings.push(jarPlanWords.stepsOutside(wanted.length - doses.length, wanted.length));
      return doses.length < 2
        ? bad(jarPlanWords.fewSteps)
        : good({ doses: doses.map((a) => ({ a, b: 0 })), centre: null });
    }
    case "fix-one": {
      const ladder =
        second!.low > 0
          ? geometric(second!.low, second!.high, second!.steps)
          : even(second!.low, second!.high, second!.steps);
      return good({
        doses: even(low, high, steps).flatMap((a) => ladder.map((b) => ({ a, b }))),
        centre: null,
      });
    }
    case "factorial": {
      const [as, bs] = [even(low, high, 3), even(second!.low, second!.high, 3)];
      if (steps !== 3 || second!.steps !== 3) warnings.push(jarPlanWords.threeLevels);
      return good({ doses: bs.flatMap((b) => as.map((a) => ({ a, b }))), centre: { a: as[1]!, b: bs[1]! } });
    }
    case "central-composite": {
      const centre = { a: (low + high) / 2, b: (second!.low + second!.high) / 2 };
      const reach = { a: (high - low) / 2, b: (second!.high - second!.low) / 2 };
      const corner = { a: reach.a / Math.SQRT2, b: reach.b / Math.SQRT2 };
      const signs = [-1, 1];
      return good({
        doses: [
          ...signs.flatMap((sb) =>
            signs.map((sa) => ({ a: centre.a + sa * corner.a, b: centre.b + sb * corner.b })),
          ),
          { a: low, b: centre.b },
          { a: high, b: centre.b },
          { a: centre.a, b: second!.low },
          { a: centre.a, b: second!.high },
        ],
        centre,
      });
    }
  }
}

const usualSyringeMl = 60;
const smallestShareOfSyringe = 1 / 6;
const jarsPerStandard = 6;

/**
 * A trial plan: doses of the design with their replicates, no-polymer, standard and centre jars in a seeded random
 * order (standards spread evenly through it, to show sludge ageing), syringe volumes, and blank water that brings every
 * jar to the largest total volume. `random` answers numbers in [0, 1); `number` writes those in the warnings.
 */
export function makePlan(
  input: PlanInput,
  random: () => number,
  number: (value: number) => string = (value) => String(Number(value.toPrecision(3))),
): Outcome<Plan> {
  const warnings: string[] = [];
  const design = dosesOf(input, warnings);
  if (!design.ok) return design;
  const { doses, centre } = design.value;
  const centres = centre ? (input.centres ?? (input.design === "factorial" ? 2 : 4)) : 0;
  const dosed = [
    ...doses.flatMap((pair) =>
      Array.from({ length: input.replicates }, () => ({ role: "dose" as const, pair })),
    ),
    ...Array.from({ length: centres }, () => ({ role: "centre" as const, pair: centre! })),
  ];
  const shuffled = [
    ...dosed,
    ...Array.from({ length: input.noPolymer ?? 1 }, () => ({
      role: "no-polymer" as const,
      pair: { a: 0, b: 0 },
    })),
  ];
  for (let i = shuffled.length - 1; i > 0; i--) {
    const j = Math.floor(random() * (i + 1));
    [shuffled[i], shuffled[j]] = [shuffled[j]!, shuffled[i]!];
  }
  const standards = input.standard ?? Math.ceil(dosed.length / jarsPerStandard);
  const reference = centre ?? standardDose(input, doses);
  const running: { role: PlannedJar["role"]; pair: Pair }[] = [...shuffled];
  for (let k = 0; k < standards; k++) {
    const place = Math.round(((k + 0.5) * shuffled.length) / standards) + k;
    running.splice(Math.min(place, running.length), 0, { role: "standard", pair: reference });
  }

  const basis = (solutionActivePct: number): JarBasis => ({
    sampleVolumeMl: input.sampleVolumeMl,
    sampleDensityKgPerL: input.densityKgPerL,
    totalSolidsPct: input.totalSolidsPct,
    solutionActivePct,
    solutionDensityKgPerL: input.solutionDensityKgPerL ?? 1,
  });
  const volumes: { a: number; b: number }[] = [];
  for (const { pair } of running) {
    const a = syringeForDose(pair.a, basis(input.solutionActivePct));
    if (!a.ok) return a;
    const b = input.second ? syringeForDose(pair.b, basis(input.second.solutionActivePct)) : good(0);
    if (!b.ok) return b;
    volumes.push({ a: a.value, b: b.value });
  }
  const largest = Math.max(...volumes.map(({ a, b }) => a + b));
  warnings.push(...volumeWarnings(volumes, largest, input.sampleVolumeMl, number));
  return good({
    jars: running.map(({ role, pair }, i) => ({
      order: i + 1,
      label: String(i + 1),
      role,
      doseAKgPerT: pair.a,
      doseBKgPerT: pair.b,
      syringeAMl: volumes[i]!.a,
      syringeBMl: volumes[i]!.b,
      blankWaterMl: difference(largest, volumes[i]!.a + volumes[i]!.b),
    })),
    warnings,
  });
}

function standardDose(input: PlanInput, doses: Pair[]): Pair {
  if (input.guess !== undefined && input.guess >= input.low && input.guess <= input.high && !input.second)
    return { a: input.guess, b: 0 };
  return doses[Math.floor(doses.length / 2)]!;
}

function volumeWarnings(
  volumes: Pair[],
  largest: number,
  sampleMl: number,
  number: (value: number) => string,
): string[] {
  const warnings: string[] = [];
  for (const letter of ["a", "b"] as const) {
    const used = volumes.map((one) => one[letter]).filter((volume) => volume > 0);
    if (used.length === 0) continue;
    const least = Math.min(...used);
    if (least < usualSyringeMl * smallestShareOfSyringe)
      warnings.push(jarPlanWords.smallVolume(letter.toUpperCase(), number(least), usualSyringeMl));
  }
  if (largest > 0.5 * sampleMl) warnings.push(jarPlanWords.largeVolume(number(largest)));
  if (largest > 0.1 * sampleMl) warnings.push(jarPlanWords.muchAdded(number(largest), sampleMl));
  return warnings;
}
