import { area } from "./language.ts";

/** A stock solution's strength and time window: how they were made, what is missing, what to look at. */
export const stockChainWords = area("stockChain", {
  strengthFormula: "active share x neat mass / whole mass",
  suppliedFormula: "neat mass / whole mass",
  activeShareOf: (product: string) => `active share of ${product}`,
  neatProduct: "neat product",
  wholeSolution: "whole solution",
  massBalance: "mass balance",
  enterActiveShare: (product: string) => `enter the active share of ${product}`,
  enterActiveShareFirst: (product: string) => `Enter the active share of ${product} first.`,
  weighNeat: "weigh the neat product in",
  weighWhole: "weigh the whole solution",
  unusualStrength: (strength: string, low: string, high: string) =>
    `${strength} % active is outside the usual ${low} to ${high} % (common practice, no source): check the masses, and that neat and active were not mixed up.`,
  neatAsActive: (made: string, wanted: string) =>
    `${made} % active was made, ${wanted} % was wanted: that is the active share apart, so the neat product was weighed as if it were all active. Weigh again, or keep it: the doses use what was made.`,
  dividedTwice: (made: string, wanted: string) =>
    `${made} % active was made, ${wanted} % was wanted: that is one over the active share apart, so the active share was divided out twice. Check the mass; the doses use what was made.`,
  offTarget: (made: string, wanted: string) =>
    `${made} % active was made, ${wanted} % was wanted: the doses use what was made.`,
  enterMixStart: "enter when mixing started",
  ageing: (left: string) => `ageing, usable in ${left}`,
  usable: (left: string) => `usable, discard in ${left}`,
  pastLife: "past its life: make a new solution",
});
