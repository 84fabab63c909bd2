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

/** One result of a jar that is worked out from its readings, with the standard behind it. */
export interface Measurement {
  name: string;
  figure: Figure;
  standard: string;
}

const cstStandard = "Standard Methods 2710 G (number from memory); EN 14701-1";
const drainStandard = "EN 14701-4:2018, drainability of flocculated sludge";
const mixingStandard =
  "nominal: water's viscosity stands for the sludge's, which is thicker; G = sqrt(P / (mu V)), Camp number G t";

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
  const inputs: Made["inputs"] = [
    { name: "CST, mean", value: mean, unit: "s" },
    { name: "water on the same paper", value: series.cstWaterS, unit: "s" },
    { name: "feed suspended solids", value: feed.gPerL, unit: "g/L" },
    { name: "temperature", value: feed.temperatureC, unit: "°C" },
  ];
  const normalised = (): number | string => {
    if (series.cstWaterS === null) return "enter the CST of water on the same paper";
    if (feed.gPerL === null) return "enter the feed's suspended solids";
    const outcome = normalisedCst(mean, series.cstWaterS, feed.gPerL);
    return outcome.ok ? outcome.value : outcome.message;
  };
  const reservoir = series.cstReservoirMm === null ? "" : `, ${series.cstReservoirMm} mm reservoir`;
  return [
    {
      name: `CST, mean of ${n}${reservoir}`,
      standard: cstStandard,
      figure: figure(
        "seconds",
        mean,
        {
          formula: "mean of the readings; spread t(n - 1) s / sqrt(n) at 95 %",
          inputs: seconds.map((value, i) => ({ name: `reading ${i + 1}`, value, unit: "s" })),
          source: cstStandard,
        },
        { spread: halfWidth95 },
      ),
    },
    worked(
      "CST above water, per g/L",
      cstStandard,
      "secondsLPerG",
      "(CST - water) / suspended solids",
      inputs,
      normalised(),
    ),
    worked(
      "CST at 20 °C",
      `${cstStandard}; water's viscosity, paper effects ignored`,
      "seconds",
      "CST x viscosity at 20 °C / viscosity at the temperature",
      inputs,
      feed.temperatureC === null ? "enter the sample's temperature" : cstAt20C(mean, feed.temperatureC),
    ),
  ];
}

