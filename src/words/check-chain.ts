import { area } from "./language.ts";

/** The cylinder check of a pump: why there is no band, how the catch lies in it, and what to do. */
export const checkChainWords = area("checkChain", {
  outsideProven: "this setting lies outside those proven by draw-down",
  twoDrawDowns: "two draw-downs alone do not say how far one may lie off: add a third",
  noFlow: "the pump's line gives no flow at this setting",
  wideBand: (limitPct: number) =>
    `The band is wider than ${limitPct} % either way: use a larger cylinder or a longer time.`,
  lessThanBand: "Less than the pump should give: set it again and repeat the draw-down.",
  moreThanBand: "More than the pump should give: set it again and repeat the draw-down.",
  lessFault:
    "Then look for the fault: suction blocked or starved, air in the line, relief valve open, product thicker than when it was calibrated.",
  moreFault:
    "Then look for the fault: siphoning or too little discharge pressure, another setting than shown, product thinner than when it was calibrated.",
  checkStrength: "Check the solution's strength before changing the dose.",
  noBand: "no band to judge by",
  inside: "pump within its band",
  outside: "pump outside its band",
});
