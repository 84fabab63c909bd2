import type { factorChainWords } from "../factor-chain.ts";

export const factorChain: typeof factorChainWords = {
  needsDose: "braucht eine Dosis",
  noBenchDose: "wurde keiner freigegebenen Dosis gegenübergestellt",
  zeroDose: "hat eine Dosis von 0",
  noRun:
    "kein Betriebsversuch mit dieser Maschine, diesem Schlamm und diesem Produkt ist als eingefahrene Dosis markiert",
  formula:
    "geometrisches Mittel aus Betriebsdosis / Labordosis; Bereich t(n - 1) s / sqrt(n) in Logarithmen, zu 95 %",
  doses: (plant, bench) => `${plant} / ${bench}`,
};
