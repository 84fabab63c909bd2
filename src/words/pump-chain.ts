import { area } from "./language.ts";

/** A pump's calibration: what is missing, how old it is, and what changed since it was taken. */
export const pumpChainWords = area("pumpChain", {
  lot: "lot",
  lotWhy: "another lot may be thicker or thinner, and a pump then slips by another amount",
  activeShare: "active share",
  activeShareWhy: "the product is not the one that was drawn, and its viscosity goes with it",
  density: "density",
  densityWhy: "volume and mass no longer belong together as when it was drawn",
  strength: "solution strength",
  strengthWhy: "a stronger or weaker solution slips by another amount",
  nothing: "nothing",
  changed: (name: string, before: string, now: string, why: string) =>
    `${name} was ${before} and is now ${now}: ${why}`,
  noDrawDown: "no draw-down yet",
  enterHeldSpeed: "enter the speed at which the pump is to be run",
  enterZeroStroke: "enter the stroke at which the pump stops delivering (0 for an ideal one)",
  enterSpeeds: "enter the speed of each draw-down",
  units: { "%": "%", Hz: "Hz", mm: "mm", "% stroke": "% stroke" },
  strokeAtHeldSpeed: "% stroke at the held speed",
  strokeAtSpeed: (speedPct: number) => `% stroke at ${speedPct} % speed`,
  noMoment: "no draw-down says when it was taken",
  daysAgo: (days: number) => `${days} days ago`,
  hoursAgo: (hours: number) => `${hours} h ago`,
  withinHour: "within the last hour",
  tooOld: (ago: string, limitDays: number) =>
    `calibrated ${ago}, past its ${limitDays} days: repeat the draw-downs`,
  noLimit: (ago: string) => `calibrated ${ago}; no limit of age is set`,
  goodFor: (ago: string, limitDays: number) => `calibrated ${ago}, good for ${limitDays} days`,
});
