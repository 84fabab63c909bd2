import { returnLoad, wetCakeWithPolymer } from "../../plant/make-down-unit.ts";
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
  const active: MadeInput = { name: "active polymer", value: one.rates.activeKgPerH, unit: "kg/h" };
  const strength: MadeInput = { name: "solution strength", value: makeDown.solutionActivePct, unit: "%" };
  const share: MadeInput = { name: `active share of ${product.label}`, value: product.activePct, unit: "%" };
  const price: MadeInput = {
    name: `price of ${product.label}`,
    value: product.pricePerKgNeat,
    unit: "per kg neat",
  };
  const load: MadeInput = { name: "dry-solids load", value: loadKgPerH, unit: "kg/h" };
  return [
    made(
      "Make-up water",
      "kgPerH",
      "active / strength - active / active share",
      [active, strength, share],
      ([kg, w, a]) => kg! / (w! / 100) - kg! / (a! / 100),
    ),
    ...(makeDown.carrierActivePct === null
      ? []
      : [
          made(
            `Carrier water to ${makeDown.carrierActivePct} %`,
            "flowLPerH",
            "active / strength after - active / strength before, water at 1.000 kg/L",
            [
              active,
              strength,
              { name: "strength after carrier water", value: makeDown.carrierActivePct, unit: "%" },
            ],
            ([kg, before, after]) => kg! / (after! / 100) - kg! / (before! / 100),
          ),
        ]),
    made(
      "Polymer, per t dry solids",
      "costPerTDs",
      "1000 x neat x price / load",
      [active, share, price, load],
      ([kg, a, p, l]) => (1000 * (kg! / (a! / 100)) * p!) / l!,
    ),
    made(
      "Polymer, a year",
      "costPerYear",
      "neat x price x hours x days",
      [
        active,
        share,
        price,
        { name: "hours a day", value: feedCase.hoursPerDay, unit: "h" },
        { name: "days a year", value: feedCase.daysPerYear, unit: "d" },
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
  const load: MadeInput = { name: "dry-solids load", value: one.load.value, unit: "kg/h" };
  const capture: Asked = {
    name: "expected capture",
    value: expected.capturePct,
    unit: "%",
    ask: "read filtrate and cake on the bench, or assume a capture in the Dose room",
  };
  const cake: Asked = {
    name: "expected cake TS",
    value: expected.cakePct,
    unit: "%",
    ask: "read the cake on the bench",
  };
  const solution = one.polymers.reduce((sum, { rates: own }) => sum + own.solutionLPerH, 0);
  const carrier = one.polymers.reduce((sum, { rates: own }) => sum + (own.carrierLPerH ?? 0), 0);
  const concentration = made(
    "Solids in what returns",
    "mgPerL",
    "returned solids / (feed + solution + carrier + wash - cake), cake at 1.000 kg/L",
    [
      { ...capture, name: "solids that return", value: rates?.returnKgPerH ?? null, unit: "kg/h" },
      { ...cake, name: "wet cake", value: rates?.wetCakeKgPerH ?? null, unit: "kg/h" },
      { name: "feed flow", value: one.flowM3PerH, unit: "m³/h" },
      { name: "wash water of the machine", value: washM3PerH, unit: "m³/h" },
      { name: "solution and carrier water", value: solution + carrier, unit: "L/h" },
    ],
    ([kg, cakeKg, feed, wash]) =>
      returnLoad({
        returnKgPerH: kg!,
        wetCakeKgPerH: cakeKg!,
        feedM3PerH: feed!,
        washM3PerH: wash!,
        solutionLPerH: solution,
        carrierLPerH: carrier,
      })?.mgPerL ?? "no liquid would be left beside the cake: check flows and cake",
  );
  return [
    made(
      "Wet cake",
      "kgPerH",
      "load x capture / cake TS",
      [load, capture, cake],
      ([l, r, c]) => (l! * r!) / c!,
    ),
    ...(first
      ? [
          made(
            "Wet cake, polymer counted",
            "kgPerH",
            "load x capture x (1 + dose x retained) / cake TS",
            [
              load,
              capture,
              cake,
              { name: "dose, active", value: first.polymer.doseKgPerT, unit: "kg/t" },
              {
                name: "share of polymer kept in the cake",
                value: first.polymer.makeDown?.retainedPct ?? null,
                unit: "%",
              },
            ],
            ([l, r, c, dose, kept]) => wetCakeWithPolymer(l!, r!, c!, dose!, kept! / 100),
          ),
        ]
      : []),
    made(
      "Solids that return",
      "kgPerH",
      "load x (1 - capture)",
      [load, capture],
      ([l, r]) => l! * (1 - r! / 100),
    ),
    concentration,
  ];
}
