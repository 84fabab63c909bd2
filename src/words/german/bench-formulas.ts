import type { benchFormulaWords } from "../bench-formulas.ts";

export const benchFormulas: typeof benchFormulaWords = {
  dish: {
    tareMissing: "die leere Schale ist noch nicht gewogen",
    wetMissing: "die Schale mit nassem Schlamm ist noch nicht gewogen",
    dryMissing: "die Schale ist noch nicht getrocknet",
    ashMissing: "die Schale ist noch nicht geglüht",
    wetOrder: "die Massen stehen nicht in der Reihenfolge leer < trocken < nass",
    ashOrder: "die Massen stehen nicht in der Reihenfolge leer < Asche < trocken",
    noValue: "noch kein Wert",
    filterVolume: "das filtrierte Volumen muss über 0 liegen",
    filterMass: "der getrocknete Filter muss mehr wiegen als der leere",
  },
  makeDown: {
    neatMass: "die Handelsware muss mehr als 0 wiegen",
    totalMass: "die gesamte Lösung muss mehr wiegen als die Handelsware darin",
    wantedStrength: "die gewünschte Konzentration muss über 0 liegen",
    wantedMass: "die Masse der Lösung muss über 0 liegen",
    tooStrong: (activePct) =>
      `die Handelsware selbst enthält nur ${activePct} % Wirksubstanz, diese Konzentration lässt sich daraus nicht ansetzen`,
    dilution: "die neue Konzentration muss über 0 liegen und darf nicht über der alten liegen",
  },
  dose: {
    sampleVolume: "das Probenvolumen muss über 0 liegen",
    sampleDensity: "die Dichte der Probe muss über 0 liegen",
    totalSolids: "der Trockenrückstand muss über 0 liegen: ohne Feststoff gibt es keine Dosis",
    strength: "die Konzentration der Lösung muss über 0 liegen",
    solutionDensity: "die Dichte der Lösung muss über 0 liegen",
  },
  capture: {
    feed: "der Feststoffgehalt des Zulaufs muss über 0 liegen",
    cake: "der Kuchen muss trockener sein als der Zulauf",
    filtrate: "das Filtrat muss weniger Feststoff enthalten als der Zulauf",
    added: "die zugegebene Flüssigkeit darf nicht negativ sein",
    balance: "mit dem Filtrat geht mehr Feststoff weg, als mit dem Zulauf gekommen ist: Ablesungen prüfen",
  },
  filtration: {
    suspendedSolids: "die abfiltrierbaren Stoffe müssen über 0 liegen",
    waterSlower:
      "der Schlamm kann auf demselben Papier nicht schneller entwässern als Wasser: Wasserblindwert prüfen",
    fewVolumes: "im geraden Teil werden mindestens drei Volumina gebraucht",
    sameVolumes: "die Volumina müssen sich unterscheiden",
    notCake: "t/V steigt nicht mit V: Das ist keine Kuchenfiltration",
    feed: "der Feststoffgehalt des Zulaufs muss über 0 liegen",
    cake: "der Kuchen muss mehr Feststoff enthalten als der Zulauf",
  },
  usualDoses: {
    practice: "übliche Praxis, ohne Quelle",
    memory: "Bereich aus Handbüchern, aus dem Gedächtnis",
  },
};
