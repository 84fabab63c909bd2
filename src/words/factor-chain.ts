import { area } from "./language.ts";

/** The bench-to-plant factor: how it was made and which plant runs cannot count towards it. */
export const factorChainWords = area("factorChain", {
  needsDose: "needs a dose",
  noBenchDose: "was not held against an approved dose",
  zeroDose: "has a dose of 0",
  noRun: "no plant run of this machine, sludge and product is marked as the dose the plant settled on",
  formula: "geometric mean of plant dose over bench dose; range t(n - 1) s / sqrt(n) in logs at 95 %",
  doses: (plant: string, bench: string) => `${plant} over ${bench}`,
});
