import type { madeChoiceWords } from "../made-choice.ts";

export const madeChoice: typeof madeChoiceWords = {
  cost: "Dosis x Preis / Wirksubstanzanteil + Abscheidegrad / Kuchen-TR x Entsorgung + (1 - Abscheidegrad) x Rückbelastung; Teile ohne Preis bleiben weg",
  inputs: {
    dose: "Dosis, Wirksubstanz",
    price: "Preis der Handelsware",
    activeShare: "Wirksubstanzanteil",
    cake: "Kuchen-TR bei dieser Dosis",
    capture: "Abscheidegrad bei dieser Dosis",
    disposalOfCake: "Entsorgung des nassen Kuchens",
    returnLoad: "Rückbelastung",
    polymer: "Polymer",
    disposal: "Entsorgung",
    return: "Rückbelastung",
    miss: "Risiko zu verfehlen",
    draws: "Ziehungen, ab Startwert",
    cheapest: "günstigste Dosis, Wirksubstanz",
  },
  costSource: "Massenbilanz; Fachformeln, Abschnitt 5",
  rules: {
    minimum:
      "die Dosis, bei der die vorgeschlagene Kurve dieser Messgröße am besten ist; 95 % nach Profil, erweitert über gleichauf liegende Modelle",
    knee: "die Dosis, bei der die vorgeschlagene Kurve einen Anteil des Gewinns erreicht; 95 % nach Profil, erweitert über gleichauf liegende Modelle",
    "cheapest-in-limits":
      "niedrigste Gesamtkosten über die Dosen, bei denen jeder Grenzwert an seiner einseitigen 95-%-Schranke eingehalten ist, eingezogen um den Sicherheitsabstand",
    "least-cost": "niedrigste Gesamtkosten über die geprüften Dosen",
    "near-least-cost":
      "niedrigste Dosis innerhalb der Grenzwerte, deren Kosten höchstens 1 % über den niedrigsten liegen",
    desirability: "höchstes geometrisches Mittel der Erwünschtheiten, vom schlechtesten (0) zum besten (1)",
  },
  rule: (dose, cost) =>
    `Dosis: ${dose}. Kosten: ${cost}. Risiko: Anteil der simulierten Kurven, die dort den am ehesten verfehlten Grenzwert verfehlen`,
  ruleSource:
    "angepasste Kurven dieser Reihe; Fachformeln, Abschnitte 5 und 6; Sicherheitsabstand von 10 %: übliche Praxis, ohne Quelle",
  compared:
    "Dosis x Preis / Wirksubstanzanteil + Abscheidegrad / Kuchen-TR x Entsorgung + (1 - Abscheidegrad) x Rückbelastung, bei der günstigsten Dosis der Reihe innerhalb der Grenzwerte; Chance: Anteil der simulierten Kuchenkurven, in denen sie am günstigsten ist",
  comparedSource: "Fachformeln, Abschnitt 5; angepasste Kurven jeder Reihe",
};
