import { area } from "./language.ts";

/** The rates of a feed case: how neat product and solution were made, and what stands in the way. */
export const plantChainWords = area("plantChain", {
  approveDose: "approve a dose in the Dose room first",
  pickStocks: "pick the series' stock solutions first",
  enterHours: "enter the running hours and days",
  neatByMass: "load x dose / active share",
  neatByVolume: "load x dose / active share / density",
  neatDensity: "density, neat",
  solutionFormula: "load x dose / solution strength / solution density",
  solutionStrength: "solution strength, active",
  solutionDensity: "solution density",
  noPump: "no pump",
  noFlow: "no flow",
});
