import type { supplyFigureWords } from "../supply-figures.ts";

export const supplyFigures: typeof supplyFigureWords = {
  activePolymer: "Polymer als Wirksubstanz",
  priceOf: (product) => `Preis von ${product}`,
  perKgNeat: "je kg Handelsware",
  strengthAfterCarrier: "Konzentration nach der Nachverdünnung",
  expectedCapture: "erwarteter Abscheidegrad",
  askCapture: "Filtrat und Kuchen im Labor ablesen oder im Raum Dosis einen Abscheidegrad annehmen",
  expectedCake: "erwarteter Kuchen-TR",
  askCake: "Kuchen im Labor ablesen",
  solidsThatReturn: "zurücklaufende Feststoffe",
  wetCakeInput: "nasser Kuchen",
  washWater: "Waschwasser der Maschine",
  solutionAndCarrier: "Lösung und Nachverdünnungswasser",
  retained: "im Kuchen verbleibender Polymeranteil",
  noLiquid: "neben dem Kuchen bliebe keine Flüssigkeit: Ströme und Kuchen prüfen",
  makeUpWater: {
    title: "Ansetzwasser",
    formula: "Wirksubstanz / Konzentration - Wirksubstanz / Wirksubstanzanteil",
  },
  carrierWater: {
    title: (pct) => `Nachverdünnungswasser auf ${pct} %`,
    formula:
      "Wirksubstanz / Konzentration danach - Wirksubstanz / Konzentration davor, Wasser mit 1,000 kg/L",
  },
  polymerPerTonne: { title: "Polymer je t TR", formula: "1000 x Handelsware x Preis / Fracht" },
  polymerPerYear: { title: "Polymer je Jahr", formula: "Handelsware x Preis x Stunden x Tage" },
  returnConcentration: {
    title: "Feststoffe im Rücklauf",
    formula:
      "zurücklaufende Feststoffe / (Zulauf + Lösung + Nachverdünnung + Waschwasser - Kuchen), Kuchen mit 1,000 kg/L",
  },
  wetCake: { title: "Nasser Kuchen", formula: "Fracht x Abscheidegrad / Kuchen-TR" },
  wetCakeWithPolymer: {
    title: "Nasser Kuchen mit Polymer",
    formula: "Fracht x Abscheidegrad x (1 + Dosis x verbleibender Anteil) / Kuchen-TR",
  },
  returnedSolids: { title: "Zurücklaufende Feststoffe", formula: "Fracht x (1 - Abscheidegrad)" },
};
