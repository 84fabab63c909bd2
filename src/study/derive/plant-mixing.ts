import { inLineGradientPerS, stirredMixing, stirrerPowerW } from "../../bench/mixing.ts";
import { sourceOf } from "../../methods/methods.ts";
import { waterViscosityMPaS } from "../../bench/water.ts";
import { pipeForDelay } from "../../plant/load.ts";
import type { RecordOf } from "../schema/records.ts";
import { figure, missingFigure, type Figure, type MadeInput } from "./figure.ts";
import type { StateTone } from "./tone.ts";

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

const source = sourceOf("mixing");

type Value = (known: number[]) => number;

function had(quantity: Figure["quantity"], formula: string, inputs: MadeInput[], value: Value): Figure {
  const lack = inputs.find((input) => input.value === null);
  const made = { formula, inputs, source };
  return lack
    ? missingFigure(quantity, `enter the ${lack.name}`, made)
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
  const density: MadeInput = { name: "density of the sludge", value: conditions.densityKgPerL, unit: "kg/L" };
  const viscosity = (celsius: number | null, name: string): MadeInput => ({
    name,
    value: celsius === null ? null : waterViscosityMPaS(celsius),
    unit: "mPa·s",
  });
  const benchMu = viscosity(conditions.benchTemperatureC, "temperature of the sample");
  const plantMu = viscosity(conditions.plantTemperatureC, "temperature of the feed");
  const flow: MadeInput = {
    name: "feed flow with its solution",
    value:
      conditions.feedM3PerH === null || conditions.solutionLPerH === null
        ? null
        : conditions.feedM3PerH + conditions.solutionLPerH / 1000,
    unit: "m³/h",
  };
  const benchInputs: MadeInput[] = [
    { name: "power number of the jar's paddle", value: jarPaddle.powerNumber, unit: "" },
    { name: "diameter of the jar's paddle", value: jarPaddle.diameterMm, unit: "mm" },
    { name: "sample volume of the series", value: series.sampleVolumeMl, unit: "mL" },
    { name: "fast speed of the series", value: protocol.fastRpm, unit: "rpm" },
    { name: "fast time of the series", value: protocol.fastS, unit: "s" },
    { name: "slow speed of the series (0 for none)", value: protocol.slowRpm, unit: "rpm" },
    { name: "slow time of the series (0 for none)", value: protocol.slowS, unit: "s" },
    density,
    benchMu,
  ];
  const benchGt = had(
    "ratio",
    "sum of G x t of the fast and the slow phase; G = sqrt(P / (mu V)), P = Np rho N^3 D^5",
    benchInputs,
    ([np, paddle, ml, fastRpm, fastS, slowRpm, slowS, rho, mu]) => {
      const camp = (rpm: number, seconds: number) =>
        stirredMixing(stirrerPowerW(np!, rho!, rpm, paddle!), mu!, ml! / 1000, seconds).camp;
      return camp(fastRpm!, fastS!) + camp(slowRpm!, slowS!);
    },
  );
  const volume: MadeInput =
    mixing.place === "tank"
      ? { name: "volume of the mixing tank", value: mixing.tankVolumeL, unit: "L" }
      : { name: "volume of the mixer or valve", value: mixing.mixerVolumeL, unit: "L" };
  const seconds: Value = ([litres, m3]) => (litres! * 3.6) / m3!;
  const retention = had("seconds", "volume / flow", [volume, flow], seconds);
  const stirrer: MadeInput[] = [
    volume,
    flow,
    { name: "power number of the tank's stirrer", value: mixing.tankPowerNumber, unit: "" },
    { name: "speed of the tank's stirrer", value: mixing.tankRpm, unit: "rpm" },
    { name: "diameter of the tank's stirrer", value: mixing.tankPaddleMm, unit: "mm" },
    density,
    plantMu,
  ];
  const inLine: MadeInput[] = [
    volume,
    flow,
    { name: "pressure drop over the mixer", value: mixing.pressureDropKPa, unit: "kPa" },
    plantMu,
  ];
  const gradient: Value =
    mixing.place === "tank"
      ? ([litres, , np, rpm, paddle, rho, mu]) =>
          stirredMixing(stirrerPowerW(np!, rho!, rpm!, paddle!), mu!, litres!, 1).gradientPerS
      : ([litres, m3, drop, mu]) => inLineGradientPerS(drop!, mu!, seconds([litres!, m3!]));
  const inputs = mixing.place === "tank" ? stirrer : inLine;
  const formula =
    mixing.place === "tank"
      ? "sqrt(P / (mu V)), P = Np rho N^3 D^5"
      : "sqrt(pressure drop / (mu x retention))";
  const plantG = had("perSecond", formula, inputs, gradient);
  const plantGt = had("ratio", "G x retention", inputs, (known) => gradient(known) * seconds(known));
  const pipe: MadeInput[] = [
    flow,
    { name: "diameter of the pipe", value: mixing.pipeDiameterMm, unit: "mm" },
  ];
  const pipeDelay = had(
    "seconds",
    "length x area / flow",
    [...pipe, { name: "length of the pipe", value: mixing.pipeLengthM, unit: "m" }],
    ([m3, mm, metres]) => metres! / pipeForDelay(m3!, 1, mm!).velocityMPerS,
  );
  const pipeNeeded = had(
    "lengthM",
    "4 x flow x delay / (pi x diameter^2)",
    [...pipe, { name: "delay wanted", value: mixing.wantedDelayS, unit: "s" }],
    ([m3, mm, wanted]) => pipeForDelay(m3!, wanted!, mm!).lengthM,
  );
  const ratio = had(
    "ratio",
    "plant Gt / bench Gt",
    [
      { name: "plant's mixing", value: plantGt.value, unit: "" },
      { name: "bench's mixing", value: benchGt.value, unit: "" },
    ],
    ([plant, bench]) => plant! / bench!,
  );
  const matchFastS = had(
    "seconds",
    "(plant Gt - Gt of the slow phase) / G of the fast phase",
    [{ name: "plant's mixing", value: plantGt.value, unit: "" }, ...benchInputs],
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
    const lack = bench.missing ?? plant.missing ?? "enter the mixing";
    return { tone: "missing", words: `To compare the mixing: ${lack}.` };
  }
  const knob =
    mixing.place === "tank" ? "the stirrer's speed or the tank's volume" : "the valve or the mixer's volume";
  if (ratio.value > alike)
    return {
      tone: "warn",
      words: `The plant mixes more than the jars did: floc may break and need more dose. Mix the jars longer or faster until they match, or turn down ${knob}.`,
    };
  if (ratio.value < 1 / alike)
    return {
      tone: "warn",
      words: `The plant mixes less than the jars did: polymer may leave unused. Mix the jars shorter or slower until they match, or turn up ${knob}.`,
    };
  return { tone: "good", words: "Jars and plant are mixed alike, within a factor of two." };
}
