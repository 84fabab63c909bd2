import type { plantFormulaWords } from "../plant-formulas.ts";
import { counted } from "../language.ts";

const ask = "Den Lieferanten der Maschine und eine zugelassene Ingenieurfachkraft fragen.";

export const plantFormulas: typeof plantFormulaWords = {
  feed: {
    flow: "den Zulaufstrom eintragen",
    timedVolume: "das gestoppte Volumen eintragen",
    timedMinutes: "die Minuten dazu eintragen",
    tankArea: "die Fläche des Behälters eintragen",
    levelChange: "die Änderung des Füllstands eintragen",
    supply: "die Zufuhr eintragen",
    returned: "den Rücklauf eintragen",
    returnOrder: "der Rücklauf muss kleiner sein als die Zufuhr: beide prüfen",
  },
  present: {
    aboveZero: (name) => `${name} muss über 0 liegen.`,
  },
  pump: {
    oneDraw: "eine Auslitermessung ergibt noch keine Gerade: eine bei einer anderen Einstellung ergänzen.",
    oneSetting:
      "alle Auslitermessungen liegen bei einer Einstellung: eine bei einer anderen Einstellung ergänzen.",
    notRising:
      "der Förderstrom steigt nicht mit der Einstellung: Auslitermessungen auf vertauschte Zahlen prüfen.",
    fewForCurve:
      "eine Kurve braucht Auslitermessungen bei drei oder mehr Einstellungen: eine weitere Einstellung ergänzen.",
    turnsBack:
      "die Kurve kehrt innerhalb der gemessenen Einstellungen um: Ein Förderstrom hätte zwei Einstellungen.",
    repeat: "eine Auslitermessung bei einer Einstellung wiederholen",
    lineAsked: "Eine Gerade, wie verlangt.",
    linePasses: "Eine Gerade: Sie besteht den Test auf Modellabweichung.",
    lineUntold:
      "Eine Gerade; ohne Wiederholungen bei einer Einstellung lässt sich nicht sagen, ob sie sich krümmt.",
    lineFails: (curveFault) => `Die Gerade besteht den Test auf Modellabweichung nicht, und ${curveFault}`,
    curveAsked: "Eine Kurve, wie verlangt.",
    curveNeeded: "Eine Kurve: Die Gerade besteht den Test auf Modellabweichung nicht.",
  },
  machine: {
    width: "die wirksame Breite eintragen",
    loading: "die Belastung für diese Schlammart eintragen",
    feedFirst: "zuerst den Zulauf eintragen",
    overloaded: `Den Zulauf verringern, länger fahren oder die Breite vergrößern. ${ask}`,
    hydraulicLimit: "den hydraulischen Grenzwert eintragen",
    flooded: `Den Zulaufstrom verringern oder den Schlamm zuerst eindicken. ${ask}`,
    feedWindow: "den kleinsten und den größten TR des Zulaufs eintragen",
    totalSolids: "den Trockenrückstand des Zulaufs eintragen",
    tooThin: `Zu dünn: den Schlamm zuerst eindicken. ${ask}`,
    tooThick: `Zu dick: den Zulauf verdünnen, sonst mischt er sich nicht mit dem Polymer. ${ask}`,
    solidsThreshold: "die Schwelle für dünnen Zulauf eintragen",
    thinFeed: `Gilt als dünner Zulauf: Das Wasser, nicht der Feststoff, kann die Größe der Maschine bestimmen. ${ask}`,
    inorganicThresholds: "die beiden Schwellen des anorganischen Anteils eintragen",
    ashDishes: "die Schalen der Probe glühen, um den anorganischen Anteil zu erhalten",
    abrasive: `Über der oberen Schwelle: schwerer, abrasiver Schlamm; Durchsatz und Verschleiß sind anders. ${ask}`,
    betweenThresholds: `Zwischen den beiden Schwellen: die Belastung einem Versuch entnehmen, nicht einer Tabelle. ${ask}`,
  },
  runs: {
    load: "die TR-Fracht muss über 0 liegen",
    noWay:
      "eine Auslitermessung, den Masseverlust eines Gebindes oder die Einstellung einer kalibrierten Pumpe eintragen",
    oddLevels: "Ein Stufenversuch braucht eine ungerade Zahl von Stufen, 3 oder mehr.",
    stepsToZero: "Die Stufen reichen bis ganz ohne Polymer hinab: kleinere oder weniger Stufen nehmen.",
    twoPairs: "ein Vergleich braucht zwei Paare oder mehr",
    fewRuns: (needed, logged) =>
      `braucht ${counted(needed, "Betriebsversuch", "Betriebsversuche")} hintereinander, ${logged} ${logged === 1 ? "ist" : "sind"} eingetragen`,
    noScatter: "alle Betriebsversuche haben denselben Wert: keine Streuung, an der sich Drift erkennen ließe",
    noFactorRun: "noch kein Betriebsversuch zählt für den Übertragungsfaktor",
    factorDoses: "ein Übertragungsfaktor braucht Dosen über 0, im Labor und im Betrieb",
  },
  rates: {
    densityMissing: (path) =>
      `${path}.densityKgPerL fehlt: Der Mengenstrom eines flüssigen Produkts in Litern braucht sie.`,
    solutionAbove: (path, solutionPct, activePct) =>
      `${path}.solutionActivePct (${solutionPct}) liegt über activePct der Handelsware (${activePct}).`,
    carrierAbove: (path, carrierPct, solutionPct) =>
      `${path}.carrierActivePct (${carrierPct}) liegt über solutionActivePct (${solutionPct}).`,
    mixedDraws: (path) => `${path}.draws mischt mL/min und g/min: eines davon verwenden.`,
    dryByMass: (path) => `${path}.draws: Ein Trockendosierer wird nach Masse geprüft, in gPerMin.`,
    flowUnknown: (path) => `${path}: Die Dichte der Handelsware fehlt, ihr Förderstrom ist unbekannt.`,
  },
};
