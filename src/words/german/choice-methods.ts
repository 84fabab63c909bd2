import type { choiceMethodWords } from "../choice-methods.ts";

export const choiceMethods: typeof choiceMethodWords = {
  limits: {
    what: "Grenzwerte und Arbeitsfenster",
    formula:
      "ein Grenzwert ist eingehalten, wo die einseitige 95-%-Schranke der mittleren Kurve ihn einhält, jeder für sich; das Fenster ist, was sie innerhalb der geprüften Dosen gemeinsam haben; Sicherheitsabstand auf der ungünstigen Seite",
    source: "übliche Statistik; der Sicherheitsabstand von 10 % ist übliche Praxis, ohne Quelle",
  },
  cost: {
    what: "Kosten je Tonne Trockenrückstand",
    formula:
      "D x Preis / Wirksubstanzanteil + Abscheidegrad / Kuchen-TR x Entsorgung + (1 - Abscheidegrad) x Rückbelastung",
    source: "Massenbilanz, unabhängig nachgerechnet",
  },
  desirability: {
    what: "Erwünschteste Dosis",
    formula: "geometrisches Mittel der Erwünschtheiten vom schlechtesten (0) bis zum besten Wert (1)",
    source: "Derringer und Suich 1980 (aus dem Gedächtnis)",
  },
  chanceToMiss: {
    what: "Verfehlungsrisiko eines Grenzwerts",
    formula:
      "Anteil simulierter neuer Becher jenseits des Grenzwerts: Parameter aus ihrer gemeinsamen Verteilung, die Streuung der Becher, der gemeinsame Maßstabsfehler aller Becher, die eingetragene Drift",
    source: "Simulation mit festem Startwert",
  },
  compare: {
    what: "Vergleich bei gleichen Grenzwerten und Ersparnis gegenüber der heutigen Dosis",
    formula:
      "jede Möglichkeit bei ihrer eigenen günstigsten Dosis innerhalb derselben Grenzwerte; Anteil der simulierten Kosten, in dem sie die günstigste ist; eine Ersparnis wird bei beiden Dosen aus denselben simulierten Kurven abgelesen",
    source: "Simulation mit festem Startwert",
  },
  nextJars: {
    what: "Nächste Becher",
    formula:
      "Dosen, eine nach der anderen hinzugefügt, welche die Varianz der besten Dosis am meisten verringern (c-optimal), mindestens zwei, weitere, solange jede das Intervall um 6 % verengt; genug, sobald der Bereich weniger kostet als die Becher",
    source: "übliche Theorie der Versuchspläne; die 6 % sind unsere eigenen",
  },
  quotedDose: {
    what: "Bereich der Dosis, die dem Betrieb genannt wird",
    formula:
      "das halbe Intervall der Anpassung und das Doppelte des gemeinsamen relativen Fehlers mal Dosis, quadratisch addiert; vom gemeinsamen Fehler nur, was der Betrieb nicht wiederholt",
    source: "JCGM 100 für die Summe (Abschnitt aus dem Gedächtnis), unabhängig nachgerechnet",
  },
};
