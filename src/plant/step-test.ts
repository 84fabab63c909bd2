import { bad, good, type Outcome } from "../outcome.ts";
import { plantFormulaWords } from "../words/plant-formulas.ts";

export interface StepTestInput {
  benchDoseKgPerT: number;
  /** bench-to-plant factor around which the steps lie; 1 where none is known */
  factor: number;
  /** distance between neighbouring steps, percent of the middle */
  stepPct: number;
  /** odd, so that the middle is one of them */
  levels: number;
  order: "random" | "down-then-up";
  /** machine and pipe behind the injection point, L */
  holdUpL: number;
  feedM3PerH: number;
}

export interface TestStep {
  order: number;
  doseKgPerT: number;
  /** on the way back up: tells whether the answer depends on where one comes from */
  repeat: boolean;
}

export interface StepTest {
  steps: TestStep[];
  residenceMin: number;
  /** at least three residence times before samples are taken */
  waitMin: number;
}

const residenceTimes = 3;

/**
 * A plan of polymer steps at fixed feed and machine: levels around factor x bench dose, in random order or down and
 * then up again. `random` is only asked for the random order. Waiting three residence times: common practice, no source.
 */
export function planStepTest(input: StepTestInput, random: () => number): Outcome<StepTest> {
  const { levels, stepPct } = input;
  if (!Number.isInteger(levels) || levels < 3 || levels % 2 === 0)
    return bad(plantFormulaWords.runs.oddLevels);
  const reach = ((levels - 1) / 2) * (stepPct / 100);
  if (!(stepPct > 0) || reach >= 1) return bad(plantFormulaWords.runs.stepsToZero);
  const middle = input.benchDoseKgPerT * input.factor;
  const doses = Array.from(
    { length: levels },
    (_, i) => middle * (1 + ((i - (levels - 1) / 2) * stepPct) / 100),
  );
  const sequence =
    input.order === "random"
      ? shuffled(doses, random).map((dose) => ({ dose, repeat: false }))
      : [
          ...[...doses].reverse().map((dose) => ({ dose, repeat: false })),
          ...doses.slice(1).map((dose) => ({ dose, repeat: true })),
        ];
  const residenceMin = (input.holdUpL / 1000 / input.feedM3PerH) * 60;
  return good({
    steps: sequence.map(({ dose, repeat }, i) => ({ order: i + 1, doseKgPerT: dose, repeat })),
    residenceMin,
    waitMin: residenceTimes * residenceMin,
  });
}

function shuffled(values: number[], random: () => number): number[] {
  const list = [...values];
  for (let i = list.length - 1; i > 0; i--) {
    const j = Math.floor(random() * (i + 1));
    [list[i], list[j]] = [list[j]!, list[i]!];
  }
  return list;
}
