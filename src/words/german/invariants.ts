import type { invariantWords } from "../invariants.ts";

export const invariants: typeof invariantWords = {
  masses: {
    emptyDish: "leere Schale",
    ash: "Schale mit Asche",
    drySolids: "Schale mit trockenem Feststoff",
    wetSludge: "Schale mit nassem Schlamm",
    dryCake: "Schale mit trockenem Kuchen",
    wetCake: "Schale mit nassem Kuchen",
    emptyFilter: "leerer Filter",
    driedFilter: "getrockneter Filter",
  },
  massOrder: (heavier, heavierG, lighter, lighterG) =>
    `Die Masse „${heavier}“ (${heavierG} g) muss über der Masse „${lighter}“ (${lighterG} g) liegen: beide auf vertauschte Ziffern prüfen.`,
  neatMass: (neatG, totalG) =>
    `Die Handelsware (${neatG} g) muss weniger wiegen als die gesamte Lösung (${totalG} g).`,
  sameStock: "Polymer A und B nennen dieselbe Stammlösung: für eines eine andere wählen.",
  noPolymerJar: (jar) =>
    `Becher ${jar} ist ein Becher ohne Polymer, seine Spritzenvolumina müssen 0 oder leer sein.`,
  manyFills: (volumeMl, letter, capacityMl) =>
    `${volumeMl} mL der Lösung ${letter} sind mehr als vier Füllungen der Spritze von ${capacityMl} mL: Volumen prüfen oder stärkere Stammlösung ansetzen.`,
  secondTargets: "Diese Reihe hat ihre Zielwerte schon.",
  secondMakeDown: "Dieses Produkt hat seinen Ansatz im Betrieb schon.",
  carrierStrength:
    "Die Konzentration nach dem Nachverdünnungswasser darf nicht über der Konzentration der Lösung liegen.",
  pumpRange: "Die kleinste Einstellung der Pumpe muss unter der größten liegen.",
  feedRange: "Der kleinste TR des Zulaufs muss unter dem größten liegen.",
  inorganicRange: "Die untere Schwelle des anorganischen Anteils muss unter der oberen liegen.",
  returnFlow: "Der Rücklauf muss kleiner sein als die Zufuhr: beide prüfen.",
  wetterCake: (cakePct, feedPct) =>
    `Der Kuchen (${cakePct} %) muss trockener sein als der Zulauf (${feedPct} %): beide auf vertauschte Ziffern prüfen.`,
  secondRunDose: "Dieser Betriebsversuch hat seinen Eintrag für dieses Polymer schon.",
};
