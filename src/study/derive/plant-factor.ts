import { bad, type Outcome } from "../../outcome.ts";
import { sourceOf } from "../../methods/methods.ts";
import { benchFactor, type BenchFactor } from "../../plant/bench-factor.ts";
import { numberWords } from "./number-words.ts";
import { factorChainWords } from "../../words/factor-chain.ts";
import type { RecordOf, StudyState } from "../schema/records.ts";
import { figure, missingFigure, type Figure, type Made } from "./figure.ts";
import { runChain } from "./plant-runs.ts";

/** What a factor belongs to: it is never carried to another machine, sludge or product. */
export interface FactorKey {
  machineId: string;
  streamId: string;
  /** the product the jars were dosed with */
  productId: string;
}

export interface FactorTrialChain {
  run: RecordOf<"plantRun">;
  plantDoseKgPerT: number;
  benchDoseKgPerT: number;
  ratio: number;
}

export interface FactorChain {
  key: FactorKey;
  /** machine, sludge and product in words */
  title: string;
  trials: FactorTrialChain[];
  /** runs marked as settled whose factor could not be had, with what is missing */
  lacking: { run: RecordOf<"plantRun">; missing: string }[];
  factor: Outcome<BenchFactor>;
  figure: Figure;
}

/** The bench-to-plant factor of one machine, sludge and product from the runs marked as where the plant settled. */
export function factorChain(state: StudyState, key: FactorKey): FactorChain {
  const trials: FactorTrialChain[] = [];
  const lacking: FactorChain["lacking"] = [];
  const runs = Object.values(state.plantRun)
    .filter(
      (run) =>
        run.best && !run.leftOut && run.machineId === key.machineId && streamOf(state, run) === key.streamId,
    )
    .sort((a, b) => (a.id < b.id ? -1 : 1));
  for (const run of runs) {
    const polymer = runChain(state, run.id).polymers.find(
      ({ makeDown }) => makeDown.benchProductId === key.productId,
    );
    if (!polymer) continue;
    const { dose, benchDoseKgPerT } = polymer;
    if (dose.value === null) lacking.push({ run, missing: dose.missing ?? factorChainWords.needsDose });
    else if (benchDoseKgPerT === null) lacking.push({ run, missing: factorChainWords.noBenchDose });
    else if (!(dose.value > 0 && benchDoseKgPerT > 0))
      lacking.push({ run, missing: factorChainWords.zeroDose });
    else
      trials.push({
        run,
        plantDoseKgPerT: dose.value,
        benchDoseKgPerT,
        ratio: dose.value / benchDoseKgPerT,
      });
  }
  const number = numberWords(state);
  const factor: Outcome<BenchFactor> =
    trials.length === 0 ? bad(factorChainWords.noRun) : benchFactor(trials);
  const made: Made = {
    formula: factorChainWords.formula,
    inputs: trials.map(({ run, plantDoseKgPerT, benchDoseKgPerT }) => ({
      name: run.label,
      value: factorChainWords.doses(number(plantDoseKgPerT, 4), number(benchDoseKgPerT, 4)),
      unit: "kg/t",
    })),
    source: sourceOf("factor"),
  };
  return {
    key,
    title: [
      state.machine[key.machineId]?.label,
      state.stream[key.streamId]?.label,
      state.product[key.productId]?.label,
    ]
      .filter((one) => one !== undefined)
      .join(", "),
    trials,
    lacking,
    factor,
    figure: factor.ok
      ? figure("ratio", factor.value.factor, made, { low: factor.value.low, high: factor.value.high })
      : missingFigure("ratio", factor.message, made),
  };
}

function streamOf(state: StudyState, run: RecordOf<"plantRun">): string | undefined {
  const series = state.series[run.seriesId];
  return series ? state.sample[series.sampleId]?.streamId : undefined;
}

/** Every factor that the logged runs of a sludge could make, one for each machine and product. */
export function factorsOf(state: StudyState, streamId: string): FactorChain[] {
  const keys = new Map<string, FactorKey>();
  for (const run of Object.values(state.plantRun)) {
    if (run.machineId === null || streamOf(state, run) !== streamId) continue;
    for (const one of Object.values(state.runDose)) {
      const productId = one.runId === run.id ? state.makeDown[one.makeDownId]?.benchProductId : undefined;
      if (productId)
        keys.set(`${run.machineId} ${productId}`, { machineId: run.machineId, streamId, productId });
    }
  }
  return [...keys.values()].map((key) => factorChain(state, key));
}
