import { bad, good, type Outcome } from "../../outcome.ts";
import {
  drySolidsKgPerH,
  plantRates,
  type PolymerRates,
  type Rates,
  type RatesInput,
} from "../../plant/rates.ts";
import {
  checkPump,
  fitPumpLine,
  settingFor,
  type Draw,
  type PumpCheck,
  type PumpLine,
  type PumpSetting,
} from "../../plant/pump-line.ts";
import type { RecordOf, StudyState } from "../schema/records.ts";
import { figure, missingFigure, type Figure, type Made } from "./figure.ts";
import { sampleChain, type SampleChain } from "./sample.ts";

type FeedCase = RecordOf<"feedCase">;
type Product = RecordOf<"product">;

export interface PumpChain {
  pump: RecordOf<"pump">;
  draws: RecordOf<"drawDown">[];
  line: Outcome<PumpLine>;
  check: Outcome<PumpCheck>;
}

/** One polymer of the decision on its way to the plant. */
export interface PlantPolymer {
  letter: "a" | "b";
  doseKgPerT: number;
  benchProduct: Product;
  /** the lot that stands at the plant; null until a make-down is entered */
  product: Product | null;
  makeDown: RecordOf<"makeDown"> | null;
  pump: PumpChain | null;
}

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

/** A pump with its draw-downs and line. */
export function pumpChain(state: StudyState, pumpId: string): PumpChain {
  const pump = state.pump[pumpId]!;
  const draws = Object.values(state.drawDown)
    .filter((draw) => draw.pumpId === pumpId)
    .sort((a, b) => a.setting - b.setting || (a.id < b.id ? -1 : 1));
  const flows: Draw[] = draws
    .filter((draw) => !draw.leftOut)
    .map((draw) => ({ setting: draw.setting, flow: (draw.amount / draw.seconds) * 60 }));
  return {
    pump,
    draws,
    line: flows.length === 0 ? bad("no draw-down yet") : fitPumpLine(flows),
    check: flows.length === 0 ? bad("no draw-down yet") : checkPump(flows),
  };
}

/** The polymers that a decision (or a dose looked at) brings to the plant, in order of injection. */
function polymersOf(
  state: StudyState,
  series: RecordOf<"series">,
  dose: { a: number; b: number | null },
): PlantPolymer[] {
  const parts = [
    { letter: "a" as const, stockId: series.stockAId, doseKgPerT: dose.a },
    { letter: "b" as const, stockId: series.stockBId, doseKgPerT: dose.b ?? 0 },
  ];
  return parts.flatMap(({ letter, stockId, doseKgPerT }) => {
    const stock = stockId ? state.stock[stockId] : undefined;
    const benchProduct = stock ? state.product[stock.productId] : undefined;
    if (!benchProduct) return [];
    const makeDown =
      Object.values(state.makeDown).find((one) => one.benchProductId === benchProduct.id) ?? null;
    const pump = makeDown
      ? Object.values(state.pump).find((one) => one.makeDownId === makeDown.id)
      : undefined;
    return [
      {
        letter,
        doseKgPerT,
        benchProduct,
        product: makeDown ? (state.product[makeDown.productId] ?? null) : null,
        makeDown,
        pump: pump ? pumpChain(state, pump.id) : null,
      },
    ];
  });
}

function missingFor(polymer: PlantPolymer): string | null {
  const letter = polymer.letter.toUpperCase();
  const { product, makeDown } = polymer;
  if (!makeDown || !product)
    return `polymer ${letter}: say how ${polymer.benchProduct.label} is made down at the plant`;
  if (product.activePct === null) return `polymer ${letter}: enter the active share of ${product.label}`;
  if (product.form !== "dry" && product.densityKgPerL === null)
    return `polymer ${letter}: enter the density of ${product.label}`;
  if (makeDown.solutionActivePct === null)
    return `polymer ${letter}: enter the strength of the plant's solution`;
  if (makeDown.solutionDensityKgPerL === null)
    return `polymer ${letter}: enter the density of the plant's solution`;
  return null;
}

