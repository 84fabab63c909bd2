import { area } from "./language.ts";

/** Why a figure of sample, solution or jar cannot be worked out: clauses that stand behind a colon. */
export const benchFormulaWords = area("benchFormulas", {
  dish: {
    tareMissing: "the empty dish is not weighed yet",
    wetMissing: "the dish with wet sludge is not weighed yet",
    dryMissing: "the dish is not dried yet",
    ashMissing: "the dish is not ashed yet",
    wetOrder: "the masses are out of order: empty < dry < wet",
    ashOrder: "the masses are out of order: empty < ash < dry",
    noValue: "no value yet",
    filterVolume: "the filtered volume must be above 0",
    filterMass: "the dried filter must weigh more than the empty one",
  },
  makeDown: {
    neatMass: "the neat product must weigh more than 0",
    totalMass: "the whole solution must weigh more than the neat product in it",
    wantedStrength: "the wanted strength must be above 0",
    wantedMass: "the mass of the solution must be above 0",
    tooStrong: (activePct: number) =>
      `the neat product itself holds only ${activePct} % active, so this strength cannot be made from it`,
    dilution: "the new strength must be above 0 and not above the old one",
  },
  dose: {
    sampleVolume: "the sample volume must be above 0",
    sampleDensity: "the sample's density must be above 0",
    totalSolids: "the total solids must be above 0: without solids there is no dose",
    strength: "the solution's strength must be above 0",
    solutionDensity: "the solution's density must be above 0",
  },
  capture: {
    feed: "the feed solids must be above 0",
    cake: "the cake must be drier than the feed",
    filtrate: "the filtrate must hold less solids than the feed",
    added: "the added liquid must not be negative",
    balance: "more solids leave with the filtrate than came with the feed: check the readings",
  },
  filtration: {
    suspendedSolids: "the suspended solids must be above 0",
    waterSlower: "the sludge cannot drain faster than water on the same paper: check the water blank",
    fewVolumes: "at least three volumes are needed on the straight part",
    sameVolumes: "the volumes must differ",
    notCake: "t/V does not rise with V: this is not cake filtration",
    feed: "the feed's solids must be above 0",
    cake: "the cake must hold more solids than the feed",
  },
  usualDoses: {
    practice: "common practice, no source",
    memory: "handbook range, from memory",
  },
});
