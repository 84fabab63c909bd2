import type { numberEntryWords } from "../number-entry.ts";

export const numberEntry: typeof numberEntryWords = {
  empty: "Hier ist nichts eingetragen.",
  gap: (shown) => `„${shown}“ hat eine Lücke zwischen den Ziffern: Zahl ohne Tausendertrennung eingeben.`,
  marks: (shown) => `„${shown}“ hat mehr als ein Trennzeichen: Zahl ohne Tausendertrennung eingeben.`,
  more: (shown) =>
    `„${shown}“ ist mehr als eine Zahl: nur die Zahl eingeben, die Einheit steht neben dem Feld.`,
  notNumber: (shown) => `„${shown}“ ist keine Zahl: nur Ziffern eingeben.`,
  twoWays: (shown) =>
    `„${shown}“ lässt sich auf zwei Arten lesen: zuerst angeben, ob das Dezimalzeichen Punkt oder Komma ist.`,
  otherMark: (shown, mark) =>
    mark === ","
      ? `„${shown}“ hat einen Punkt, das Dezimalzeichen ist hier aber das Komma: bitte damit eingeben.`
      : `„${shown}“ hat ein Komma, das Dezimalzeichen ist hier aber der Punkt: bitte damit eingeben.`,
  tooLarge: (shown) => `„${shown}“ ist eine zu große Zahl.`,
  units: {
    asSuppliedKgPerT: "kg/t Handelsware",
    asSuppliedLbPerShortTon: "lb/short ton Handelsware",
    kgPerYear: "kg/a",
    lbPerYear: "lb/a",
    litrePerYear: "L/a",
    galPerYear: "gal/a",
    perTDrySolids: "je t TR",
    perYear: "je Jahr",
  },
};
