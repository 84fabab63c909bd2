import { area } from "./language.ts";

const ask = "Ask the machine's supplier and a licensed engineer.";

/** Why a figure of the plant cannot be worked out, and what a machine's limits say: clauses stand behind a colon. */
export const plantFormulaWords = area("plantFormulas", {
  feed: {
    flow: "enter the feed flow",
    timedVolume: "enter the volume that was timed",
    timedMinutes: "enter the minutes it took",
    tankArea: "enter the tank's area",
    levelChange: "enter the change of level",
    supply: "enter the supply flow",
    returned: "enter the flow that returns",
    returnOrder: "the flow that returns must be less than the supply: check both",
  },
  present: {
    aboveZero: (name: string) => `${name} must be above 0.`,
  },
  pump: {
    oneDraw: "one draw-down does not make a line: add one at another setting.",
    oneSetting: "all draw-downs are at one setting: add one at another setting.",
    notRising: "the flow does not rise with the setting: check the draw-downs for swapped numbers.",
    fewForCurve: "a curve needs draw-downs at three settings or more: add another setting.",
    turnsBack: "the curve turns back inside the settings drawn: one flow would have two settings.",
    repeat: "repeat a draw-down at one setting",
    lineAsked: "A straight line, as asked.",
    linePasses: "A straight line: it passes its lack of fit.",
    lineUntold: "A straight line; without repeats at a setting nobody can tell whether it bends.",
    lineFails: (curveFault: string) => `The line fails its lack of fit, and ${curveFault}`,
    curveAsked: "A curve, as asked.",
    curveNeeded: "A curve: the straight line fails its lack of fit.",
  },
  machine: {
    width: "enter the effective width",
    loading: "enter the loading for this class of sludge",
    feedFirst: "enter the feed first",
    overloaded: `Lower the feed, run longer hours or add width. ${ask}`,
    hydraulicLimit: "enter the hydraulic limit",
    flooded: `Lower the feed flow or thicken the sludge first. ${ask}`,
    feedWindow: "enter the lowest and highest feed solids",
    totalSolids: "enter the feed's total solids",
    tooThin: `Too thin: thicken the sludge first. ${ask}`,
    tooThick: `Too thick: dilute the feed, or it will not mix with the polymer. ${ask}`,
    solidsThreshold: "enter the solids threshold",
    thinFeed: `Counts as thin feed: the water, not the solids, may set the machine's size. ${ask}`,
    inorganicThresholds: "enter the two thresholds of the inorganic share",
    ashDishes: "ash the sample's dishes to have the inorganic share",
    abrasive: `Above the upper threshold: heavy, abrasive sludge; capacity and wear differ. ${ask}`,
    betweenThresholds: `Between the two thresholds: take the loading from a trial, not from a table. ${ask}`,
  },
  runs: {
    load: "the dry-solids load must be above 0",
    noWay: "log a draw-down, a container's loss of mass, or the setting of a calibrated pump",
    oddLevels: "A step test needs an odd number of levels, 3 or more.",
    stepsToZero: "The steps reach down to no polymer at all: take smaller steps or fewer levels.",
    twoPairs: "a comparison needs two pairs or more",
    fewRuns: (needed: number, logged: number) =>
      `needs ${needed} runs in a row, ${logged} ${logged === 1 ? "is" : "are"} logged`,
    noScatter: "all runs have one and the same value: no scatter to judge drift by",
    noFactorRun: "no plant run counts for the factor yet",
    factorDoses: "a factor needs doses above 0, on the bench and at the plant",
  },
  // Paths and field names are those of the input file.
  rates: {
    densityMissing: (path: string) =>
      `${path}.densityKgPerL is missing: a liquid product's rate in litres needs it.`,
    solutionAbove: (path: string, solutionPct: number, activePct: number) =>
      `${path}.solutionActivePct (${solutionPct}) is above the neat product's activePct (${activePct}).`,
    carrierAbove: (path: string, carrierPct: number, solutionPct: number) =>
      `${path}.carrierActivePct (${carrierPct}) is above solutionActivePct (${solutionPct}).`,
    mixedDraws: (path: string) => `${path}.draws mixes mL/min and g/min: use one of them.`,
    dryByMass: (path: string) => `${path}.draws: a dry feeder is checked by mass, in gPerMin.`,
    flowUnknown: (path: string) =>
      `${path}: the neat product's density is missing, so its flow is not known.`,
  },
});
