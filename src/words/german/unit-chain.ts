import type { unitChainWords } from "../unit-chain.ts";

export const unitChain: typeof unitChainWords = {
  solutionDrawn: "Entnahme an Lösung",
  ageingTime: "Reifezeit",
  deadVolume: "Totvolumen",
  fillingTime: "Füllzeit",
  wettingTime: "Benetzungszeit",
  transferTime: "Umpumpzeit",
  batch: "Ansatz",
  neatProduct: "Handelsware",
  containerOf: (product) => `Gebinde von ${product}`,
  containersInStock: "Gebinde auf Lager",
  ageingVolume: {
    title: "Nötiges Reifevolumen",
    formula: "Lösung x Reifezeit x (1 + Totvolumen)",
  },
  batchLasts: { title: "Ein Ansatz reicht", formula: "60 x Ansatz / Entnahme an Lösung" },
  nextTakes: { title: "Der nächste braucht", formula: "Füllen + Benetzen + Reifen + Umpumpen" },
  leastBatch: {
    title: "Ansatz, der gerade reicht",
    formula: "Entnahme an Lösung x (Füllen + Benetzen + Reifen + Umpumpen)",
  },
  neatPerDay: { title: "Handelsware je Tag", formula: "Handelsware x Stunden" },
  neatPerMonth: { title: "Handelsware je Monat", formula: "ein Zwölftel des Jahres" },
  neatPerYear: { title: "Handelsware je Jahr", formula: "Handelsware x Stunden x Tage" },
  containersPerYear: { title: "Gebinde je Jahr", formula: "Verbrauch je Jahr / Gebinde" },
  stockDays: { title: "Vorrat in Betriebstagen", formula: "Gebinde x Inhalt / Verbrauch je Tag" },
  nothingDrawn: "Bei einer Dosis von 0 wird nichts entnommen.",
  toTell: (lack) => `Um zu beurteilen, ob die Ansetzanlage nachkommt: ${lack}.`,
  enterTank: "Um zu beurteilen, ob die Ansetzanlage nachkommt: den vorhandenen Reifebehälter eintragen.",
  batchKeepsUp: "Die Ansetzanlage kommt nach: Ein Ansatz reicht länger, als der nächste braucht.",
  batchTooSlow:
    "Die Ansetzanlage kommt nicht nach: Ein Ansatz ist verbraucht, bevor der nächste fertig ist. Abhilfe: größere Ansätze, ein zweiter Behälter, eine stärkere Lösung oder ein kürzerer Betriebstag.",
  tankKeepsUp: "Die Ansetzanlage kommt nach: Der Reifebehälter ist für diese Entnahme groß genug.",
  tankTooSmall:
    "Der Reifebehälter ist für diese Entnahme zu klein: Das Polymer verlässt ihn, bevor es gereift ist. Abhilfe: größerer Behälter, stärkere Lösung oder weniger Zulauf.",
  land: {
    limitTitle: "Höchste Dosis",
    limitFormula: "Grenzwert je Hektar / im selben Zeitraum ausgebrachte Trockenmasse",
    limit: "Grenzwert",
    limitUnit: "kg WS/ha",
    drySolidsSpread: "ausgebrachte Trockenmasse",
    totalTitle: "Dosis insgesamt",
    totalFormula: "Dosen hier + anderswo dosiert",
    totalSource: "Summe",
    doseHere: "Dosis hier",
    doseElsewhere: "Dosis anderswo auf dieselben Feststoffe (0 für keine)",
    lacking: (lack) => `Für diese Prüfung: ${lack}.`,
    within:
      "Innerhalb des eingetragenen Grenzwerts. Maßgeblich sind die örtlichen Vorschriften; dies ist keine Rechtsberatung.",
    above:
      "Über dem eingetragenen Grenzwert: weniger Polymer, ein anderer Entsorgungsweg oder auf mehr Fläche ausbringen. Maßgeblich sind die örtlichen Vorschriften; dies ist keine Rechtsberatung.",
  },
};
