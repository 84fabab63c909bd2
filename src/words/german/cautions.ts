import type { cautionWords } from "../cautions.ts";

export const cautions: typeof cautionWords = {
  makeDown: {
    dataSheet:
      "Zuerst das Sicherheitsdatenblatt des Produkts lesen. Schutzbrille, Handschuhe und Schürze; Augendusche in Reichweite.",
    slippery:
      "Polymer auf dem Boden ist äußerst rutschig und kaum zu sehen, und Wasser macht es schlimmer: absperren, mit inertem Granulat aufnehmen, nach Datenblatt entsorgen.",
    forms:
      "Pulver: Staub vermeiden und absaugen, keine Zündquelle. Emulsion: öliger Träger. Mannich-Typ: Formaldehyd und Amin. Metallsalze: Säure. Entgegengesetzte Ladungen nie vormischen.",
    gas: "Geöffnete Eimer und Behälter mit Schlamm können Schwefelwasserstoff abgeben: lüften, Gaswarngerät tragen, nie allein. Hände waschen, nicht essen.",
  },
  plant: {
    valves:
      "Vor dem Start einer Pumpe prüfen, dass die saug- und druckseitigen Ventile offen sind: Eine Verdrängerpumpe gegen ein geschlossenes Ventil bringt etwas zum Bersten. Das Überdruckventil muss eingebaut und an eine sichere Stelle abgeleitet sein.",
    lockOut:
      "Vor dem Öffnen von Pumpe, Band, Walze oder Schnecke abschalten, gegen Wiedereinschalten sichern und kennzeichnen. Leitungen unter Druck entspannen. Auf drehende Teile achten.",
    slippery: "Verschüttetes Polymer ist äußerst rutschig: Tropfen an der Auslitersäule auffangen.",
    figures:
      "Diese Zahlen sind eine Empfehlung, zu prüfen durch eine verantwortliche, zugelassene Ingenieurfachkraft und durch die Lieferanten von Maschine und Produkt. Sicherheitsdatenblatt, örtliche Vorschriften und das Urteil zugelassener Fachkräfte gehen vor.",
  },
};
