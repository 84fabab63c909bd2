import type { sampleChainWords } from "../sample-chain.ts";

export const sampleChain: typeof sampleChainWords = {
  totalSolidsFormula: "100 (trocken - leer) / (nass - leer)",
  volatileFormula: "100 (trocken - Asche) / (trocken - leer)",
  masses: { tareG: "Leermasse", wetG: "Masse nass", dryG: "Masse trocken", ashG: "Masse der Asche" },
  dish: (label) => `Schale ${label}`,
  meanTotalSolids: "Mittel des Trockenrückstands der Schalen; Streuung t(n - 1) s / sqrt(n) bei 95 %",
  meanVolatile: "Mittel des Glühverlusts der Schalen; Streuung t(n - 1) s / sqrt(n) bei 95 %",
  enterDishes: "Massen der Schalen eintragen oder einen vorläufigen Wert von der Feuchtewaage",
  ashDishes: "Schalen glühen, um den Glühverlust zu erhalten",
  asReadOnBalance: "wie an der Feuchtewaage abgelesen",
  balance: "Feuchtewaage",
  balanceSource: "im Labor eingetragen; vorläufig, bis die Schalen trocken sind",
  provisionalWarning:
    "Der Trockenrückstand ist vorläufig: Jede Dosis verschiebt sich, wenn die Schalen trocken sind.",
  dishesDiffer: (difference, limitPct) =>
    `Die Schalen weichen um ${difference} % ihres Mittelwerts voneinander ab, mehr als ${limitPct} %: eine weitere Schale trocknen.`,
  oneDish: "Eine Schale allein hat keine Streuung: eine zweite trocknen.",
  asMeasured: "wie gemessen",
  typed: "im Labor eingetragen",
  density: "Dichte",
  densityFormula: "1 / (TR / Feststoffdichte + (1 - TR) / Wasser), Feststoffdichte aus dem Glühverlust",
  totalSolids: "Trockenrückstand",
  volatileShare: "Glühverlust",
  volatileShareAssumed: "Glühverlust, angenommen",
  needsTotalSolids: "braucht zuerst den Trockenrückstand",
  densityAssumed: (volatilePct) =>
    `Geschätzt mit einem angenommenen Glühverlust von ${volatilePct} % (übliche Praxis, ohne Quelle), bis die Schalen geglüht sind.`,
  densityEstimated: "Aus Trockenrückstand und Glühverlust geschätzt.",
};
