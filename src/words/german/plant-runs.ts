import type { plantRunWords } from "../plant-runs.ts";

export const plantRuns: typeof plantRunWords = {
  ways: {
    "draw-down": "Auslitern",
    container: "Masseverlust des Gebindes",
    "pump-line": "Pumpengerade bei der Einstellung",
  },
  activeBy: (way) => `Wirksubstanz nach: ${way}`,
  loadFormula: "Zulaufstrom x 1000 x Dichte x TR",
  totalSolidsOfRun: "Trockenrückstand des Betriebsversuchs",
  densityOfRun: "Dichte des Betriebsversuchs",
  enterFeedFlow: "Zulaufstrom des Betriebsversuchs eintragen",
  enterTotalSolids: "Trockenrückstand des Betriebsversuchs eintragen",
  waysDiffer: (product, spread) =>
    `${product}: Die Wege zur Dosis weichen um ${spread} % voneinander ab, mehr als 5 %: die falsche Messung finden, bevor die Dosis geändert wird.`,
  enterActiveShare: "Wirksubstanzanteil des Produkts eintragen",
  pickPump: "Pumpe wählen",
  enterCaught: "aufgefangene Menge und Sekunden eintragen",
  enterContainer: "Masseverlust des Gebindes und Stunden eintragen",
  enterSetting: "Einstellung der Pumpe eintragen",
  outsideProven: "die Einstellung liegt außerhalb des durch Auslitern nachgewiesenen Bereichs",
  doseFormula:
    "1000 x Wirksubstanz / Fracht; Auslitern gilt vor dem Gebinde, das Gebinde vor der Pumpengerade",
  washWater: "Waschwasser",
  addedLiquid: "zugegebene Flüssigkeit je Zulauf, nach Masse",
  enterCake: "Kuchen-TR eintragen",
  enterFiltrate: "TSS im Filtrat eintragen",
  enterWash: "Waschwasser eintragen (0 für keines)",
  needsDoses: "braucht die Dosen dieses Betriebsversuchs",
};
