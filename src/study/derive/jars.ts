import { capturePct } from "../../bench/capture.ts";
import { benchSourceOf } from "../../methods/bench-source.ts";
import { doseFromSyringe, type JarBasis } from "../../bench/dose.ts";
import type { DoseUncertainty } from "../../bench/dose-uncertainty.ts";
import { asSuppliedDose } from "../../product/make-down.ts";
import { cakeTs } from "../../responses/cake-ts.ts";
import { filtrateTss } from "../../responses/filtrate-tss.ts";
import { counts, responseOf } from "../../responses/registry.ts";
import { jarChainWords } from "../../words/jar-chain.ts";
import type { RecordOf, StudyState } from "../schema/records.ts";
import { figure, missingFigure, type Figure, type Made } from "./figure.ts";
import { toTheEnd } from "../../steps.ts";
import { middleUncertainty, surestDoseSpread } from "./jar-uncertainty.ts";
import { byNumberedName, memo, memoOfState } from "./memo.ts";
import { sampleChain, type SampleChain } from "./sample.ts";
import { stockChain, type StockChain } from "./stock.ts";
import { childrenOf } from "../tables.ts";

export type Reading = RecordOf<"reading">;

/** One response of a jar as read: every reading that counts, on the natural scale. */
export interface ResponseReading {
  readingId: string;
  value: number;
  censored: "above" | "below" | null;
}

export interface JarChain {
  jar: RecordOf<"jar">;
  doseA: Figure;
  doseB: Figure;
  suppliedA: Figure;
  suppliedB: Figure;
  /** polymer solution and blank water added, mL; null where a syringe volume is missing */
  addedMl: number | null;
  /** readings of the jar by kind, in the order they were taken; left-out ones last */
  readings: Reading[];
  responses: Partial<Record<string, ResponseReading[]>>;
  capture: Figure;
}

export interface SeriesChain {
  series: RecordOf<"series">;
  sample: SampleChain;
  stockA: StockChain | null;
  stockB: StockChain | null;
  jars: JarChain[];
  uncertaintyA: DoseUncertainty | null;
  /** see `surestDoseSpread` */
  surestSpread: { A: number | null; B: number | null };
}

function doseFigure(
  syringeMl: number | null,
  stock: StockChain | null,
  letter: string,
  series: RecordOf<"series">,
  jar: RecordOf<"jar">,
  sample: SampleChain,
): Figure {
  const volume = jar.sampleVolumeMl ?? series.sampleVolumeMl;
  const made: Made = {
    formula: jarChainWords.doseFormula,
    inputs: [
      { name: jarChainWords.syringe(letter), value: syringeMl, unit: "mL" },
      { name: jarChainWords.strength, value: stock?.active.value ?? null, unit: "%", derived: true },
      {
        name: jarChainWords.solutionDensity,
        value: stock?.stock.solutionDensityKgPerL ?? null,
        unit: "kg/L",
      },
      { name: jarChainWords.sampleVolume, value: volume, unit: "mL" },
      { name: jarChainWords.sludgeDensity, value: sample.density.value, unit: "kg/L" },
      {
        name:
          sample.stage === "provisional" ? jarChainWords.totalSolidsProvisional : jarChainWords.totalSolids,
        value: sample.totalSolids.value,
        unit: "%",
      },
    ],
    source: benchSourceOf("dose"),
  };
  const lack = (words: string) => missingFigure("doseKgPerT", words, made);
  if (syringeMl === null) return lack(jarChainWords.enterVolume(letter));
  if (syringeMl === 0) return figure("doseKgPerT", 0, made);
  if (!stock) return lack(jarChainWords.pickStock(letter));
  if (stock.active.value === null)
    return lack(jarChainWords.lacksStrength(stock.stock.label, stock.active.missing ?? ""));
  if (stock.stock.solutionDensityKgPerL === null)
    return lack(jarChainWords.enterStockDensity(stock.stock.label));
  if (volume === null) return lack(jarChainWords.enterSampleVolume);
  if (sample.totalSolids.value === null)
    return lack(jarChainWords.lacksTotalSolids(sample.totalSolids.missing ?? ""));
  if (sample.density.value === null) return lack(jarChainWords.lacksDensity(sample.density.missing ?? ""));
  const basis: JarBasis = {
    sampleVolumeMl: volume,
    sampleDensityKgPerL: sample.density.value,
    totalSolidsPct: sample.totalSolids.value,
    solutionActivePct: stock.active.value,
    solutionDensityKgPerL: stock.stock.solutionDensityKgPerL,
  };
  const dose = doseFromSyringe(syringeMl, basis);
  return dose.ok ? figure("doseKgPerT", dose.value, made) : lack(dose.message);
}

