import { returnLoad, wetCakeWithPolymer } from "../../plant/make-down-unit.ts";
import { plantInputWords } from "../../words/plant-inputs.ts";
import { supplyFigureWords } from "../../words/supply-figures.ts";
import type { RecordOf } from "../schema/records.ts";
import type { MadeInput } from "./figure.ts";
import { made, type Asked, type NamedFigure } from "./plant-figures.ts";
import type { CaseChain, CasePolymer } from "./plant.ts";

/** Water and cost of one polymer for one feed case. Costs are in the study's currency. */
export function supplyFigures(
  one: CasePolymer,
  feedCase: RecordOf<"feedCase">,
  loadKgPerH: number,
): NamedFigure[] {
  const makeDown = one.polymer.makeDown!;
  const product = one.polymer.product!;
  const active: MadeInput = {
    name: supplyFigureWords.activePolymer,
    value: one.rates.activeKgPerH,
    unit: "kg/h",
  };
  const strength: MadeInput = {
    name: plantInputWords.strength,
    value: makeDown.solutionActivePct,
    unit: "%",
  };
  const share: MadeInput = {
    name: plantInputWords.activeShareOf(product.label),
    value: product.activePct,
    unit: "%",
  };
  const price: MadeInput = {
    name: supplyFigureWords.priceOf(product.label),
    value: product.pricePerKgNeat,
    unit: supplyFigureWords.perKgNeat,
  };
  const load: MadeInput = { name: plantInputWords.load, value: loadKgPerH, unit: "kg/h" };
  return [
    made(
      supplyFigureWords.makeUpWater.title,
      "kgPerH",
      supplyFigureWords.makeUpWater.formula,
      [active, strength, share],
      ([kg, w, a]) => kg! / (w! / 100) - kg! / (a! / 100),
    ),
    ...(makeDown.carrierActivePct === null
      ? []
      : [
          made(
            supplyFigureWords.carrierWater.title(makeDown.carrierActivePct),
            "flowLPerH",
            supplyFigureWords.carrierWater.formula,
            [
              active,
              strength,
              { name: supplyFigureWords.strengthAfterCarrier, value: makeDown.carrierActivePct, unit: "%" },
            ],
            ([kg, before, after]) => kg! / (after! / 100) - kg! / (before! / 100),
          ),
        ]),
    made(
      supplyFigureWords.polymerPerTonne.title,
      "costPerTDs",
      supplyFigureWords.polymerPerTonne.formula,
      [active, share, price, load],
      ([kg, a, p, l]) => (1000 * (kg! / (a! / 100)) * p!) / l!,
    ),
    made(
      supplyFigureWords.polymerPerYear.title,
      "costPerYear",
      supplyFigureWords.polymerPerYear.formula,
      [
        active,
        share,
        price,
        { name: plantInputWords.hoursPerDay, value: feedCase.hoursPerDay, unit: "h" },
        { name: plantInputWords.daysPerYear, value: feedCase.daysPerYear, unit: "d" },
      ],
      ([kg, a, p, h, d]) => (kg! / (a! / 100)) * p! * h! * d!,
    ),
  ];
}

/** Cake with the polymer that stays in it, and what returns with the filtrate, for a case with expected cake and capture. */
export function outletChain(
  one: CaseChain,
  expected: { cakePct: number | null; capturePct: number | null },
  washM3PerH: number | null,
): NamedFigure[] {
  const rates = one.rates.ok ? one.rates.value : null;
  const first = one.polymers[0];
  const load: MadeInput = { name: plantInputWords.load, value: one.load.value, unit: "kg/h" };
  const capture: Asked = {
    name: supplyFigureWords.expectedCapture,
    value: expected.capturePct,
    unit: "%",
    ask: supplyFigureWords.askCapture,
  };
  const cake: Asked = {
    name: supplyFigureWords.expectedCake,
    value: expected.cakePct,
    unit: "%",
    ask: supplyFigureWords.askCake,
  };
  const solution = one.polymers.reduce((sum, { rates: own }) => sum + own.solutionLPerH, 0);
  const carrier = one.polymers.reduce((sum, { rates: own }) => sum + (own.carrierLPerH ?? 0), 0);
  const concentration = made(
    supplyFigureWords.returnConcentration.title,
    "mgPerL",
    supplyFigureWords.returnConcentration.formula,
    [
      {
        ...capture,
        name: supplyFigureWords.solidsThatReturn,
        value: rates?.returnKgPerH ?? null,
        unit: "kg/h",
      },
      { ...cake, name: supplyFigureWords.wetCakeInput, value: rates?.wetCakeKgPerH ?? null, unit: "kg/h" },
      { name: plantInputWords.feedFlow, value: one.flowM3PerH, unit: "m³/h" },
      { name: supplyFigureWords.washWater, value: washM3PerH, unit: "m³/h" },
      { name: supplyFigureWords.solutionAndCarrier, value: solution + carrier, unit: "L/h" },
    ],
    ([kg, cakeKg, feed, wash]) =>
      returnLoad({
        returnKgPerH: kg!,
        wetCakeKgPerH: cakeKg!,
        feedM3PerH: feed!,
        washM3PerH: wash!,
        solutionLPerH: solution,
        carrierLPerH: carrier,
      })?.mgPerL ?? supplyFigureWords.noLiquid,
  );
  return [
    made(
      supplyFigureWords.wetCake.title,
      "kgPerH",
      supplyFigureWords.wetCake.formula,
      [load, capture, cake],
      ([l, r, c]) => (l! * r!) / c!,
    ),
    ...(first
      ? [
          made(
            supplyFigureWords.wetCakeWithPolymer.title,
            "kgPerH",
            supplyFigureWords.wetCakeWithPolymer.formula,
            [
              load,
              capture,
              cake,
              { name: plantInputWords.dose, value: first.polymer.doseKgPerT, unit: "kg/t" },
              {
                name: supplyFigureWords.retained,
                value: first.polymer.makeDown?.retainedPct ?? null,
                unit: "%",
              },
            ],
            ([l, r, c, dose, kept]) => wetCakeWithPolymer(l!, r!, c!, dose!, kept! / 100),
          ),
        ]
      : []),
    made(
      supplyFigureWords.returnedSolids.title,
      "kgPerH",
      supplyFigureWords.returnedSolids.formula,
      [load, capture],
      ([l, r]) => l! * (1 - r! / 100),
    ),
    concentration,
  ];
}
