import { area } from "./language.ts";

/** Short cautions, shown wherever product is handled or a pump is set. They never replace the safety data sheet. */
export const cautionWords = area("cautions", {
  makeDown: {
    dataSheet: "Read the product's safety data sheet first. Goggles, gloves and apron; eyewash within reach.",
    slippery:
      "Polymer on a floor is extremely slippery and hard to see, and water makes it worse: cordon off, absorb with inert granules, dispose of as the data sheet says.",
    forms:
      "Powder: keep dust down, extract it, no ignition source. Emulsion: oily carrier. Mannich type: formaldehyde and amine. Acid for metal salts. Never premix opposite charges.",
    gas: "Opened buckets and tanks of sludge can give off hydrogen sulphide: ventilate, wear a monitor, never alone. Wash hands, no food.",
  },
  plant: {
    valves:
      "Check that suction and discharge valves are open before starting a pump: a positive-displacement pump against a closed valve bursts something. The relief valve must be in place and piped to a safe point.",
    lockOut:
      "Lock out and tag out before opening a pump, belt, roller or screw. Vent pressurised lines. Mind rotating parts.",
    slippery: "Spilled polymer is extremely slippery: contain drips at the calibration column.",
    figures:
      "These figures are a recommendation, to be checked by a responsible licensed engineer and by the machine's and the product's suppliers. The safety data sheet, local codes and licensed practice govern.",
  },
});