function suppliedFigure(dose: Figure, stock: StockChain | null): Figure {
  const activePct = stock?.product.activePct ?? null;
  const made: Made = {
    formula: jarChainWords.suppliedFormula,
    inputs: [
      { name: jarChainWords.activeDose, value: dose.value, unit: "kg/t" },
      { name: jarChainWords.activeShare, value: activePct, unit: "%" },
    ],
    source: benchSourceOf("dose"),
  };
  if (dose.value === null) return missingFigure("asSuppliedKgPerT", dose.missing ?? "", made);
  if (dose.value === 0) return figure("asSuppliedKgPerT", 0, made);
  if (activePct === null) return missingFigure("asSuppliedKgPerT", jarChainWords.enterActiveShare, made);
  return figure("asSuppliedKgPerT", asSuppliedDose(dose.value, activePct), made);
}

/** The mean of a jar's readings of one response; null where there is none, or one is known only as a bound. */
export function meanReading(values: ResponseReading[] | undefined): number | null {
  const read = (values ?? []).filter((value) => value.censored === null);
  if (read.length === 0 || read.length !== values?.length) return null;
  return read.reduce((sum, { value }) => sum + value, 0) / read.length;
}

function captureFigure(
  jar: Omit<JarChain, "capture">,
  series: RecordOf<"series">,
  sample: SampleChain,
  feed: RecordOf<"sample">,
): Figure {
  const tss = meanReading(jar.responses[filtrateTss.name]);
  const cake = meanReading(jar.responses[cakeTs.name]);
  const volume = jar.jar.sampleVolumeMl ?? series.sampleVolumeMl;
  const density = sample.density.value;
  const dilution =
    jar.addedMl === null || volume === null || density === null ? null : jar.addedMl / (volume * density);
  const made: Made = {
    formula: jarChainWords.captureFormula,
    inputs: [
      { name: jarChainWords.feedTss, value: feed.suspendedSolidsPct, unit: "%" },
      { name: jarChainWords.filtrateTss, value: tss, unit: "mg/L" },
      { name: jarChainWords.cakeTs, value: cake, unit: "%" },
      { name: jarChainWords.addedLiquid, value: dilution, unit: "" },
    ],
    source: benchSourceOf("capture"),
  };
  const lack = (words: string) => missingFigure("percent", words, made);
  if (tss === null) return lack(jarChainWords.needsFiltrateTss);
  if (cake === null) return lack(jarChainWords.needsCakeTs);
  if (feed.suspendedSolidsPct === null) return lack(jarChainWords.mixedBasis);
  if (dilution === null) return lack(jarChainWords.needsVolumes);
  const capture = capturePct({
    feedPct: feed.suspendedSolidsPct,
    cakePct: cake,
    filtratePct: tss / 10_000,
    dilution,
  });
  return capture.ok ? figure("percent", capture.value, made) : lack(capture.message);
}

/** A whole series from its sample and stocks to every jar's dose and results. The series must exist. */
export function seriesChain(state: StudyState, seriesId: string): SeriesChain {
  return toTheEnd(seriesChainInSteps(state, seriesId));
}

