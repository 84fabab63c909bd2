import type { madeLibraryWords } from "../made-library.ts";

export const madeLibrary: typeof madeLibraryWords = {
  fitted:
    "Mittelwert der eigenen angepassten Kurve der Studie (Fläche bei zwei Polymeren) bei ihrer freigegebenen Dosis; in Klammern die einseitigen 95-%-Schranken dieses Mittelwerts",
  cost: "Dosis x Preis / Wirksubstanzanteil + Abscheidegrad / Kuchen-TR x Entsorgung + (1 - Abscheidegrad) x Rückbelastung, bei der freigegebenen Dosis mit den eigenen Preisen der Studie; Teile ohne Preis bleiben weg",
  at: (dose, unit) => `bei ${dose} ${unit}`,
  parts: (polymer, disposal, back) => `Polymer ${polymer} + Entsorgung ${disposal} + Rückbelastung ${back}`,
  title: (column) => `${column} der Studien`,
};
