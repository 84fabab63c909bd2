import { area } from "./language.ts";

/** Inputs of the plant's figures that several of them rest on, by name, and where their formulas come from. */
export const plantInputWords = area("plantInputs", {
  enter: (input: string) => `enter the ${input}`,
  load: "dry-solids load",
  dose: "dose, active",
  activeShareOf: (product: string) => `active share of ${product}`,
  activeShare: "active share",
  strength: "solution strength",
  feedFlow: "feed flow",
  totalSolids: "total solids",
  density: "density",
  hoursPerDay: "hours a day",
  daysPerYear: "days a year",
  uncertainty: (part: string) => `standard uncertainty, ${part}`,
});
