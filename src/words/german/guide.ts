import type { guideWords } from "../guide.ts";

export const guide: typeof guideWords = {
  name: "Wegweiser",
  step: (place, steps) => `Schritt ${place} von ${steps}`,
  said: (place, steps, title) => `Schritt ${place} von ${steps}: ${title}.`,
  done: "Der Wegweiser ist am Ziel: Die ersten Pumpeneinstellungen stehen.",
  see: "Zu den Einstellungen",
  close: "Wegweiser schließen",
  hidden: "Der Wegweiser ist ausgeblendet. „Tasten und Wörter“ zeigt ihn wieder.",
  takeMe: "Dorthin",
  all: "Alle Schritte",
  hide: "Wegweiser ausblenden",
  standing: { done: "erledigt", passed: "nicht mehr nötig", next: "als Nächstes" },
  titles: {
    sample: "Probe eintragen",
    solids: "Schalen wiegen",
    product: "Polymer angeben",
    stock: "Stammlösung ansetzen",
    series: "Reihe beginnen und Becher anlegen",
    readings: "Becher ablesen",
    curve: "Eine Kurve gewinnen, die eine Dosis nennt",
    dose: "Dosis wählen und freigeben",
    feed: "Zulauf eintragen",
    pump: "Ansetzen und Pumpe",
    settings: "Pumpeneinstellungen ablesen",
  },
  sample: "Jede Dosis ist Polymer je Trockenrückstand, darum kommt der Schlamm zuerst.",
  solids: {
    dishes: "Die Schalen ergeben den Trockenrückstand.",
    masses:
      "Leer, mit nassem Schlamm, getrocknet: Die drei Massen ergeben den Trockenrückstand. Bis dahin genügt eine Feuchtewaage.",
  },
  product: {
    active: (product) =>
      `Den Wirksubstanzanteil von ${product} eintragen: Er steht auf dem Zertifikat des Lieferanten. Oft stehen dort auch Dichte und Preis: Auf ihnen beruhen Pumpenströme und Kosten.`,
    needed:
      "Eine Dosis zählt nur Wirksubstanz, darum werden das Produkt und sein Wirksubstanzanteil gebraucht.",
  },
  stock: {
    open: (stock, missing) => `${stock}: ${missing}.`,
    enterDensity: "die Dichte der Lösung eintragen",
    needed: "Dosiert wird aus einer Lösung bekannter Konzentration: Handelsware, in Wasser eingewogen.",
  },
  series: {
    needed: "Eine Reihe sind Becher aus einer Probe, jeder mit seiner eigenen Dosis.",
    pickStock: "Die Stammlösung wählen, aus der die Becher dosiert werden.",
    volume: "Angeben, wie viel Schlamm jeder Becher enthält.",
    layOut: "Eine Dosisleiter planen und ihre Becher anlegen oder Becher mit eigenen Dosen hinzufügen.",
    allDosed: "Jeder Becher hat seine Dosis.",
    undosed: (jar, missing) => `Becher ${jar} hat keine Dosis: ${missing}.`,
    enterSyringe: "das Spritzenvolumen eintragen",
  },
  readings: {
    next: (jar, unread) =>
      `Becher ${jar} ist der nächste in der Reihenfolge; ${unread} Becher ${unread === 1 ? "hat" : "haben"} noch keine Ablesung. „Becher abarbeiten“ führt durch Rühren und Zeiten.`,
    needed: "Jeden Becher rühren, entwässern und ablesen: Filtrat, Entwässerung, Kuchen.",
  },
  curve: {
    running: "Die Kurven werden angepasst.",
    moreJars: "Weitere Becher planen",
    refused: (sentence) =>
      `${sentence} Mehr Becher helfen, oder im Raum Dosis nach eigenem Urteil eine Dosis wählen.`,
    needed: "Sobald genug Becher abgelesen sind, wird jede Messgröße über der Dosis gezeichnet.",
  },
  dose: "Grenzwerte und Kosten bei jeder Dosis ansehen, dann eine mit Begründung und Namen freigeben.",
  feed: {
    known: "der Zulauf ist bekannt",
    needed: "Wie viel Schlamm die Maschine in einer Stunde bekommt, macht aus der Dosis einen Mengenstrom.",
  },
  pump: {
    density: (product) =>
      `Die Dichte der Handelsware ${product} eintragen: Eine Pumpe fördert Volumen, eine Dosis zählt Masse. Die freigegebene Dosis bleibt.`,
    needed:
      "Angeben, wie der Betrieb das Polymer ansetzt, und seine Pumpe bei einigen Einstellungen auslitern.",
    of: (pump, message) => `${pump}: ${message}`,
    draw: (sentence) =>
      `${sentence} Was sie fördert, eine gestoppte Minute lang auffangen, bei zwei Einstellungen oder mehr.`,
    add: (product) => `Die Pumpe hinzufügen, die ${product} fördert.`,
    thePolymer: "das Polymer",
  },
  settings: {
    outside:
      "Der benötigte Förderstrom liegt außerhalb der Einstellungen, bei denen die Pumpe ausgelitert wurde: weiter außen auslitern oder die Konzentration der Lösung ändern.",
    needed: "Aus Dosis, Zulauf und Pumpengerade folgt die Einstellung.",
  },
};
