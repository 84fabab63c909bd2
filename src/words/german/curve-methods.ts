import type { curveMethodWords } from "../curve-methods.ts";

export const curveMethods: typeof curveMethodWords = {
  fits: {
    what: "Anpassungen",
    formula:
      "kleinste Quadrate, für Trübung, TSS, CST und SRF im natürlichen Logarithmus (Werte sind dann Mediane); Ablesungen jenseits des Messbereichs nach größter Likelihood; ein wiederholt abgelesener Becher ist ein Punkt",
    source: "übliche Statistik; der Rechenweg gibt die NIST-Referenzdaten wieder",
  },
  models: {
    what: "Modelle",
    formula:
      "konstant; b0 + b1 x; b0 + b1 x + b2 x^2 und mit b3 x^3, in Dosis oder ln Dosis; Anfang + Gewinn (1 - e^(-Rate x)); Höhe - Steigung max(0, Knick - x); Grund - Tiefe e^(-(x - Mitte)^2 / (2 Breite^2)); unten + (oben - unten) / (1 + e^(-Steilheit (x - Mitte))); unten + (oben - unten) / (1 + (ed50 / x)^Steigung)",
    source: "Formen aus dem Lehrbuch",
  },
  band: {
    what: "Angepasster Wert bei einer Dosis, seine Schranken, Residuen",
    formula:
      "angepasst ± t(n - p) x Standardfehler des angepassten Mittels (Gradient der Kurve, Kovarianz ihrer Parameter), auf der Skala der Anpassung und zurückgerechnet; jede Schranke einseitig 95 %; Residuen durch s = sqrt(rss / (n - p))",
    source: "übliche Statistik, für eine Gerade unabhängig nachgerechnet",
  },
  choiceOfModel: {
    what: "Wahl unter den Modellen",
    formula:
      "AICc = n ln(rss/n) + 2K + 2K(K + 1)/(n - K - 1), K Parameter mit der Streuung; Modellabweichung gegen wiederholte Becher bei 5 %; innerhalb von 2 gilt als gleich gut; in kleinen Reihen der F-Test gegen das flachere Modell",
    source: "Hurvich und Tsai 1989; Draper und Smith; Box und Draper (alle aus dem Gedächtnis)",
  },
  interval: {
    what: "Intervall einer besten Dosis",
    formula:
      "Profil der Quadratsumme bei F(1, n - p), 95 %; für eine Parabel dasselbe wie nach Fieller; daneben nach der Delta-Methode und durch Wiederziehen von Residuen oder Bechern; der Bereich deckt alle gleich guten Modelle",
    source: "Fieller 1954 (aus dem Gedächtnis); Überdeckung von diesem Projekt simuliert",
  },
  knee: {
    what: "Knick",
    formula:
      "Dosis bei 95 % des Gewinns: ln 20 / Rate (exponentiell), ed50 x 19^(1/Steigung) (log-logistisch), Mitte + ln 19 / Steilheit (logistisch); die Ecke eines Plateaus",
    source: "Algebra der Modelle",
  },
  outliers: {
    what: "Ausreißer, Einfluss, Drift",
    formula:
      "extern studentisiertes Residuum jenseits von t bei 5 % über alle Becher (Bonferroni); Verschiebung der besten Dosis ohne jeden einzelnen Becher; eine robuste Anpassung mit Tukeys Bisquare daneben; Residuen gegen die Reihenfolge bei 1 %",
    source: "übliche Statistik; Beaton und Tukey 1974 (aus dem Gedächtnis)",
  },
  surface: {
    what: "Zwei Polymere",
    formula:
      "Fläche zweiter Ordnung in beiden Dosen, kodiert durch Mitte und halbe Breite; ihr stationärer Punkt, die Vorzeichen ihrer Krümmungen und deren Schranken",
    source: "Box und Draper; Box und Hunter 1954 (aus dem Gedächtnis)",
  },
};
