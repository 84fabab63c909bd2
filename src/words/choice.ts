import { area } from "./language.ts";

/** The rules by which a dose is chosen, and why one of them has no dose. Limits come in as words ("turbidity at most 80 NTU"). */
export const choiceWords = area("choice", {
  cheapest: "cheapest dose within all limits",
  lowest: "lowest dose within all limits",
  leastCost: "least total cost",
  nearLeastCost: "lowest dose within 1 % of least cost, in limits",
  mostDesirable: "most desirable",
  narrowWindow: (guardPct: number) => `The window is too narrow for a guard band of ${guardPct} %.`,
  noLimit: "Set a limit first.",
  noPrice: "No price is set, so the lowest dose stands in for the cheapest.",
  enterPrice: "Enter the polymer's price and active share first.",
  onlyPolymerPriced:
    "Only the polymer is priced, so the lowest dose tested is the cheapest: enter a disposal price.",
  noneNear: "No dose within the limits comes within 1 % of the least cost.",
  desirability: (overall: string) => `Overall desirability ${overall}.`,
  undesirable: "At every dose at least one wish is at its worst.",
  neverMet: (limit: string) =>
    `${limit.charAt(0).toUpperCase()}${limit.slice(1)} is not met with confidence at any dose tested: run jars elsewhere, repeat jars, or change the limit.`,
  conflict: (one: string, other: string, nearest: string, unit: string) =>
    `No dose tested meets both ${one} and ${other}; they come nearest at ${nearest} ${unit}. Neither was relaxed.`,
  pairNeverMet: (limit: string) =>
    `No tested pair meets ${limit} with confidence: add pairs, repeat jars, or change the limit.`,
  pairConflict: (limits: string[]) =>
    `No tested pair meets ${limits.join(" and ")} together. Neither was relaxed.`,
  pairConflictNear: (limits: string[], a: string, b: string, unit: string) =>
    `No tested pair meets ${limits.join(" and ")} together. They come nearest at A ${a} and B ${b} ${unit}. Neither was relaxed.`,
});
