import { area } from "./language.ts";

/** A jar's dose and capture: how they were made and which input is missing. */
export const jarChainWords = area("jarChain", {
  doseFormula: "1000 x syringe x solution density x strength / (sample volume x density x TS)",
  syringe: (letter: string) => `syringe ${letter}`,
  strength: "strength, active",
  solutionDensity: "solution density",
  sampleVolume: "sample volume",
  sludgeDensity: "sludge density",
  totalSolids: "total solids",
  totalSolidsProvisional: "total solids, provisional",
  enterVolume: (letter: string) => `enter the volume of solution ${letter}`,
  pickStock: (letter: string) => `pick the stock solution for polymer ${letter}`,
  lacksStrength: (stock: string, why: string) => `strength of ${stock}: ${why}`,
  enterStockDensity: (stock: string) => `enter the density of ${stock}`,
  enterSampleVolume: "enter the sample volume",
  lacksTotalSolids: (why: string) => `total solids: ${why}`,
  lacksDensity: (why: string) => `density: ${why}`,
  suppliedFormula: "active dose / active share",
  activeDose: "active dose",
  activeShare: "active share",
  enterActiveShare: "enter the active share",
  captureFormula:
    "C (F - (1 + d) E) / (F (C - E)), solids of feed F, cake C, filtrate E, added liquid d over feed",
  feedTss: "feed TSS",
  filtrateTss: "filtrate TSS",
  cakeTs: "cake TS",
  addedLiquid: "added liquid over feed",
  needsFiltrateTss: "needs a filtrate TSS reading",
  needsCakeTs: "needs a cake TS reading",
  mixedBasis: "mixed basis: enter the feed's suspended solids, TS includes what is dissolved",
  needsVolumes: "needs the volumes added to this jar",
});
