import { area } from "./language.ts";

/** Water, cost and cake of a feed case: figures by title, how they were made, and what to do for a missing one. */
export const supplyFigureWords = area("supplyFigures", {
  activePolymer: "active polymer",
  priceOf: (product: string) => `price of ${product}`,
  perKgNeat: "per kg neat",
  strengthAfterCarrier: "strength after carrier water",
  expectedCapture: "expected capture",
  askCapture: "read filtrate and cake on the bench, or assume a capture in the Dose room",
  expectedCake: "expected cake TS",
  askCake: "read the cake on the bench",
  solidsThatReturn: "solids that return",
  wetCakeInput: "wet cake",
  washWater: "wash water of the machine",
  solutionAndCarrier: "solution and carrier water",
  retained: "share of polymer kept in the cake",
  noLiquid: "no liquid would be left beside the cake: check flows and cake",
  makeUpWater: { title: "Make-up water", formula: "active / strength - active / active share" },
  carrierWater: {
    title: (pct: number) => `Carrier water to ${pct} %`,
    formula: "active / strength after - active / strength before, water at 1.000 kg/L",
  },
  polymerPerTonne: { title: "Polymer, per t dry solids", formula: "1000 x neat x price / load" },
  polymerPerYear: { title: "Polymer, a year", formula: "neat x price x hours x days" },
  returnConcentration: {
    title: "Solids in what returns",
    formula: "returned solids / (feed + solution + carrier + wash - cake), cake at 1.000 kg/L",
  },
  wetCake: { title: "Wet cake", formula: "load x capture / cake TS" },
  wetCakeWithPolymer: {
    title: "Wet cake, polymer counted",
    formula: "load x capture x (1 + dose x retained) / cake TS",
  },
  returnedSolids: { title: "Solids that return", formula: "load x (1 - capture)" },
});
