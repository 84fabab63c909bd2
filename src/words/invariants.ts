import { area } from "./language.ts";

/** The rules between fields of a record, each as the sentence for a record that breaks it. */
export const invariantWords = area("invariants", {
  masses: {
    emptyDish: "empty dish",
    ash: "dish with ash",
    drySolids: "dish with dry solids",
    wetSludge: "dish with wet sludge",
    dryCake: "dish with dry cake",
    wetCake: "dish with wet cake",
    emptyFilter: "empty filter",
    driedFilter: "dried filter",
  },
  massOrder: (heavier: string, heavierG: number, lighter: string, lighterG: number) =>
    `The ${heavier} (${heavierG} g) must weigh more than the ${lighter} (${lighterG} g): check both for swapped digits.`,
  neatMass: (neatG: number, totalG: number) =>
    `The neat product (${neatG} g) must weigh less than the whole solution (${totalG} g).`,
  sameStock: "Polymers A and B name the same stock solution: pick another for one of them.",
  noPolymerJar: (jar: string) => `Jar ${jar} is a no-polymer jar, so its syringe volumes must be 0 or empty.`,
  manyFills: (volumeMl: number, letter: string, capacityMl: number) =>
    `${volumeMl} mL of solution ${letter} is more than four fills of the ${capacityMl} mL syringe: check the volume, or make a stronger stock.`,
  secondTargets: "This series already has its targets.",
  secondMakeDown: "This product already has its plant make-down.",
  carrierStrength: "The strength after carrier water must not be above the solution's own strength.",
  pumpRange: "The pump's lowest setting must be below its highest.",
  feedRange: "The lowest feed solids must be below the highest.",
  inorganicRange: "The lower threshold of the inorganic share must be below the upper one.",
  returnFlow: "The flow that returns must be less than the supply: check both.",
  wetterCake: (cakePct: number, feedPct: number) =>
    `The cake (${cakePct} %) must be drier than the feed (${feedPct} %): check both for swapped digits.`,
  secondRunDose: "This run already has its entry for that polymer.",
});
