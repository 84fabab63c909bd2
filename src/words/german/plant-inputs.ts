import type { plantInputWords } from "../plant-inputs.ts";

export const plantInputs: typeof plantInputWords = {
  enter: (input) => `${input} eintragen`,
  load: "TR-Fracht",
  dose: "Dosis, Wirksubstanz",
  activeShareOf: (product) => `Wirksubstanzanteil von ${product}`,
  activeShare: "Wirksubstanzanteil",
  strength: "Konzentration der Lösung",
  feedFlow: "Zulaufstrom",
  totalSolids: "Trockenrückstand",
  density: "Dichte",
  hoursPerDay: "Stunden je Tag",
  daysPerYear: "Tage je Jahr",
  uncertainty: (part) => `Standardunsicherheit, ${part}`,
};