function ratesInput(
  feed: FeedCase,
  ts: number,
  density: number,
  polymers: PlantPolymer[],
  targets: RecordOf<"targets"> | null,
  expected: { cakePct: number | null; capturePct: number | null },
): RatesInput {
  return {
    feed: {
      flowM3PerH: feed.flowM3PerH!,
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
      ? "approve a dose in the Dose room first"
      : polymers.length === 0
        ? "pick the series' stock solutions first"
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
  const ts = feedCase.totalSolidsPct ?? sample?.totalSolids.value ?? null;
  const density = feedCase.densityKgPerL ?? sample?.density.value ?? null;
  const made: Made = {
    formula: "flow x 1000 x density x TS",
    inputs: [
      { name: "feed flow", value: feedCase.flowM3PerH, unit: "m³/h" },
      {
        name: feedCase.totalSolidsPct === null ? "total solids, of the sample" : "total solids, of the feed",
        value: ts,
        unit: "%",
      },
      {
        name: feedCase.densityKgPerL === null ? "density, of the sample" : "density, of the feed",
        value: density,
        unit: "kg/L",
      },
    ],
    source: "trade formulas, section 7",
  };
  const words =
    feedCase.flowM3PerH === null
      ? "enter the feed flow"
      : ts === null
        ? "enter the feed's total solids"
        : density === null
          ? "enter the feed's density"
          : null;
  const load = words
    ? missingFigure("kgPerH", words, made)
    : loadFigure(drySolidsKgPerH(feedCase.flowM3PerH!, density!, ts!), ts!, feedCase, sample, made);
  const blocked =
    words ??
    missing ??
    (feedCase.hoursPerDay === null || feedCase.daysPerYear === null
      ? "enter the running hours and days"
      : null);
  if (blocked)
    return { feedCase, totalSolidsPct: ts, densityKgPerL: density, load, rates: bad(blocked), polymers: [] };
  const rates = plantRates(ratesInput(feedCase, ts!, density!, polymers, targets, expected));
  return {
    feedCase,
    totalSolidsPct: ts,
    densityKgPerL: density,
    load,
    rates,
    polymers: rates.ok
      ? polymers.map((polymer, i) => casePolymer(polymer, rates.value.polymers[i]!, load))
      : [],
  };
}

function loadFigure(
  value: number,
  ts: number,
  feedCase: FeedCase,
  sample: SampleChain | null,
  made: Made,
): Figure {
  const standard =
    feedCase.totalSolidsPct === null
      ? (sample?.totalSolidsStandard ?? null)
      : (feedCase.totalSolidsUncertaintyPct ?? null);
  return figure("kgPerH", value, made, { spread: standard === null ? null : 2 * (standard / ts) * value });
}

function casePolymer(polymer: PlantPolymer, rates: PolymerRates, load: Figure): CasePolymer {
  const product = polymer.product!;
  const base = [
    { name: "dry-solids load", value: load.value, unit: "kg/h" },
    { name: "dose, active", value: polymer.doseKgPerT, unit: "kg/t" },
    { name: `active share of ${product.label}`, value: product.activePct, unit: "%" },
  ];
  const source = "trade formulas, section 7";
  const dry = product.form === "dry";
  const neatMade: Made = {
    formula: dry ? "load x dose / active share" : "load x dose / active share / density",
    inputs: dry ? base : [...base, { name: "density, neat", value: product.densityKgPerL, unit: "kg/L" }],
    source,
  };
  const solutionMade: Made = {
    formula: "load x dose / solution strength / solution density",
    inputs: [
      ...base.slice(0, 2),
      { name: "solution strength, active", value: polymer.makeDown!.solutionActivePct, unit: "%" },
      { name: "solution density", value: polymer.makeDown!.solutionDensityKgPerL, unit: "kg/L" },
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
  if (!line) return bad("no pump");
  if (!line.ok) return line;
  if (base.pumpFlow === null) return bad("no flow");
  return good(settingFor(line.value, (base.pumpFlow * loadKgPerH) / baseLoadKgPerH));
}
