import { bad, type Outcome } from "../../outcome.ts";
import { seededRandom } from "../../curve/random.ts";
import { controlChart, type ControlChart } from "../../plant/control-chart.ts";
import { comparePairs, type PairedComparison } from "../../plant/paired.ts";
import { planStepTest, type StepTest } from "../../plant/step-test.ts";
import type { RecordOf, StudyState } from "../schema/records.ts";
import { plantChainWords } from "../../words/plant-chain.ts";
import { plantWatchWords } from "../../words/plant-watch.ts";
import type { RunChain } from "./plant-runs.ts";

/** What routine runs are watched by; `plantWatchWords.watched` says what each is called. Filtrate solids scatter in proportion, so their logarithm is watched. */
export const watched = {
  cake: { quantity: "percent", log: false, of: (chain: RunChain) => chain.run.cakePct },
  filtrate: {
    quantity: "mgPerL",
    log: true,
    of: (chain: RunChain) => chain.run.filtrateTssMgPerL,
  },
  dose: {
    quantity: "doseKgPerT",
    log: false,
    of: (chain: RunChain) => chain.polymers[0]?.dose.value ?? null,
  },
} as const;
export type Watched = keyof typeof watched;

export interface DriftChain {
  what: Watched;
  /** runs on the chart in order of time */
  runs: RunChain[];
  /** on the scale that is watched: the logarithm where `log` */
  chart: Outcome<ControlChart>;
  /** a plain reason to run the jars again, or "" */
  reason: string;
}

/** Routine runs on an individuals chart, with the reason to run jars again where the latest one signals. */
export function driftChain(runs: RunChain[], what: Watched): DriftChain {
  const { of, log } = watched[what];
  const words = plantWatchWords.watched[what];
  const used = runs
    .filter(({ run }) => run.kind === "routine" && !run.leftOut)
    .filter((chain) => of(chain) !== null);
  const values = used.map((chain) => (log ? Math.log(of(chain)!) : of(chain)!));
  const chart = controlChart(values);
  const latest = chart.ok ? chart.value.latest : null;
  const run = used.at(-1)?.run.label ?? "";
  const reason =
    latest === "above" || latest === "below"
      ? plantWatchWords.outside[latest](run, words)
      : latest === "run"
        ? plantWatchWords.oneSided(run, words)
        : "";
  return { what, runs: used, chart, reason };
}

/** Pairs of runs A and B with the same pair number, compared by one result. */
export function pairedChain(runs: RunChain[], what: Watched): Outcome<PairedComparison> {
  const { of } = watched[what];
  const sides = new Map<number, { a?: number; b?: number }>();
  for (const chain of runs) {
    const { pair, side, leftOut } = chain.run;
    const value = of(chain);
    if (pair === null || side === null || leftOut || value === null) continue;
    const entry = sides.get(pair) ?? {};
    if (side === "A") entry.a = value;
    else entry.b = value;
    sides.set(pair, entry);
  }
  const pairs = [...sides.values()].flatMap(({ a, b }) =>
    a === undefined || b === undefined ? [] : [{ a, b }],
  );
  if (pairs.length === 0) return bad(plantWatchWords.giveSides);
  return comparePairs(pairs);
}

/** What the machine was set to on each side of the pairs; "" where nobody said, or not the same in every pair. */
export function pairedSettings(runs: RunChain[]): { A: string; B: string } {
  const of = (wanted: "A" | "B") => {
    const said = new Set(
      runs
        .filter(({ run }) => run.pair !== null && run.side === wanted && !run.leftOut)
        .map(({ run }) => run.machineSettings),
    );
    const [only = ""] = said;
    return said.size === 1 ? only : "";
  };
  return { A: of("A"), B: of("B") };
}

/** The steps of a planned step test, or what is missing for it. */
export function stepTestChain(
  state: StudyState,
  test: RecordOf<"stepTest">,
  benchDoseKgPerT: number | null,
  factor: number | null,
  feedM3PerH: number | null,
): Outcome<StepTest> {
  const machine = test.machineId ? state.machine[test.machineId] : undefined;
  if (benchDoseKgPerT === null) return bad(plantChainWords.approveDose);
  if (!machine) return bad(plantWatchWords.pickMachine);
  if (machine.holdUpL === null) return bad(plantWatchWords.enterHoldUp);
  if (feedM3PerH === null) return bad(plantWatchWords.enterUsualFlow);
  return planStepTest(
    {
      benchDoseKgPerT,
      factor: factor ?? 1,
      stepPct: test.stepPct,
      levels: test.levels,
      order: test.order,
      holdUpL: machine.holdUpL,
      feedM3PerH,
    },
    seededRandom(test.seed),
  );
}
