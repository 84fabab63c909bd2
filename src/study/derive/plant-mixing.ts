import { inLineGradientPerS, stirredMixing, stirrerPowerW } from "../../bench/mixing.ts";
import { sourceOf } from "../../methods/methods.ts";
import { waterViscosityMPaS } from "../../bench/water.ts";
import { pipeForDelay } from "../../plant/load.ts";
import type { RecordOf } from "../schema/records.ts";
import { figure, missingFigure, type Figure, type MadeInput } from "./figure.ts";
import type { StateTone } from "./tone.ts";
import { mixingChainWords } from "../../words/mixing-chain.ts";
import { plantInputWords } from "../../words/plant-inputs.ts";

type Mixing = RecordOf<"mixing">;

export interface MixingChain {
  benchGt: Figure;
  plantG: Figure;
  plantGt: Figure;
  retention: Figure;
  /** time in the pipe behind the mixer, and the pipe that the wanted delay would need */
  pipeDelay: Figure;
  pipeNeeded: Figure;
  /** plant over bench */
  ratio: Figure;
  /** time of the jars' fast phase that would match the plant, the rest as it is */
  matchFastS: Figure;
  verdict: { tone: StateTone; words: string };
}

type Value = (known: number[]) => number;

function had(quantity: Figure["quantity"], formula: string, inputs: MadeInput[], value: Value): Figure {
  const lack = inputs.find((input) => input.value === null);
  const made = { formula, inputs, source: sourceOf("mixing") };
  return lack
    ? missingFigure(quantity, plantInputWords.enter(lack.name), made)
    : figure(quantity, value(inputs.map((input) => input.value as number)), made);
}

/** The stirrer of a series' jars; a study from before it stood there may have it with the plant's mixing only. */
export function jarStirrer(
  mixing: Mixing,
  { protocol }: RecordOf<"series">,
): { powerNumber: number | null; diameterMm: number | null } {
  return {
    powerNumber: protocol.stirrerPowerNumber ?? mixing.jarPowerNumber,
    diameterMm: protocol.stirrerDiameterMm ?? mixing.jarPaddleMm,
  };
}

/** Beyond a factor of two either way the jars and the plant are not called alike (common practice, no source). */
const alike = 2;

/**
 * Bench mixing against the plant's: G, Gt, retention and pipe. `feedM3PerH` and `solutionLPerH` flow through the
 * plant's mixer; temperatures in °C.
 */
