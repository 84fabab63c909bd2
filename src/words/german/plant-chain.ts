import type { plantChainWords } from "../plant-chain.ts";

export const plantChain: typeof plantChainWords = {
  approveDose: "zuerst im Raum Dosis eine Dosis freigeben",
  pickStocks: "zuerst die Stammlösungen der Reihe wählen",
  enterHours: "Betriebsstunden und Betriebstage eintragen",
  neatByMass: "Fracht x Dosis / Wirksubstanzanteil",
  neatByVolume: "Fracht x Dosis / Wirksubstanzanteil / Dichte",
  neatDensity: "Dichte, Handelsware",
  solutionFormula: "Fracht x Dosis / Konzentration der Lösung / Dichte der Lösung",
  solutionStrength: "Konzentration der Lösung, Wirksubstanz",
  solutionDensity: "Dichte der Lösung",
  noPump: "keine Pumpe",
  noFlow: "kein Förderstrom",
};
