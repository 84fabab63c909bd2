import type { stockChainWords } from "../stock-chain.ts";

export const stockChain: typeof stockChainWords = {
  strengthFormula: "Wirksubstanzanteil x Masse Handelsware / Gesamtmasse",
  suppliedFormula: "Masse Handelsware / Gesamtmasse",
  activeShareOf: (product) => `Wirksubstanzanteil von ${product}`,
  neatProduct: "Handelsware",
  wholeSolution: "gesamte Lösung",
  massBalance: "Massenbilanz",
  enterActiveShare: (product) => `Wirksubstanzanteil von ${product} eintragen`,
  enterActiveShareFirst: (product) => `Zuerst den Wirksubstanzanteil von ${product} eintragen.`,
  weighNeat: "Handelsware einwiegen",
  weighWhole: "gesamte Lösung wiegen",
  unusualStrength: (strength, low, high) =>
    `${strength} % Wirksubstanz liegt außerhalb der üblichen ${low} bis ${high} % (übliche Praxis, ohne Quelle): Massen prüfen, und ob Handelsware und Wirksubstanz verwechselt wurden.`,
  neatAsActive: (made, wanted) =>
    `${made} % Wirksubstanz wurden angesetzt, ${wanted} % waren gewollt: Beide unterscheiden sich um den Wirksubstanzanteil; die Handelsware wurde also eingewogen, als wäre sie reine Wirksubstanz. Neu einwiegen oder so lassen: Die Dosen rechnen mit dem, was angesetzt wurde.`,
  dividedTwice: (made, wanted) =>
    `${made} % Wirksubstanz wurden angesetzt, ${wanted} % waren gewollt: Beide unterscheiden sich um den Kehrwert des Wirksubstanzanteils; durch ihn wurde also zweimal geteilt. Masse prüfen; die Dosen rechnen mit dem, was angesetzt wurde.`,
  offTarget: (made, wanted) =>
    `${made} % Wirksubstanz wurden angesetzt, ${wanted} % waren gewollt: Die Dosen rechnen mit dem, was angesetzt wurde.`,
  enterMixStart: "Beginn des Ansetzens eintragen",
  ageing: (left) => `reift, verwendbar in ${left}`,
  usable: (left) => `verwendbar, verwerfen in ${left}`,
  pastLife: "nicht mehr haltbar: neue Lösung ansetzen",
};
