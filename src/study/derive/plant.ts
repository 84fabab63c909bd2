import { bad, good, type Outcome } from "../../outcome.ts";
import { sourceOf } from "../../methods/methods.ts";
import { plantRates, type PolymerRates, type Rates, type RatesInput } from "../../plant/rates.ts";
import { settingFor, type PumpSetting } from "../../plant/pump-line.ts";
import { plantChainWords } from "../../words/plant-chain.ts";
import { plantInputWords } from "../../words/plant-inputs.ts";
import type { RecordOf, StudyState } from "../schema/records.ts";
import { figure, type Figure, type Made } from "./figure.ts";
import { feedChain, type FeedChain } from "./plant-feed.ts";
import { missingFor, polymersOf, type PlantPolymer } from "./plant-polymer.ts";
import { sampleChain, type SampleChain } from "./sample.ts";

export { pumpChain, type PumpChain } from "./plant-pump.ts";
export type { PlantPolymer } from "./plant-polymer.ts";

type FeedCase = RecordOf<"feedCase">;

export interface CasePolymer {
  polymer: PlantPolymer;
  rates: PolymerRates;
  neat: Figure;
  solution: Figure;
  setting: PumpSetting | null;
  /** flow that the pump has to give, in mL/min (or g/min on a balance) */
  pumpFlow: number | null;
}

export interface CaseChain {
  feedCase: FeedCase;
  feed: FeedChain;
  flowM3PerH: number | null;
  totalSolidsPct: number | null;
  densityKgPerL: number | null;
  load: Figure;
  rates: Outcome<Rates>;
  polymers: CasePolymer[];
}

export interface PlantChain {
  polymers: PlantPolymer[];
  cases: CaseChain[];
  /** what stands in the way before any rate can be had, in words */
  missing: string | null;
}

function ratesInput(
  feed: FeedCase,
  flowM3PerH: number,
  ts: number,
  density: number,
  polymers: PlantPolymer[],
  targets: RecordOf<"targets"> | null,
  expected: { cakePct: number | null; capturePct: number | null },
): RatesInput {
  return {
    feed: {
      flowM3PerH,
      totalSolidsPct: ts,
      densityKgPerL: density,
      hoursPerDay: feed.hoursPerDay!,
      daysPerYear: feed.daysPerYear!,
    },
    polymers: polymers.map(({ doseKgPerT, product, makeDown }) => ({
      form: product!.form,
      doseKgPerT,
      activePct: product!.activePct!,
      ...(product!.densityKgPerL === null ? {} : { densityKgPerL: product!.densityKgPerL }),
      solutionActivePct: makeDown!.solutionActivePct!,
      solutionDensityKgPerL: makeDown!.solutionDensityKgPerL!,
      ...(makeDown!.carrierActivePct === null ? {} : { carrierActivePct: makeDown!.carrierActivePct }),
      ...(product!.pricePerKgNeat === null ? {} : { pricePerKgNeat: product!.pricePerKgNeat }),
      ...(makeDown!.batchL === null ? {} : { batchL: makeDown!.batchL }),
      ...(makeDown!.ageingMin === null ? {} : { ageingMin: makeDown!.ageingMin }),
    })),
    ...(expected.capturePct === null ? {} : { capturePct: expected.capturePct }),
    ...(expected.cakePct === null ? {} : { cakeTsPct: expected.cakePct }),
    ...(targets?.disposalPerWetT == null ? {} : { disposalPerWetT: targets.disposalPerWetT }),
    ...(targets?.returnPerT == null ? {} : { returnPerT: targets.returnPerT }),
  };
}

/** Everything right of the dose: loads, rates and pump settings for each feed case. */
export function plantChain(
  state: StudyState,
  seriesId: string,
  dose: { a: number; b: number | null } | null,
  expected: { cakePct: number | null; capturePct: number | null } = { cakePct: null, capturePct: null },
): PlantChain {
  const series = state.series[seriesId];
  const order = { least: 0, usual: 1, most: 2 } as const;
  const feedCases = Object.values(state.feedCase).sort(
    (a, b) => order[a.size] - order[b.size] || (a.id < b.id ? -1 : 1),
  );
  const sample = series ? sampleChain(state, series.sampleId) : null;
  const polymers = series && dose ? polymersOf(state, series, dose) : [];
  const missing =
    !series || !dose
      ? plantChainWords.approveDose
      : polymers.length === 0
        ? plantChainWords.pickStocks
        : (polymers.map(missingFor).find((words) => words !== null) ?? null);
  const targets = Object.values(state.targets).find((one) => one.seriesId === seriesId) ?? null;
  return {
    polymers,
    missing,
    cases: feedCases.map((feedCase) => caseChain(feedCase, sample, polymers, missing, targets, expected)),
  };
}

