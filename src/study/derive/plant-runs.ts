import { capturePct } from "../../bench/capture.ts";
import { sourceOf } from "../../methods/methods.ts";
import { bad, good, type Outcome } from "../../outcome.ts";
import { flowAt } from "../../plant/pump-line.ts";
import { drySolidsKgPerH } from "../../plant/rates.ts";
import {
  activeOfStream,
  doseOfRate,
  reconcile,
  type DoseWay,
  type Reconciled,
  type WayDose,
} from "../../plant/run-dose.ts";
import { feedChainWords } from "../../words/feed-chain.ts";
import { jarChainWords } from "../../words/jar-chain.ts";
import { plantDoseWords } from "../../words/plant-dose.ts";
import { plantInputWords } from "../../words/plant-inputs.ts";
import { plantRunWords } from "../../words/plant-runs.ts";
import { numberWords } from "./number-words.ts";
import type { RecordOf, StudyState } from "../schema/records.ts";
import { figure, missingFigure, type Figure, type Made, type MadeInput } from "./figure.ts";
import { pumpChain } from "./plant-pump.ts";
import { sampleChain } from "./sample.ts";

type Run = RecordOf<"plantRun">;
type RunDose = RecordOf<"runDose">;

export interface RunPolymer {
  runDose: RunDose;
  makeDown: RecordOf<"makeDown">;
  benchProduct: RecordOf<"product">;
  reconciled: Outcome<Reconciled>;
  /** the dose that counts, active */
  dose: Figure;
  /** what every way rests on, beside what was measured for it */
  basis: MadeInput[];
  /** the active polymer by each way that could be had */
  actives: { way: DoseWay; input: MadeInput }[];
  /** ways that could not be had, each with what is missing */
  lacking: { way: DoseWay; missing: string }[];
  /** the bench dose it is held against, kg/t; null without a decision or where the polymer is not in its series */
  benchDoseKgPerT: number | null;
}

export interface RunChain {
  run: Run;
  load: Figure;
  polymers: RunPolymer[];
  capture: Figure;
  warnings: string[];
}

/** A plant run with its load, its doses by every way that was logged, and its capture. The run must exist. */
export function runChain(state: StudyState, runId: string): RunChain {
  const run = state.plantRun[runId]!;
  const series = state.series[run.seriesId]!;
  const sample = sampleChain(state, series.sampleId);
  const density = run.densityKgPerL ?? sample.density.value;
  const loadMade: Made = {
    formula: plantRunWords.loadFormula,
    inputs: [
      { name: plantInputWords.feedFlow, value: run.feedM3PerH, unit: "m³/h" },
      { name: plantRunWords.totalSolidsOfRun, value: run.totalSolidsPct, unit: "%" },
      {
        name: run.densityKgPerL === null ? feedChainWords.densityOfSample : plantRunWords.densityOfRun,
        value: density,
        unit: "kg/L",
      },
    ],
    source: sourceOf("rates"),
  };
  const lacks =
    run.feedM3PerH === null
      ? plantRunWords.enterFeedFlow
      : run.totalSolidsPct === null
        ? plantRunWords.enterTotalSolids
        : density === null
          ? feedChainWords.enterDensity
          : null;
  const load = lacks
    ? missingFigure("kgPerH", lacks, loadMade)
    : figure("kgPerH", drySolidsKgPerH(run.feedM3PerH!, density!, run.totalSolidsPct!), loadMade);
  const polymers = Object.values(state.runDose)
    .filter((one) => one.runId === runId)
    .sort((a, b) => (a.id < b.id ? -1 : 1))
    .map((one) => runPolymer(state, run, one, load));
  const capture = captureOf(run, polymers, load, density);
  const warnings = polymers.flatMap(({ reconciled, benchProduct }) =>
    reconciled.ok && reconciled.value.agrees === false
      ? [plantRunWords.waysDiffer(benchProduct.label, numberWords(state)(reconciled.value.spreadPct!))]
      : [],
  );
  return { run, load, polymers, capture, warnings };
}

