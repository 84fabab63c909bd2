import type { plantWatchWords } from "../plant-watch.ts";

const outside = (run: string, what: string, where: "über" | "unter") =>
  `Betriebsversuch ${run}: ${what} liegt ${where} dem, was dieser Betrieb zeigt, solange sich nichts ändert. Schlamm, Polymer oder Maschine sind nicht mehr dieselben: die Becher wiederholen, bevor die Dosis geändert wird.`;

export const plantWatch: typeof plantWatchWords = {
  watched: { cake: "Kuchen-TR", filtrate: "TSS im Filtrat", dose: "Dosis" },
  outside: {
    above: (run, what) => outside(run, what, "über"),
    below: (run, what) => outside(run, what, "unter"),
  },
  oneSided: (run, what) =>
    `Acht Betriebsversuche hintereinander, bis ${run}, liegen auf einer Seite der Mitte (${what}): Etwas hat sich verschoben. Die Becher wiederholen.`,
  noDrift: "Keine Drift: Nichts spricht dafür, die Becher zu wiederholen.",
  method:
    "Einzelwertkarte: Mitte ± 3 x mittlere gleitende Spannweite / 1,128, aus allen Betriebsversuchen vor dem letzten (Shewhart, aus dem Gedächtnis); ein Quadrat ist ein Signal.",
  drift: (what) => `Drift: ${what}`,
  inUnit: (what, unit) => `${what}, ${unit}`,
  run: (run, value) => `Versuch ${run}: ${value}`,
  signalRun: (run, value) => `Versuch ${run}: ${value}, ein Signal`,
  orderOfTime: "Routineversuche in zeitlicher Reihenfolge",
  limits: { upper: "obere Grenze", middle: "Mitte", lower: "untere Grenze" },
  giveSides:
    "um zwei Einstellungen zu vergleichen, Betriebsversuchen eine Seite (A oder B) und eine Paarnummer geben",
  pickMachine: "Maschine wählen",
  enterHoldUp: "Füllvolumen der Maschine eintragen, mit dem Rohr hinter der Dosierstelle",
  enterUsualFlow: "üblichen Zulaufstrom eintragen",
};
