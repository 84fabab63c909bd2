import {
  cstAt20C,
  drainedPct,
  flocStrength,
  normalisedCst,
  normalisedFilterTime,
  pressureKPa,
} from "../../bench/measurements.ts";
import { filtrationOf } from "../../responses/srf.ts";
import { pouringGradientPerS, stirredMixing, stirrerPowerW } from "../../bench/mixing.ts";
import { waterViscosityMPaS } from "../../bench/water.ts";
import { totalSolidsGPerL } from "../../sample/density.ts";
import { replicates } from "../../sample/solids.ts";
import type { QuantityKind } from "../../units/display.ts";
import type { RecordOf, StudyState } from "../schema/records.ts";
import { figure, missingFigure, type Figure, type Made } from "./figure.ts";
import { type JarChain, type Reading, type SeriesChain } from "./jars.ts";
import { measurementWords } from "../../words/measurements.ts";

/** One result of a jar that is worked out from its readings, with the standard behind it. */
export interface Measurement {
  name: string;
  figure: Figure;
  standard: string;
}

type Result<K extends Reading["result"]["kind"]> = Extract<Reading["result"], { kind: K }>;

function counted<K extends Reading["result"]["kind"]>(jar: JarChain, kind: K): Result<K>[] {
  return jar.readings
    .filter(({ leftOut, result }) => leftOut === null && result.kind === kind)
    .map(({ result }) => result as Result<K>);
}

function worked(
  name: string,
  standard: string,
  quantity: QuantityKind,
  formula: string,
  inputs: Made["inputs"],
  value: number | string,
): Measurement {
  const made: Made = { formula, inputs, source: standard };
  return {
    name,
    standard,
    figure: typeof value === "number" ? figure(quantity, value, made) : missingFigure(quantity, value, made),
  };
}

function suctionTime(jar: JarChain, series: RecordOf<"series">, feed: FeedSolids): Measurement[] {
  const seconds = counted(jar, "cst").map((reading) => reading.seconds);
  const summary = replicates(seconds);
  if (!summary.ok) return [];
  const { mean, halfWidth95, n } = summary.value;
  const words = measurementWords.suctionTime;
  const inputs: Made["inputs"] = [
    { name: words.meanInput, value: mean, unit: "s" },
    { name: words.water, value: series.cstWaterS, unit: "s" },
    { name: measurementWords.feedSolids, value: feed.gPerL, unit: "g/L" },
    { name: measurementWords.temperature, value: feed.temperatureC, unit: "°C" },
  ];
  const normalised = (): number | string => {
    if (series.cstWaterS === null) return words.enterWater;
    if (feed.gPerL === null) return measurementWords.enterFeedSolids;
    const outcome = normalisedCst(mean, series.cstWaterS, feed.gPerL);
    return outcome.ok ? outcome.value : outcome.message;
  };
  return [
    {
      name: words.mean(n, series.cstReservoirMm),
      standard: words.standard,
      figure: figure(
        "seconds",
        mean,
        {
          formula: words.meanFormula,
          inputs: seconds.map((value, i) => ({ name: words.reading(i + 1), value, unit: "s" })),
          source: words.standard,
        },
        { spread: halfWidth95 },
      ),
    },
    worked(words.normalised, words.standard, "secondsLPerG", words.normalisedFormula, inputs, normalised()),
    worked(
      words.warmed,
      words.warmedStandard,
      "seconds",
      words.warmedFormula,
      inputs,
      feed.temperatureC === null ? words.enterTemperature : cstAt20C(mean, feed.temperatureC),
    ),
  ];
}

function drainage(jar: JarChain, sampleMl: number | null): Measurement[] {
  const words = measurementWords.drainage;
  return counted(jar, "drained")
    .sort((a, b) => a.atS - b.atS)
    .map(({ ml, atS }) =>
      worked(
        words.at(atS),
        words.standard,
        "percent",
        words.formula,
        [
          { name: words.drained, value: ml, unit: "mL" },
          { name: words.sample, value: sampleMl, unit: "mL" },
          { name: words.added, value: jar.addedMl, unit: "mL" },
        ],
        sampleMl === null || jar.addedMl === null
          ? words.needsVolumes
          : drainedPct(ml, sampleMl, jar.addedMl),
      ),
    );
}