export function mixingChain(
  mixing: Mixing,
  series: RecordOf<"series">,
  conditions: {
    benchTemperatureC: number | null;
    plantTemperatureC: number | null;
    densityKgPerL: number | null;
    feedM3PerH: number | null;
    solutionLPerH: number | null;
  },
): MixingChain {
  const { protocol } = series;
  const jarPaddle = jarStirrer(mixing, series);
  const density: MadeInput = {
    name: mixingChainWords.density,
    value: conditions.densityKgPerL,
    unit: "kg/L",
  };
  const viscosity = (celsius: number | null, name: string): MadeInput => ({
    name,
    value: celsius === null ? null : waterViscosityMPaS(celsius),
    unit: "mPa·s",
  });
  const benchMu = viscosity(conditions.benchTemperatureC, mixingChainWords.sampleTemperature);
  const plantMu = viscosity(conditions.plantTemperatureC, mixingChainWords.feedTemperature);
  const flow: MadeInput = {
    name: mixingChainWords.flow,
    value:
      conditions.feedM3PerH === null || conditions.solutionLPerH === null
        ? null
        : conditions.feedM3PerH + conditions.solutionLPerH / 1000,
    unit: "m³/h",
  };
  const benchInputs: MadeInput[] = [
    { name: mixingChainWords.jarPowerNumber, value: jarPaddle.powerNumber, unit: "" },
    { name: mixingChainWords.jarPaddle, value: jarPaddle.diameterMm, unit: "mm" },
    { name: mixingChainWords.sampleVolume, value: series.sampleVolumeMl, unit: "mL" },
    { name: mixingChainWords.fastSpeed, value: protocol.fastRpm, unit: "rpm" },
    { name: mixingChainWords.fastTime, value: protocol.fastS, unit: "s" },
    { name: mixingChainWords.slowSpeed, value: protocol.slowRpm, unit: "rpm" },
    { name: mixingChainWords.slowTime, value: protocol.slowS, unit: "s" },
    density,
    benchMu,
  ];
  const benchGt = had(
    "ratio",
    mixingChainWords.benchFormula,
    benchInputs,
    ([np, paddle, ml, fastRpm, fastS, slowRpm, slowS, rho, mu]) => {
      const camp = (rpm: number, seconds: number) =>
        stirredMixing(stirrerPowerW(np!, rho!, rpm, paddle!), mu!, ml! / 1000, seconds).camp;
      return camp(fastRpm!, fastS!) + camp(slowRpm!, slowS!);
    },
  );
  const volume: MadeInput =
    mixing.place === "tank"
      ? { name: mixingChainWords.tankVolume, value: mixing.tankVolumeL, unit: "L" }
      : { name: mixingChainWords.mixerVolume, value: mixing.mixerVolumeL, unit: "L" };
  const seconds: Value = ([litres, m3]) => (litres! * 3.6) / m3!;
  const retention = had("seconds", mixingChainWords.retentionFormula, [volume, flow], seconds);
  const stirrer: MadeInput[] = [
    volume,
    flow,
    { name: mixingChainWords.tankPowerNumber, value: mixing.tankPowerNumber, unit: "" },
    { name: mixingChainWords.tankSpeed, value: mixing.tankRpm, unit: "rpm" },
    { name: mixingChainWords.tankPaddle, value: mixing.tankPaddleMm, unit: "mm" },
    density,
    plantMu,
  ];
  const inLine: MadeInput[] = [
    volume,
    flow,
    { name: mixingChainWords.pressureDrop, value: mixing.pressureDropKPa, unit: "kPa" },
    plantMu,
  ];
  const gradient: Value =
    mixing.place === "tank"
      ? ([litres, , np, rpm, paddle, rho, mu]) =>
          stirredMixing(stirrerPowerW(np!, rho!, rpm!, paddle!), mu!, litres!, 1).gradientPerS
      : ([litres, m3, drop, mu]) => inLineGradientPerS(drop!, mu!, seconds([litres!, m3!]));
  const inputs = mixing.place === "tank" ? stirrer : inLine;
  const formula =
    mixing.place === "tank" ? "sqrt(P / (mu V)), P = Np rho N^3 D^5" : mixingChainWords.inLineFormula;
  const plantG = had("perSecond", formula, inputs, gradient);
  const plantGt = had(
    "ratio",
    mixingChainWords.campFormula,
    inputs,
    (known) => gradient(known) * seconds(known),
  );
  const pipe: MadeInput[] = [
    flow,
    { name: mixingChainWords.pipeDiameter, value: mixing.pipeDiameterMm, unit: "mm" },
  ];
  const pipeDelay = had(
    "seconds",
    mixingChainWords.delayFormula,
    [...pipe, { name: mixingChainWords.pipeLength, value: mixing.pipeLengthM, unit: "m" }],
    ([m3, mm, metres]) => metres! / pipeForDelay(m3!, 1, mm!).velocityMPerS,
  );
  const pipeNeeded = had(
    "lengthM",
    mixingChainWords.pipeFormula,
    [...pipe, { name: mixingChainWords.delayWanted, value: mixing.wantedDelayS, unit: "s" }],
    ([m3, mm, wanted]) => pipeForDelay(m3!, wanted!, mm!).lengthM,
  );
  const ratio = had(
    "ratio",
    mixingChainWords.ratioFormula,
    [
      { name: mixingChainWords.plantMixing, value: plantGt.value, unit: "" },
      { name: mixingChainWords.benchMixing, value: benchGt.value, unit: "" },
    ],
    ([plant, bench]) => plant! / bench!,
  );
  const matchFastS = had(
    "seconds",
    mixingChainWords.matchFormula,
    [{ name: mixingChainWords.plantMixing, value: plantGt.value, unit: "" }, ...benchInputs],
    ([plant, ...bench]) => {
      const [np, paddle, ml, fastRpm, , slowRpm, slowS, rho, mu] = bench;
      const camp = (rpm: number, time: number) =>
        stirredMixing(stirrerPowerW(np!, rho!, rpm, paddle!), mu!, ml! / 1000, time).camp;
      return Math.max(0, (plant! - camp(slowRpm!, slowS!)) / camp(fastRpm!, 1));
    },
  );
  return {
    matchFastS,
    benchGt,
    plantG,
    plantGt,
    retention,
    pipeDelay,
    pipeNeeded,
    ratio,
    verdict: verdictOf(mixing, benchGt, plantGt, ratio),
  };
}

function verdictOf(mixing: Mixing, bench: Figure, plant: Figure, ratio: Figure): MixingChain["verdict"] {
  if (ratio.value === null) {
    const lack = bench.missing ?? plant.missing ?? mixingChainWords.enterMixing;
    return { tone: "missing", words: mixingChainWords.toCompare(lack) };
  }
  const place = mixing.place === "tank" ? "tank" : "inLine";
  if (ratio.value > alike)
    return {
      tone: "warn",
      words: mixingChainWords.plantMixesMore[place],
    };
  if (ratio.value < 1 / alike)
    return {
      tone: "warn",
      words: mixingChainWords.plantMixesLess[place],
    };
  return { tone: "good", words: mixingChainWords.alike };
}