function caseChain(
  feedCase: FeedCase,
  sample: SampleChain | null,
  polymers: PlantPolymer[],
  missing: string | null,
  targets: RecordOf<"targets"> | null,
  expected: { cakePct: number | null; capturePct: number | null },
): CaseChain {
  const feed = feedChain(feedCase, sample);
  const { flowM3PerH, totalSolidsPct, densityKgPerL, load } = feed;
  const start = { feedCase, feed, flowM3PerH, totalSolidsPct, densityKgPerL, load };
  const blocked =
    feed.missing ??
    missing ??
    (feedCase.hoursPerDay === null || feedCase.daysPerYear === null ? plantChainWords.enterHours : null);
  if (blocked) return { ...start, rates: bad(blocked), polymers: [] };
  const rates = plantRates(
    ratesInput(feedCase, flowM3PerH!, totalSolidsPct!, densityKgPerL!, polymers, targets, expected),
  );
  return {
    ...start,
    rates,
    polymers: rates.ok
      ? polymers.map((polymer, i) => casePolymer(polymer, rates.value.polymers[i]!, load))
      : [],
  };
}

function casePolymer(polymer: PlantPolymer, rates: PolymerRates, load: Figure): CasePolymer {
  const product = polymer.product!;
  const base = [
    { name: plantInputWords.load, value: load.value, unit: "kg/h" },
    { name: plantInputWords.dose, value: polymer.doseKgPerT, unit: "kg/t" },
    { name: plantInputWords.activeShareOf(product.label), value: product.activePct, unit: "%" },
  ];
  const source = sourceOf("rates");
  const dry = product.form === "dry";
  const neatMade: Made = {
    formula: dry ? plantChainWords.neatByMass : plantChainWords.neatByVolume,
    inputs: dry
      ? base
      : [...base, { name: plantChainWords.neatDensity, value: product.densityKgPerL, unit: "kg/L" }],
    source,
  };
  const solutionMade: Made = {
    formula: plantChainWords.solutionFormula,
    inputs: [
      ...base.slice(0, 2),
      { name: plantChainWords.solutionStrength, value: polymer.makeDown!.solutionActivePct, unit: "%" },
      { name: plantChainWords.solutionDensity, value: polymer.makeDown!.solutionDensityKgPerL, unit: "kg/L" },
    ],
    source,
  };
  const pumpFlow = pumpFlowOf(polymer, rates);
  const line = polymer.pump?.line;
  return {
    polymer,
    rates,
    neat:
      rates.neatMlPerMin === null
        ? figure("flowGPerMin", rates.neatGPerMin, neatMade)
        : figure("flowMlPerMin", rates.neatMlPerMin, neatMade),
    solution: figure("flowLPerH", rates.solutionLPerH, solutionMade),
    setting: line?.ok && pumpFlow !== null ? settingFor(line.value, pumpFlow) : null,
    pumpFlow,
  };
}

function pumpFlowOf(polymer: PlantPolymer, rates: PolymerRates): number | null {
  const pump = polymer.pump?.pump;
  if (!pump) return null;
  const solutionMl = (rates.solutionLPerH * 1000) / 60;
  if (pump.measuredIn === "g")
    return pump.stream === "neat" ? rates.neatGPerMin : solutionMl * polymer.makeDown!.solutionDensityKgPerL!;
  return pump.stream === "neat" ? rates.neatMlPerMin : solutionMl;
}

/** The setting a pump needs for one polymer at another feed flow and solids, everything else as in a case. */
export function settingAt(
  base: CasePolymer,
  baseLoadKgPerH: number,
  loadKgPerH: number,
): Outcome<PumpSetting> {
  const line = base.polymer.pump?.line;
  if (!line) return bad(plantChainWords.noPump);
  if (!line.ok) return line;
  if (base.pumpFlow === null) return bad(plantChainWords.noFlow);
  return good(settingFor(line.value, (base.pumpFlow * loadKgPerH) / baseLoadKgPerH));
}