interface FeedSolids {
  gPerL: number | null;
  temperatureC: number | null;
  densityKgPerL: number | null;
}

function others(jar: JarChain, feed: FeedSolids): Measurement[] {
  const { filterTime, resistance, floc, zeta } = measurementWords;
  return [
    ...counted(jar, "filter-time").map(({ seconds }) =>
      worked(
        filterTime.title,
        filterTime.standard,
        "secondsLPerG",
        filterTime.formula,
        [
          { name: measurementWords.time, value: seconds, unit: "s" },
          { name: measurementWords.feedSolids, value: feed.gPerL, unit: "g/L" },
        ],
        feed.gPerL === null ? measurementWords.enterFeedSolids : normalisedFilterTime(seconds, feed.gPerL),
      ),
    ),
    ...counted(jar, "srf").flatMap((result) => {
      const made = filtrationOf(result);
      const inputs: Made["inputs"] = [
        {
          name: resistance.pointsUsed,
          value: resistance.points(result.firstUsed, result.lastUsed, result.points.length),
          unit: "",
        },
        { name: resistance.diameter, value: result.diameterMm, unit: "mm" },
        { name: resistance.pressure, value: result.pressureKPa, unit: "kPa" },
        { name: measurementWords.temperature, value: result.temperatureC, unit: "°C" },
        { name: resistance.cake, value: result.cakeKgPerM3, unit: "kg/m3" },
      ];
      return [
        worked(
          resistance.title,
          resistance.standard,
          "srfTmPerKg",
          resistance.formula,
          inputs,
          made.ok ? made.value.srfMPerKg / 1e12 : made.message,
        ),
        worked(
          resistance.medium,
          resistance.standard,
          "mediumPerM",
          resistance.mediumFormula,
          inputs,
          made.ok ? made.value.mediumPerM : made.message,
        ),
      ];
    }),
    ...counted(jar, "re-shear").flatMap((result) => {
      const { strength, recovery } = flocStrength(result.firstMm, result.brokenMm, result.regrownMm);
      const inputs: Made["inputs"] = [
        { name: floc.first, value: result.firstMm, unit: "mm" },
        { name: floc.broken, value: result.brokenMm, unit: "mm" },
        { name: floc.regrown, value: result.regrownMm, unit: "mm" },
      ];
      return [
        worked(floc.strength, floc.standard, "ratio", "d2 / d1", inputs, strength),
        ...(recovery === null
          ? []
          : [worked(floc.recovery, floc.standard, "ratio", "(d3 - d2) / (d1 - d2)", inputs, recovery)]),
      ];
    }),
    ...counted(jar, "zeta").map(({ mV }) =>
      worked(
        zeta.title,
        zeta.asRead,
        "millivolt",
        zeta.asRead,
        [{ name: zeta.read, value: mV, unit: "mV" }],
        mV,
      ),
    ),
  ];
}

