import { area } from "./language.ts";

/** A sample's solids and density: how each was made, what is missing, and what to know about it. */
export const sampleChainWords = area("sampleChain", {
  totalSolidsFormula: "100 (dry - tare) / (wet - tare)",
  volatileFormula: "100 (dry - ash) / (dry - tare)",
  masses: { tareG: "tare mass", wetG: "wet mass", dryG: "dry mass", ashG: "ash mass" },
  dish: (label: string) => `dish ${label}`,
  meanTotalSolids: "mean of the dishes' total solids; spread t(n - 1) s / sqrt(n) at 95 %",
  meanVolatile: "mean of the dishes' volatile share; spread t(n - 1) s / sqrt(n) at 95 %",
  enterDishes: "enter the dish masses, or a provisional value from the moisture balance",
  ashDishes: "ash the dishes to have the volatile share",
  asReadOnBalance: "as read on the moisture balance",
  balance: "moisture balance",
  balanceSource: "typed by the technician; provisional until the dishes are dry",
  provisionalWarning: "Total solids are provisional: every dose will move when the dishes are dry.",
  dishesDiffer: (difference: string, limitPct: number) =>
    `The dishes differ by ${difference} % of their mean, more than ${limitPct} %: dry another dish.`,
  oneDish: "One dish alone has no spread: dry a second one.",
  asMeasured: "as measured",
  typed: "typed by the technician",
  density: "density",
  densityFormula: "1 / (TS / solids density + (1 - TS) / water), solids density from the volatile share",
  totalSolids: "total solids",
  volatileShare: "volatile share",
  volatileShareAssumed: "volatile share, assumed",
  needsTotalSolids: "needs the total solids first",
  densityAssumed: (volatilePct: number) =>
    `Estimated, with a volatile share of ${volatilePct} % assumed (common practice, no source) until the dishes are ashed.`,
  densityEstimated: "Estimated from total solids and volatile share.",
});
