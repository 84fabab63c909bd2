// Short cautions, shown wherever product is handled or a pump is set. They never replace the safety data sheet.

export const makeDownCautions = [
  "Read the product's safety data sheet first. Goggles, gloves and apron; eyewash within reach.",
  "Polymer on a floor is extremely slippery and hard to see, and water makes it worse: cordon off, absorb with inert granules, dispose of as the data sheet says.",
  "Powder: keep dust down, extract it, no ignition source. Emulsion: oily carrier. Mannich type: formaldehyde and amine. Acid for metal salts. Never premix opposite charges.",
  "Opened buckets and tanks of sludge can give off hydrogen sulphide: ventilate, wear a monitor, never alone. Wash hands, no food.",
] as const;

export const plantCautions = [
  "Check that suction and discharge valves are open before starting a pump: a positive-displacement pump against a closed valve bursts something. The relief valve must be in place and piped to a safe point.",
  "Lock out and tag out before opening a pump, belt, roller or screw. Vent pressurised lines. Mind rotating parts.",
  "Spilled polymer is extremely slippery: contain drips at the calibration column.",
  "These figures are a recommendation, to be checked by a responsible licensed engineer and by the machine's and the product's suppliers. The safety data sheet, local codes and licensed practice govern.",
] as const;