function mixing(
  jar: JarChain,
  series: RecordOf<"series">,
  sampleMl: number | null,
  feed: FeedSolids,
): Measurement[] {
  const { protocol } = series;
  const done = { ...protocol, ...withoutNulls(jar.jar.asMixed) };
  const litres = sampleMl === null ? null : (sampleMl + (jar.addedMl ?? 0)) / 1000;
  const temperature = feed.temperatureC ?? 20;
  const density = feed.densityKgPerL ?? 1;
  const words = measurementWords.mixing;
  const standard = words.standard(feed.temperatureC === null);
  const viscosity = waterViscosityMPaS(temperature);
  const stage = (
    name: keyof typeof words.gradient,
    rpm: number | null,
    seconds: number | null,
  ): Measurement[] => {
    if (rpm === null || seconds === null) return [];
    const inputs: Made["inputs"] = [
      { name: words.speed, value: rpm, unit: "rpm" },
      { name: measurementWords.time, value: seconds, unit: "s" },
      { name: words.powerNumber, value: protocol.stirrerPowerNumber, unit: "" },
      { name: words.stirrerDiameter, value: protocol.stirrerDiameterMm, unit: "mm" },
      { name: words.liquid, value: litres, unit: "L" },
      { name: measurementWords.temperature, value: temperature, unit: "°C" },
    ];
    const lacking =
      protocol.stirrerPowerNumber === null || protocol.stirrerDiameterMm === null
        ? words.enterStirrer
        : litres === null
          ? words.enterSampleVolume
          : null;
    const mixed =
      lacking === null
        ? stirredMixing(
            stirrerPowerW(protocol.stirrerPowerNumber!, density, rpm, protocol.stirrerDiameterMm!),
            viscosity,
            litres!,
            seconds,
          )
        : null;
    return [
      worked(
        words.gradient[name],
        standard,
        "perSecond",
        "sqrt(Np rho N^3 D^5 / (mu V))",
        inputs,
        mixed?.gradientPerS ?? lacking!,
      ),
      worked(words.camp[name], standard, "ratio", words.campFormula, inputs, mixed?.camp ?? lacking!),
    ];
  };
  const pouring = (): Measurement[] => {
    if (done.pours === null || done.pours === 0 || protocol.pourHeightM === null || protocol.poursS === null)
      return [];
    const gradient = pouringGradientPerS(
      done.pours,
      protocol.pourHeightM,
      protocol.poursS,
      viscosity,
      density,
    );
    const inputs: Made["inputs"] = [
      { name: words.pours, value: done.pours, unit: "" },
      { name: words.height, value: protocol.pourHeightM, unit: "m" },
      { name: words.timeForAll, value: protocol.poursS, unit: "s" },
      { name: measurementWords.temperature, value: temperature, unit: "°C" },
    ];
    const bound = words.pouringStandard(feed.temperatureC === null);
    return [
      worked(words.pouringGradient, bound, "perSecond", "sqrt(n rho g h / (mu t))", inputs, gradient),
      worked(words.pouringCamp, bound, "ratio", words.campFormula, inputs, gradient * protocol.poursS),
    ];
  };
  return [
    ...stage("fast", done.fastRpm, done.fastS),
    ...(series.stockBId === null ? [] : stage("first", done.fastRpm, done.betweenS)),
    ...stage("slow", done.slowRpm, done.slowS),
    ...pouring(),
  ];
}

function withoutNulls<T extends object>(value: T | null): Partial<{ [K in keyof T]: NonNullable<T[K]> }> {
  return Object.fromEntries(Object.entries(value ?? {}).filter(([, inner]) => inner !== null)) as never;
}

/** The press's pressure: typed, or from its force and piston; null where neither is known. */
export function pressPressure(series: RecordOf<"series">): Figure | null {
  const { pressKPa, pressForceN, pistonDiameterMm } = series.protocol;
  const words = measurementWords.press;
  const made = (formula: string, inputs: Made["inputs"]): Made => ({
    formula,
    inputs,
    source: words.standard,
  });
  if (pressForceN !== null && pistonDiameterMm !== null)
    return figure(
      "pressureKPa",
      pressureKPa(pressForceN, pistonDiameterMm),
      made(words.formula, [
        { name: words.force, value: pressForceN, unit: "N" },
        { name: words.piston, value: pistonDiameterMm, unit: "mm" },
      ]),
    );
  return pressKPa === null
    ? null
    : figure(
        "pressureKPa",
        pressKPa,
        made(words.asTyped, [{ name: words.pressure, value: pressKPa, unit: "kPa" }]),
      );
}

/** Everything that is worked out from one jar's readings besides the responses of the curves. */
export function jarMeasurements(state: StudyState, chain: SeriesChain, jar: JarChain): Measurement[] {
  const sample = state.sample[chain.series.sampleId]!;
  const density = chain.sample.density.value;
  const feed: FeedSolids = {
    gPerL:
      sample.suspendedSolidsPct === null || density === null
        ? null
        : totalSolidsGPerL(sample.suspendedSolidsPct, density),
    temperatureC: sample.temperatureC,
    densityKgPerL: density,
  };
  const sampleMl = jar.jar.sampleVolumeMl ?? chain.series.sampleVolumeMl;
  return [
    ...suctionTime(jar, chain.series, feed),
    ...drainage(jar, sampleMl),
    ...others(jar, feed),
    ...mixing(jar, chain.series, sampleMl, feed),
  ];
}
