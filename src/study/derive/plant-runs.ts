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
import { numberWords } from "./number-words.ts";
import type { RecordOf, StudyState } from "../schema/records.ts";
import { figure, missingFigure, type Figure, type Made, type MadeInput } from "./figure.ts";
import { pumpChain } from "./plant-pump.ts";
import { sampleChain } from "./sample.ts";

type Run = RecordOf<"plantRun">;
type RunDose = RecordOf<"runDose">;

export const wayWords: Record<DoseWay, string> = {
  "draw-down": "draw-down",
  container: "container's loss of mass",
  "pump-line": "pump line at the setting",
};

export interface RunPolymer {
  runDose: RunDose;
  makeDown: RecordOf<"makeDown">;
  benchProduct: RecordOf<"product">;
  reconciled: Outcome<Reconciled>;
  /** the dose that counts, active */
  dose: Figure;
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
    formula: "flow x 1000 x density x TS",
    inputs: [
      { name: "feed flow", value: run.feedM3PerH, unit: "m³/h" },
      { name: "total solids, of the run", value: run.totalSolidsPct, unit: "%" },
      {
        name: run.densityKgPerL === null ? "density, of the sample" : "density, of the run",
        value: density,
        unit: "kg/L",
      },
    ],
    source: sourceOf("rates"),
  };
  const lacks =
    run.feedM3PerH === null
      ? "enter the run's feed flow"
      : run.totalSolidsPct === null
        ? "enter the run's total solids"
        : density === null
          ? "enter the feed's density"
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
      ? [
          `${benchProduct.label}: the ways of knowing the dose differ by ${numberWords(state)(reconciled.value.spreadPct!)} %, more than 5 %: find the wrong measurement before changing the dose.`,
        ]
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
  const inputs: MadeInput[] = [
    { name: "dry-solids load", value: load.value, unit: "kg/h" },
    { name: neat ? "active share" : "solution strength", value: activePct, unit: "%" },
    { name: "density of what flows", value: densityKgPerL, unit: "kg/L" },
  ];
  const byFlow = (flow: number): Outcome<number> => {
    if (activePct === null)
      return bad(neat ? "enter the active share of the product" : "enter the solution's strength");
    const weighed = chain?.pump.measuredIn === "g";
    if (!weighed && densityKgPerL === null) return bad("enter the density of what the pump moves");
    return good(activeOfStream(flow, weighed ? 1 : densityKgPerL!, activePct));
  };
  const rates: Record<DoseWay, () => Outcome<number>> = {
    "draw-down": () => {
      if (!chain) return bad("pick the pump");
      if (runDose.caught === null || runDose.caughtS === null)
        return bad("enter what was caught and the seconds");
      return byFlow((runDose.caught / runDose.caughtS) * 60);
    },
    container: () => {
      if (runDose.containerLossKg === null || runDose.containerHours === null)
        return bad("enter the container's loss of mass and the hours");
      if (product.activePct === null) return bad("enter the active share of the product");
      return good((runDose.containerLossKg / runDose.containerHours) * (product.activePct / 100));
    },
    "pump-line": () => {
      if (!chain) return bad("pick the pump");
      if (runDose.setting === null) return bad("enter the pump's setting");
      if (!chain.line.ok) return bad(`${chain.pump.label}: ${chain.line.message}`);
      const { tested } = chain.line.value;
      if (runDose.setting < tested.low || runDose.setting > tested.high)
        return bad("the setting lies outside those proven by draw-down");
      return byFlow(flowAt(chain.line.value, runDose.setting).flow);
    },
  };
  const ways: WayDose[] = [];
  const lacking: RunPolymer["lacking"] = [];
  for (const way of Object.keys(rates) as DoseWay[]) {
    const rate = rates[way]();
    if (!rate.ok) lacking.push({ way, missing: rate.message });
    else {
      inputs.push({ name: `active by ${wayWords[way]}`, value: rate.value, unit: "kg/h" });
      const dose = load.value === null ? bad(load.missing ?? "") : doseOfRate(rate.value, load.value);
      if (dose.ok) ways.push({ way, doseKgPerT: dose.value });
    }
  }
  const reconciled = load.value === null ? bad(load.missing ?? "enter the feed") : reconcile(ways);
  const made: Made = {
    formula:
      "1000 x active / load; a draw-down counts before the container, the container before the pump line",
    inputs,
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
    formula:
      "C (F - (1 + d) E) / (F (C - E)), solids of feed F, cake C, filtrate E, added liquid d over feed",
    inputs: [
      { name: "feed TSS", value: run.feedSuspendedPct, unit: "%" },
      { name: "cake TS", value: run.cakePct, unit: "%" },
      { name: "filtrate TSS", value: run.filtrateTssMgPerL, unit: "mg/L" },
      { name: "wash water", value: run.washM3PerH, unit: "m³/h" },
      { name: "added liquid over feed, by mass", value: dilution, unit: "" },
    ],
    source: sourceOf("capture"),
  };
  const lack = (words: string) => missingFigure("percent", words, made);
  if (run.cakePct === null) return lack("enter the cake's solids");
  if (run.filtrateTssMgPerL === null) return lack("enter the filtrate's suspended solids");
  if (run.feedSuspendedPct === null)
    return lack("mixed basis: enter the feed's suspended solids, TS includes what is dissolved");
  if (run.washM3PerH === null) return lack("enter the wash water (0 for none)");
  if (dilution === null) return lack("needs the doses of this run");
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
