import { area } from "./language.ts";

/** Bench mixing beside the plant's: inputs, formulas and the verdict. */
export const mixingChainWords = area("mixingChain", {
  density: "density of the sludge",
  sampleTemperature: "temperature of the sample",
  feedTemperature: "temperature of the feed",
  flow: "feed flow with its solution",
  jarPowerNumber: "power number of the jar's paddle",
  jarPaddle: "diameter of the jar's paddle",
  sampleVolume: "sample volume of the series",
  fastSpeed: "fast speed of the series",
  fastTime: "fast time of the series",
  slowSpeed: "slow speed of the series (0 for none)",
  slowTime: "slow time of the series (0 for none)",
  benchFormula: "sum of G x t of the fast and the slow phase; G = sqrt(P / (mu V)), P = Np rho N^3 D^5",
  tankVolume: "volume of the mixing tank",
  mixerVolume: "volume of the mixer or valve",
  retentionFormula: "volume / flow",
  tankPowerNumber: "power number of the tank's stirrer",
  tankSpeed: "speed of the tank's stirrer",
  tankPaddle: "diameter of the tank's stirrer",
  pressureDrop: "pressure drop over the mixer",
  inLineFormula: "sqrt(pressure drop / (mu x retention))",
  campFormula: "G x retention",
  pipeDiameter: "diameter of the pipe",
  pipeLength: "length of the pipe",
  delayFormula: "length x area / flow",
  delayWanted: "delay wanted",
  pipeFormula: "4 x flow x delay / (pi x diameter^2)",
  ratioFormula: "plant Gt / bench Gt",
  plantMixing: "plant's mixing",
  benchMixing: "bench's mixing",
  matchFormula: "(plant Gt - Gt of the slow phase) / G of the fast phase",
  enterMixing: "enter the mixing",
  toCompare: (lack: string) => `To compare the mixing: ${lack}.`,
  plantMixesMore: {
    tank: "The plant mixes more than the jars did: floc may break and need more dose. Mix the jars longer or faster until they match, or turn down the stirrer's speed or the tank's volume.",
    inLine:
      "The plant mixes more than the jars did: floc may break and need more dose. Mix the jars longer or faster until they match, or turn down the valve or the mixer's volume.",
  },
  plantMixesLess: {
    tank: "The plant mixes less than the jars did: polymer may leave unused. Mix the jars shorter or slower until they match, or turn up the stirrer's speed or the tank's volume.",
    inLine:
      "The plant mixes less than the jars did: polymer may leave unused. Mix the jars shorter or slower until they match, or turn up the valve or the mixer's volume.",
  },
  alike: "Jars and plant are mixed alike, within a factor of two.",
});