function runPolymer(state: StudyState, run: Run, runDose: RunDose, load: Figure): RunPolymer {
  const makeDown = state.makeDown[runDose.makeDownId]!;
  const product = state.product[makeDown.productId]!;
  const chain = runDose.pumpId ? pumpChain(state, runDose.pumpId) : null;
  const neat = chain?.pump.stream !== "solution";
  const densityKgPerL = neat ? product.densityKgPerL : makeDown.solutionDensityKgPerL;
  const activePct = neat ? product.activePct : makeDown.solutionActivePct;
  const basis: MadeInput[] = [
    { name: plantInputWords.load, value: load.value, unit: "kg/h" },
    { name: neat ? plantInputWords.activeShare : plantInputWords.strength, value: activePct, unit: "%" },
    { name: plantDoseWords.flowDensity, value: densityKgPerL, unit: "kg/L" },
  ];
  const byFlow = (flow: number): Outcome<number> => {
    if (activePct === null) return bad(neat ? plantRunWords.enterActiveShare : plantDoseWords.enterStrength);
    const weighed = chain?.pump.measuredIn === "g";
    if (!weighed && densityKgPerL === null) return bad(plantDoseWords.enterFlowDensity);
    return good(activeOfStream(flow, weighed ? 1 : densityKgPerL!, activePct));
  };
  const rates: Record<DoseWay, () => Outcome<number>> = {
    "draw-down": () => {
      if (!chain) return bad(plantRunWords.pickPump);
      if (runDose.caught === null || runDose.caughtS === null) return bad(plantRunWords.enterCaught);
      return byFlow((runDose.caught / runDose.caughtS) * 60);
    },
    container: () => {
      if (runDose.containerLossKg === null || runDose.containerHours === null)
        return bad(plantRunWords.enterContainer);
      if (product.activePct === null) return bad(plantRunWords.enterActiveShare);
      return good((runDose.containerLossKg / runDose.containerHours) * (product.activePct / 100));
    },
    "pump-line": () => {
      if (!chain) return bad(plantRunWords.pickPump);
      if (runDose.setting === null) return bad(plantRunWords.enterSetting);
      if (!chain.line.ok) return bad(`${chain.pump.label}: ${chain.line.message}`);
      const { tested } = chain.line.value;
      if (runDose.setting < tested.low || runDose.setting > tested.high)
        return bad(plantRunWords.outsideProven);
      return byFlow(flowAt(chain.line.value, runDose.setting).flow);
    },
  };
  const ways: WayDose[] = [];
  const actives: RunPolymer["actives"] = [];
  const lacking: RunPolymer["lacking"] = [];
  for (const way of Object.keys(rates) as DoseWay[]) {
    const rate = rates[way]();
    if (!rate.ok) lacking.push({ way, missing: rate.message });
    else {
      const name = plantRunWords.activeBy(plantRunWords.ways[way]);
      actives.push({ way, input: { name, value: rate.value, unit: "kg/h" } });
      const dose = load.value === null ? bad(load.missing ?? "") : doseOfRate(rate.value, load.value);
      if (dose.ok) ways.push({ way, doseKgPerT: dose.value });
    }
  }
  const reconciled = load.value === null ? bad(load.missing ?? plantDoseWords.enterFeed) : reconcile(ways);
  const made: Made = {
    formula: plantRunWords.doseFormula,
    inputs: [...basis, ...actives.map(({ input }) => input)],
    source: sourceOf("runDose"),
  };
  return {
    runDose,
    makeDown,
    benchProduct: state.product[makeDown.benchProductId]!,
    reconciled,
    dose: reconciled.ok
      ? figure("doseKgPerT", reconciled.value.doseKgPerT, made)
      : missingFigure("doseKgPerT", reconciled.message, made),
    basis,
    actives,
    lacking,
    benchDoseKgPerT: benchDoseOf(state, run, makeDown.benchProductId),
  };
}

function benchDoseOf(state: StudyState, run: Run, benchProductId: string): number | null {
  const decision = run.decisionId ? state.decision[run.decisionId] : undefined;
  const series = decision ? state.series[decision.seriesId] : undefined;
  if (!decision || !series) return null;
  const productOf = (stockId: string | null) => (stockId ? state.stock[stockId]?.productId : undefined);
  if (productOf(series.stockAId) === benchProductId) return decision.doseAKgPerT;
  if (productOf(series.stockBId) === benchProductId) return decision.doseBKgPerT;
  return null;
}

function captureOf(run: Run, polymers: RunPolymer[], load: Figure, density: number | null): Figure {
  // Liquid that joined between feed and filtrate: every solution as it reaches the sludge, and the wash water.
  const solutions = polymers.map(({ dose, makeDown }) => {
    const strength = makeDown.carrierActivePct ?? makeDown.solutionActivePct;
    return dose.value === null || load.value === null || strength === null
      ? null
      : (dose.value * load.value) / 1000 / (strength / 100);
  });
  const feedKgPerH = run.feedM3PerH === null || density === null ? null : run.feedM3PerH * 1000 * density;
  const added =
    polymers.length === 0 || solutions.some((one) => one === null) || run.washM3PerH === null
      ? null
      : solutions.reduce<number>((sum, one) => sum + (one ?? 0), 0) + run.washM3PerH * 1000;
  const dilution = added === null || feedKgPerH === null ? null : added / feedKgPerH;
  const made: Made = {
    formula: jarChainWords.captureFormula,
    inputs: [
      { name: jarChainWords.feedTss, value: run.feedSuspendedPct, unit: "%" },
      { name: jarChainWords.cakeTs, value: run.cakePct, unit: "%" },
      { name: jarChainWords.filtrateTss, value: run.filtrateTssMgPerL, unit: "mg/L" },
      { name: plantRunWords.washWater, value: run.washM3PerH, unit: "m³/h" },
      { name: plantRunWords.addedLiquid, value: dilution, unit: "" },
    ],
    source: sourceOf("capture"),
  };
  const lack = (words: string) => missingFigure("percent", words, made);
  if (run.cakePct === null) return lack(plantRunWords.enterCake);
  if (run.filtrateTssMgPerL === null) return lack(plantRunWords.enterFiltrate);
  if (run.feedSuspendedPct === null) return lack(jarChainWords.mixedBasis);
  if (run.washM3PerH === null) return lack(plantRunWords.enterWash);
  if (dilution === null) return lack(plantRunWords.needsDoses);
  const capture = capturePct({
    feedPct: run.feedSuspendedPct,
    cakePct: run.cakePct,
    filtratePct: run.filtrateTssMgPerL / 10_000,
    dilution,
  });
  return capture.ok ? figure("percent", capture.value, made) : lack(capture.message);
}

/** The runs of a series in order of time (then of entry), left-out ones too. */
export function runsOf(state: StudyState, seriesId: string): RunChain[] {
  return Object.values(state.plantRun)
    .filter((run) => run.seriesId === seriesId)
    .sort((a, b) => {
      const left = `${a.at ?? "9"} ${a.id}`;
      const right = `${b.at ?? "9"} ${b.id}`;
      return left < right ? -1 : left > right ? 1 : 0;
    })
    .map((run) => runChain(state, run.id));
}
