import type { choiceWords } from "../choice.ts";

const all = (limits: string[]) => limits.map((limit) => `„${limit}“`).join(" und ");

export const choice: typeof choiceWords = {
  cheapest: "günstigste Dosis innerhalb aller Grenzwerte",
  lowest: "niedrigste Dosis innerhalb aller Grenzwerte",
  leastCost: "niedrigste Gesamtkosten",
  nearLeastCost: "niedrigste Dosis bis 1 % über den niedrigsten Kosten, innerhalb der Grenzwerte",
  mostDesirable: "höchste Erwünschtheit",
  narrowWindow: (guardPct) =>
    `Das Arbeitsfenster ist für einen Sicherheitsabstand von ${guardPct} % zu schmal.`,
  noLimit: "Zuerst einen Grenzwert setzen.",
  noPrice: "Kein Preis ist eingetragen, deshalb steht die niedrigste Dosis für die günstigste.",
  enterPrice: "Zuerst Preis und Wirksubstanzanteil des Polymers eintragen.",
  onlyPolymerPriced:
    "Nur das Polymer hat einen Preis, deshalb ist die niedrigste geprüfte Dosis die günstigste: einen Entsorgungspreis eintragen.",
  noneNear: "Keine Dosis innerhalb der Grenzwerte kommt bis auf 1 % an die niedrigsten Kosten heran.",
  desirability: (overall) => `Gesamte Erwünschtheit ${overall}.`,
  undesirable: "Bei jeder Dosis steht mindestens ein Wunsch auf seinem schlechtesten Wert.",
  neverMet: (limit) =>
    `„${limit}“ wird bei keiner geprüften Dosis sicher eingehalten: anderswo Becher fahren, Becher wiederholen oder den Grenzwert ändern.`,
  conflict: (one, other, nearest, unit) =>
    `Keine geprüfte Dosis hält ${all([one, other])} zugleich ein; am nächsten kommen sie sich bei ${nearest} ${unit}. Keiner der Grenzwerte wurde gelockert.`,
  pairNeverMet: (limit) =>
    `Kein geprüftes Paar hält „${limit}“ sicher ein: Paare ergänzen, Becher wiederholen oder den Grenzwert ändern.`,
  pairConflict: (limits) =>
    `Kein geprüftes Paar hält ${all(limits)} zugleich ein. Keiner der Grenzwerte wurde gelockert.`,
  pairConflictNear: (limits, a, b, unit) =>
    `Kein geprüftes Paar hält ${all(limits)} zugleich ein. Am nächsten kommen sie sich bei A ${a} und B ${b} ${unit}. Keiner der Grenzwerte wurde gelockert.`,
};
