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
    miss: "Verfehlungsrisiko",
    draws: "Ziehungen, ab Startwert",
    cheapest: "günstigste Dosis, Wirksubstanz",
  },
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
    `Dosis: ${dose}. Kosten: ${cost}. Verfehlungsrisiko: Anteil der simulierten Kurven, die dort den am ehesten verfehlten Grenzwert verfehlen`,
  compared:
    "Dosis x Preis / Wirksubstanzanteil + Abscheidegrad / Kuchen-TR x Entsorgung + (1 - Abscheidegrad) x Rückbelastung, bei der günstigsten Dosis der Reihe innerhalb der Grenzwerte; Chance: Anteil der simulierten Kuchenkurven, in denen sie am günstigsten ist",
  limit:
    "ein Grenzwert ist bei einer Dosis eingehalten, wo die einseitige 95-%-Schranke der mittleren Kurve ihn einhält, jeder für sich; die Enden werden auf 400 Schritten gefunden und durch Halbieren eingeengt; blass: wo der Mittelwert ihn einhält",
  window:
    "Überschneidung der Dosen, bei denen jeder Grenzwert eingehalten ist, innerhalb der geprüften Dosen",
  edge: "Abstand zum nächsten Ende der Dosen, bei denen ein Grenzwert eingehalten ist; das Ende der geprüften Dosen zählt nicht",
  miss: "Anteil simulierter Becher bei dieser Dosis, die einen Grenzwert verfehlen: Dosis x (1 + gemeinsamer Fehler) / (1 + Drift), Kurve und Streuung eines Bechers zufällig gezogen; genannt wird der am ehesten verfehlte",
  against:
    "Kosten bei der Dosis der Regel - Kosten bei der heutigen Dosis; Bereich und Chance: 2,5 bis 97,5 % der simulierten Unterschiede, beide Dosen auf denselben gezogenen Kurven, und ihr Anteil unter 0; im Jahr: x TR im Jahr",
  present:
    "Dosis = Förderstrom x seine Dichte x Wirksubstanzanteil / (Zulaufstrom x Schlammdichte x Trockenrückstand); Strom aus der Geraden der Pumpe bei dieser Einstellung",
  pairCost:
    "Dosis A x Preis A / Wirksubstanzanteil A + Dosis B x Preis B / Wirksubstanzanteil B + Abscheidegrad / Kuchen-TR x Entsorgung; die Rückbelastung bleibt weg",
  cheapestPair:
    "niedrigste Kosten (am wenigsten Polymer, wo nichts einen Preis hat) über ein Gitter von 121 mal 121 Paaren innerhalb der geprüften, wo jeder Grenzwert an seiner einseitigen 95-%-Schranke eingehalten ist",
  limitInputs: {
    limit: (limit) => `Grenzwert: ${limit}`,
    mean: "dort angepasst",
    bound: "einseitige 95-%-Schranke dort",
    held: "sicher eingehalten",
    atMean: "im Mittel eingehalten",
    missed: "verfehlt mit einem Risiko von",
    testedLow: "niedrigste geprüfte Dosis",
    testedHigh: "höchste geprüfte Dosis",
    shared: "Fehler, den alle Becher teilen und der Betrieb nicht wiederholt",
    drift: "Drift des Zulauf-TR (1 Std.-Abw.)",
    today: "heutige Dosis, Wirksubstanz",
    drySolids: "TR im Jahr",
    setting: "Einstellung",
    flow: "Förderstrom",
    flowDensity: "Dichte dessen, was die Pumpe fördert",
    active: "sein Wirksubstanzanteil",
    feed: "Zulaufstrom",
    solids: "Trockenrückstand",
    density: "Schlammdichte",
    half: "halbes Intervall der Anpassung",
    noInterval: "keines für diese Dosis",
    priceA: "Preis von A, Handelsware",
    priceB: "Preis von B, Handelsware",
    activeA: "Wirksubstanzanteil von A",
    activeB: "Wirksubstanzanteil von B",
    assumedCapture: "Abscheidegrad, angenommen",
    cost: "Kosten dort",
    nowhere: "nirgends",
  },
  titles: {
    limit: (limit) => `wo „${limit}“ eingehalten ist`,
    window: "Arbeitsfenster",
    expected: (column) => `${column} bei den Dosen der Regeln`,
    edge: "Abstand zur Grenze, die zuerst verfehlt wird",
    miss: "Verfehlungsrisiko",
    against: "Änderung gegen heute",
    table: "Kosten über der Dosis",
    present: "heutige Dosis aus der Pumpeneinstellung",
    pairCost: "Kosten beim betrachteten Paar",
    cheapestPair: "günstigstes Paar innerhalb aller Grenzwerte",
  },
};
