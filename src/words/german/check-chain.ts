import type { checkChainWords } from "../check-chain.ts";

export const checkChain: typeof checkChainWords = {
  outsideProven: "diese Einstellung liegt außerhalb des durch Auslitern nachgewiesenen Bereichs",
  twoDrawDowns:
    "zweimal Auslitern allein sagt nicht, wie weit ein einzelnes danebenliegen darf: ein drittes Mal auslitern",
  noFlow: "die Pumpengerade ergibt bei dieser Einstellung keinen Förderstrom",
  wideBand: (limitPct) =>
    `Das Band ist nach jeder Seite breiter als ${limitPct} %: größeren Messzylinder oder längere Zeit verwenden.`,
  lessThanBand: "Weniger, als die Pumpe fördern sollte: neu einstellen und Auslitern wiederholen.",
  moreThanBand: "Mehr, als die Pumpe fördern sollte: neu einstellen und Auslitern wiederholen.",
  lessFault:
    "Dann den Fehler suchen: Saugseite verstopft oder ohne ausreichenden Zufluss, Luft in der Leitung, Überdruckventil offen, Produkt dicker als beim Kalibrieren.",
  moreFault:
    "Dann den Fehler suchen: Heberwirkung oder zu wenig Gegendruck, andere Einstellung als angezeigt, Produkt dünner als beim Kalibrieren.",
  checkStrength: "Vor einer Änderung der Dosis die Konzentration der Lösung prüfen.",
  noBand: "kein Band zum Beurteilen",
  inside: "Pumpe innerhalb ihres Bandes",
  outside: "Pumpe außerhalb ihres Bandes",
};