/** The same in steps, so that a series of thousands of jars need not be worked out in one go. */
export function* seriesChainInSteps(state: StudyState, seriesId: string): Generator<number, SeriesChain> {
  const known = chains.get(state, seriesId);
  return known ?? chains.keep(state, seriesId, yield* buildInSteps(state, seriesId));
}

const chains = memoOfState<SeriesChain>();
/** Jars worked out between two steps: some milliseconds of work. */
const jarsAStep = 200;
const knownJar = memo<JarChain>();

/** What all jars of a series share. */
interface Common {
  series: RecordOf<"series">;
  sample: SampleChain;
  feed: RecordOf<"sample">;
  stockA: StockChain | null;
  stockB: StockChain | null;
}

function* buildInSteps(state: StudyState, seriesId: string): Generator<number, SeriesChain> {
  const series = state.series[seriesId]!;
  const sample = sampleChain(state, series.sampleId);
  const feed = state.sample[series.sampleId]!;
  const stockA = series.stockAId ? stockChain(state, series.stockAId) : null;
  const stockB = series.stockBId ? stockChain(state, series.stockBId) : null;
  const common: Common = { series, sample, feed, stockA, stockB };
  const jars: JarChain[] = [];
  for (const jar of [...childrenOf(state.jar, "seriesId", seriesId)].sort((a, b) =>
    byNumberedName(a.label, b.label),
  )) {
    const readings = [...childrenOf(state.reading, "jarId", jar.id)].sort((a, b) => (a.id < b.id ? -1 : 1));
    jars.push(knownJar(jar, [...Object.values(common), ...readings], () => jarChain(jar, readings, common)));
    if (jars.length % jarsAStep === 0) yield jars.length;
  }
  const uncertaintyA = middleUncertainty(
    state,
    series,
    sample,
    stockA,
    jars.map(({ jar }) => jar.syringeAMl),
  );
  const uncertaintyB = middleUncertainty(
    state,
    series,
    sample,
    stockB,
    jars.map(({ jar }) => jar.syringeBMl),
  );
  return {
    series,
    sample,
    stockA,
    stockB,
    jars,
    uncertaintyA,
    surestSpread: {
      A: surestDoseSpread(
        uncertaintyA,
        jars.map(({ doseA }) => doseA.value),
      ),
      B: surestDoseSpread(
        uncertaintyB,
        jars.map(({ doseB }) => doseB.value),
      ),
    },
  };
}

function jarChain(jar: RecordOf<"jar">, readings: Reading[], common: Common): JarChain {
  const { series, sample, feed, stockA, stockB } = common;
  const dose = (syringe: number | null, planned: number | null, stock: StockChain | null, letter: string) =>
    doseFigure(
      jar.role === "no-polymer" && syringe === null
        ? 0
        : (syringe ?? (stock === null && planned === null ? 0 : null)),
      stock,
      letter,
      series,
      jar,
      sample,
    );
  const doseA = dose(jar.syringeAMl, jar.plannedDoseAKgPerT, stockA, "A");
  const doseB = dose(jar.syringeBMl, jar.plannedDoseBKgPerT, stockB, "B");
  const responses: JarChain["responses"] = {};
  for (const reading of readings) {
    if (reading.leftOut !== null) continue;
    if (!counts(reading.result, series)) continue;
    const response = responseOf(reading);
    if (!response) continue;
    const entry = { readingId: reading.id, value: response.value, censored: response.censored };
    responses[response.name] = [...(responses[response.name] ?? []), entry];
  }
  const partial = {
    jar,
    doseA,
    doseB,
    suppliedA: suppliedFigure(doseA, stockA),
    suppliedB: suppliedFigure(doseB, stockB),
    addedMl:
      doseA.value === null || doseB.value === null
        ? null
        : (jar.syringeAMl ?? 0) + (jar.syringeBMl ?? 0) + (jar.blankWaterMl ?? 0),
    readings,
    responses,
  };
  return {
    ...partial,
    capture: captureFigure(partial, series, sample, feed),
  };
}
