import type { summaryWords } from "../summaries.ts";

export const summaries: typeof summaryWords = {
  noPrice: "das Polymer hat keinen Preis oder keinen Wirksubstanzanteil",
  onlyPolymer: "die Kosten sind nur die des Polymers: der Entsorgung fehlt Preis, Kuchen oder Abscheidegrad",
  noCurve: {
    filtrate: "keine angepasste Kurve für das Filtrat",
    cake: "keine angepasste Kurve für den Kuchen",
    both: "keine angepasste Kurve für Filtrat oder Kuchen",
  },
  noFit: "keine Messgröße dieser Reihe hat eine angepasste Kurve",
  doseOutside: "die freigegebene Dosis liegt außerhalb der geprüften Dosen",
  noSurface: "keine Messgröße dieser Reihe hat eine angepasste Fläche",
  pairOutside: "das freigegebene Paar liegt außerhalb der geprüften Paare",
  noReading: "kein Becher dieser Reihe wurde abgelesen",
  oneDoseForTwo: "die Reihe verändert beide Polymere, die Freigabe nennt nur eine Dosis",
  onlyB: "in dieser Reihe wurde nur Polymer B verändert",
};
