import type { plantMadeWords } from "../plant-made.ts";

export const plantMade: typeof plantMadeWords = {
  intercept: "Pumpengerade, Achsenabschnitt",
  slope: "Pumpengerade, Steigung",
  aStep: (unit) => `${unit} je Schritt der Einstellung`,
  lowest: "niedrigste ausgeliterte Einstellung",
  highest: "höchste ausgeliterte Einstellung",
  row: {
    formula:
      "Fracht = Zulaufstrom x 1000 x Dichte x TR; Förderstrom = Förderstrom des Falls x Fracht / Fracht des Falls; Einstellung = (Förderstrom - Achsenabschnitt) / Steigung auf einer Geraden; nichts außerhalb der ausgeliterten Einstellungen",
    totalSolids: "Trockenrückstand dieser Zeile",
    density: "Dichte des Zulaufs",
    pumpFlow: "Förderstrom des Falls",
    drySolids: "TR-Fracht des Falls",
  },
  step: {
    formula:
      "Dosis = Faktor x Labordosis x (1 + n x Stufe); Einstellung = (Förderstrom für diese Dosis - Achsenabschnitt) / Steigung",
    benchDose: "Labordosis",
    factor: "Faktor",
    noFactor: "keiner bekannt, als 1 angenommen",
    step: "Stufe",
    dose: "Dosis dieser Stufe",
    source: (plan, calibration) => `Plan: ${plan}; Pumpe: ${calibration}`,
  },
  drift: {
    formula: "Dosis jetzt = eingestellte Dosis x TR bei der Einstellung / TR jetzt",
    setAt: "TR bei der Einstellung",
  },
  disposal: {
    formula: "nasser Kuchen x Stunden je Tag x Tage je Jahr / 1000 x Preis der Entsorgung",
    wetCake: "nasser Kuchen",
    price: "Entsorgung des nassen Kuchens",
  },
  draw: {
    formula:
      "Förderstrom = aufgefangen / Sekunden x 60; Abstand = Förderstrom - Förderstrom der Pumpengerade bei dieser Einstellung",
    caught: "aufgefangen",
    seconds: "Sekunden",
    flowOfLine: "Förderstrom der Pumpengerade",
  },
  band: {
    formula:
      "Förderstrom bei der Einstellung x Sekunden / 60; Band: Streuung einer Auslitermessung und Fehler der Pumpengerade, Ablesung und Stoppuhr, quadratisch addiert, Student 95 %",
    scatter: "Streuung einer Auslitermessung",
    readWithin: "Ablesung auf ±",
    stopwatch: "Stoppuhr ±",
  },
};
