import type { plantDoseWords } from "../plant-dose.ts";

export const plantDose: typeof plantDoseWords = {
  curveFit: "Anpassung der Laborkurve",
  benchScale: "Laborskala",
  benchDose: "Labordosis, wie freigegeben",
  factor: (title, runs) =>
    `Übertragungsfaktor, ${title}, ${runs} ${runs === 1 ? "Betriebsversuch" : "Betriebsversuche"}`,
  nextRun: "Faktor des nächsten Betriebsversuchs",
  notKnown: "nicht bekannt, im Bereich nicht enthalten",
  oneRun: "ein Betriebsversuch allein hat keine Streuung",
  withFactor:
    "Labordosis x Faktor; Bereich aus den Anteilen quadratisch addiert, jeder zu seinen eigenen 95 % (Student für den Faktor)",
  withoutFactor: "Labordosis; Bereich aus den Anteilen quadratisch addiert, zu 95 %",
  sayMakeDown: (letter, product) => `Polymer ${letter}: angeben, wie ${product} im Betrieb angesetzt wird`,
  enterActiveShareOf: (letter, product) => `Polymer ${letter}: Wirksubstanzanteil von ${product} eintragen`,
  enterDensityOf: (letter, product) => `Polymer ${letter}: Dichte von ${product} eintragen`,
  enterPlantStrength: (letter) => `Polymer ${letter}: Konzentration der Lösung im Betrieb eintragen`,
  enterPlantDensity: (letter) => `Polymer ${letter}: Dichte der Lösung im Betrieb eintragen`,
  lacksFactor: (letter, why) =>
    `Polymer ${letter}: ${why}; einen Betriebsversuch eintragen oder die Labordosis unverändert verwenden`,
  flowFormula:
    "1000 x Förderstrom x Dichte x Konzentration / Fracht; Bereich 2 x seine Anteile, quadratisch addiert",
  flowCaught: "ausgeliterter Förderstrom",
  flowDensity: "Dichte der geförderten Flüssigkeit",
  cancels: "dieselbe Charge im Labor und hier: hebt sich auf",
  enterFeed: "Zulauf eintragen",
  enterActiveShare: "Wirksubstanzanteil eintragen",
  enterStrength: "Konzentration der Lösung eintragen",
  enterFlowDensity: "Dichte der von der Pumpe geförderten Flüssigkeit eintragen",
};