function drainage(jar: JarChain, sampleMl: number | null): Measurement[] {
  return counted(jar, "drained")
    .sort((a, b) => a.atS - b.atS)
    .map(({ ml, atS }) =>
      worked(
        `drained at ${atS} s`,
        drainStandard,
        "percent",
        "100 V / (sample + what was added)",
        [
          { name: "drained", value: ml, unit: "mL" },
          { name: "sample", value: sampleMl, unit: "mL" },
          { name: "added", value: jar.addedMl, unit: "mL" },
        ],
        sampleMl === null || jar.addedMl === null
          ? "needs the volumes in this jar"
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
  const filterStandard = "Standard Methods 2710 H (conditions from memory)";
  const shearStandard = "common practice; strength d2 / d1, recovery (d3 - d2) / (d1 - d2), from memory";
  return [
    ...counted(jar, "filter-time").map(({ seconds }) =>
      worked(
        "time to filter, per g/L",
        filterStandard,
        "secondsLPerG",
        "time / suspended solids",
        [
          { name: "time", value: seconds, unit: "s" },
          { name: "feed suspended solids", value: feed.gPerL, unit: "g/L" },
        ],
        feed.gPerL === null ? "enter the feed's suspended solids" : normalisedFilterTime(seconds, feed.gPerL),
      ),
    ),
    ...counted(jar, "srf").flatMap((result) => {
      const resistance = filtrationOf(result);
      const inputs: Made["inputs"] = [
        {
          name: "points used",
          value: `${result.firstUsed} to ${result.lastUsed} of ${result.points.length}`,
          unit: "",
        },
        { name: "filter diameter", value: result.diameterMm, unit: "mm" },
        { name: "pressure", value: result.pressureKPa, unit: "kPa" },
        { name: "temperature", value: result.temperatureC, unit: "°C" },
        { name: "dry cake per filtrate", value: result.cakeKgPerM3, unit: "kg/m3" },
      ];
      const standard = "EN 14701-2:2013; constant-pressure form, from memory";
      return [
        worked(
          "specific resistance",
          standard,
          "srfTmPerKg",
          "2 pressure area^2 b / (viscosity x cake), t/V = b V + c",
          inputs,
          resistance.ok ? resistance.value.srfMPerKg / 1e12 : resistance.message,
        ),
        worked(
          "resistance of the medium",
          standard,
          "mediumPerM",
          "c x pressure x area / viscosity",
          inputs,
          resistance.ok ? resistance.value.mediumPerM : resistance.message,
        ),
      ];
    }),
    ...counted(jar, "re-shear").flatMap((result) => {
      const { strength, recovery } = flocStrength(result.firstMm, result.brokenMm, result.regrownMm);
      const inputs: Made["inputs"] = [
        { name: "floc at first, d1", value: result.firstMm, unit: "mm" },
        { name: "broken, d2", value: result.brokenMm, unit: "mm" },
        { name: "regrown, d3", value: result.regrownMm, unit: "mm" },
      ];
      return [
        worked("floc strength", shearStandard, "ratio", "d2 / d1", inputs, strength),
        ...(recovery === null
          ? []
          : [worked("floc recovery", shearStandard, "ratio", "(d3 - d2) / (d1 - d2)", inputs, recovery)]),
      ];
    }),
    ...counted(jar, "zeta").map(({ mV }) =>
      worked(
        "zeta potential",
        "as read",
        "millivolt",
        "as read",
        [{ name: "read", value: mV, unit: "mV" }],
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
  const assumed = feed.temperatureC === null ? "; 20 °C assumed, no temperature was entered" : "";
  const standard = `${mixingStandard}${assumed}`;
  const viscosity = waterViscosityMPaS(temperature);
  const stage = (name: string, rpm: number | null, seconds: number | null): Measurement[] => {
    if (rpm === null || seconds === null) return [];
    const inputs: Made["inputs"] = [
      { name: "speed", value: rpm, unit: "rpm" },
      { name: "time", value: seconds, unit: "s" },
      { name: "power number", value: protocol.stirrerPowerNumber, unit: "" },
      { name: "stirrer diameter", value: protocol.stirrerDiameterMm, unit: "mm" },
      { name: "liquid", value: litres, unit: "L" },
      { name: "temperature", value: temperature, unit: "°C" },
    ];
    const lacking =
      protocol.stirrerPowerNumber === null || protocol.stirrerDiameterMm === null
        ? "enter the stirrer's diameter and power number"
        : litres === null
          ? "enter the sample volume"
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
        `G of ${name} mixing`,
        standard,
        "perSecond",
        "sqrt(Np rho N^3 D^5 / (mu V))",
        inputs,
        mixed?.gradientPerS ?? lacking!,
      ),
      worked(`Gt of ${name} mixing`, standard, "ratio", "G x time", inputs, mixed?.camp ?? lacking!),
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
      { name: "pours", value: done.pours, unit: "" },
      { name: "height", value: protocol.pourHeightM, unit: "m" },
      { name: "time for all", value: protocol.poursS, unit: "s" },
      { name: "temperature", value: temperature, unit: "°C" },
    ];
    const bound = `${standard}; upper bound, all the fall's energy counted`;
    return [
      worked("G of pouring", bound, "perSecond", "sqrt(n rho g h / (mu t))", inputs, gradient),
      worked("Gt of pouring", bound, "ratio", "G x time", inputs, gradient * protocol.poursS),
    ];
  };
  return [
    ...stage("fast", done.fastRpm, done.fastS),
    ...(series.stockBId === null ? [] : stage("first-polymer", done.fastRpm, done.betweenS)),
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
  const made = (formula: string, inputs: Made["inputs"]): Made => ({
    formula,
    inputs,
    source: "force over area; no common standard for press cake, common practice",
  });
  if (pressForceN !== null && pistonDiameterMm !== null)
    return figure(
      "pressureKPa",
      pressureKPa(pressForceN, pistonDiameterMm),
      made("force / piston area", [
        { name: "force", value: pressForceN, unit: "N" },
        { name: "piston", value: pistonDiameterMm, unit: "mm" },
      ]),
    );
  return pressKPa === null
    ? null
    : figure("pressureKPa", pressKPa, made("as typed", [{ name: "pressure", value: pressKPa, unit: "kPa" }]));
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
