import { area } from "./language.ts";

/** The dose at the plant from the bench dose, the dose that a measured flow means, and what stands in their way. */
export const plantDoseWords = area("plantDose", {
  curveFit: "fit of the bench curve",
  benchScale: "bench scale",
  benchDose: "bench dose, as approved",
  factor: (title: string, runs: number) => `bench-to-plant factor, ${title}, ${runs} runs`,
  nextRun: "factor of the next run",
  notKnown: "not known, left out of the range",
  oneRun: "one run alone has no spread",
  withFactor:
    "bench dose x factor; range from the parts in quadrature, each at its own 95 % (Student's for the factor)",
  withoutFactor: "bench dose; range from the parts in quadrature at 95 %",
  sayMakeDown: (letter: string, product: string) =>
    `polymer ${letter}: say how ${product} is made down at the plant`,
  enterActiveShareOf: (letter: string, product: string) =>
    `polymer ${letter}: enter the active share of ${product}`,
  enterDensityOf: (letter: string, product: string) => `polymer ${letter}: enter the density of ${product}`,
  enterPlantStrength: (letter: string) => `polymer ${letter}: enter the strength of the plant's solution`,
  enterPlantDensity: (letter: string) => `polymer ${letter}: enter the density of the plant's solution`,
  lacksFactor: (letter: string, why: string) =>
    `polymer ${letter}: ${why}; log one, or use the bench dose as it is`,
  flowFormula: "1000 x flow x density x strength / load; range 2 x its parts in quadrature",
  flowCaught: "flow caught",
  flowDensity: "density of what flows",
  cancels: "one lot on the bench and here: cancels",
  enterFeed: "enter the feed",
  enterActiveShare: "enter the active share",
  enterStrength: "enter the solution's strength",
  enterFlowDensity: "enter the density of what the pump moves",
});
