import {
  ageingTankL,
  batchTiming,
  landDoseLimitKgPerT,
  productUse,
  stockDays,
} from "../../plant/make-down-unit.ts";
import { sourceOf } from "../../methods/methods.ts";
import type { RecordOf } from "../schema/records.ts";
import type { Figure, MadeInput } from "./figure.ts";
import { made, type NamedFigure } from "./plant-figures.ts";
import type { CasePolymer } from "./plant.ts";
import type { StateTone } from "./tone.ts";

export interface UnitChain {
  figures: NamedFigure[];
  /** whether the unit keeps up, in words */
  verdict: { tone: StateTone; words: string };
}

/** The make-down unit of one polymer for one feed case: ageing volume, batch timing, use, containers, days of stock. */
export function unitChain(one: CasePolymer, feedCase: RecordOf<"feedCase">): UnitChain {
  const makeDown = one.polymer.makeDown!;
  const product = one.polymer.product!;
  const draw: MadeInput = { name: "solution drawn", value: one.rates.solutionLPerH, unit: "L/h" };
  const ageing = made(
    "Ageing volume needed",
    "volumeL",
    "solution x ageing time x (1 + dead volume)",
    [
      draw,
      { name: "ageing time", value: makeDown.ageingMin, unit: "min" },
      { name: "dead volume", value: makeDown.deadVolumePct, unit: "%" },
    ],
    ([solution, minutes, dead]) => ageingTankL(solution!, minutes!, dead!),
  );
  const times: MadeInput[] = [
    { name: "filling time", value: makeDown.fillMin, unit: "min" },
    { name: "wetting time", value: makeDown.wetMin, unit: "min" },
    { name: "ageing time", value: makeDown.ageingMin, unit: "min" },
    { name: "transfer time", value: makeDown.transferMin, unit: "min" },
  ];
  const batch: MadeInput = { name: "batch", value: makeDown.batchL, unit: "L" };
  const timing = (known: number[]) =>
    batchTiming(known[0]!, known[1]!, {
      fillMin: known[2]!,
      wetMin: known[3]!,
      ageMin: known[4]!,
      transferMin: known[5]!,
    });
  const lasts = made(
    "One batch lasts",
    "minutes",
    "60 x batch / solution drawn",
    [batch, draw],
    ([l, q]) => (l! * 60) / q!,
  );
  const ready = made("The next one takes", "minutes", "fill + wet + age + transfer", times, (known) =>
    known.reduce((sum, value) => sum + value, 0),
  );
  const least = made(
    "Batch that just keeps up",
    "volumeL",
    "solution drawn x (fill + wet + age + transfer)",
    [draw, ...times],
    ([q, ...minutes]) => (q! * minutes.reduce((sum, value) => sum + value, 0)) / 60,
  );
  const verdict = ((): UnitChain["verdict"] => {
    if (!(one.rates.solutionLPerH > 0)) return { tone: "missing", words: "Nothing is drawn at a dose of 0." };
    if (makeDown.unit === "batch") {
      const inputs = [batch, draw, ...times];
      const lack = inputs.find((input) => input.value === null);
      if (lack)
        return { tone: "missing", words: `To tell whether the unit keeps up: enter the ${lack.name}.` };
      const { keepsUp } = timing(inputs.map((input) => input.value as number));
      return keepsUp
        ? { tone: "good", words: "The unit keeps up: a batch lasts longer than the next one takes." }
        : {
            tone: "bad",
            words:
              "The unit does not keep up: a batch is used before the next is ready. Larger batches, a second tank, a stronger solution, or a shorter day of feed.",
          };
    }
    if (ageing.figure.value === null)
      return { tone: "missing", words: `To tell whether the unit keeps up: ${ageing.figure.missing}.` };
    if (makeDown.ageingTankL === null)
      return {
        tone: "missing",
        words: "To tell whether the unit keeps up: enter the ageing tank that is there.",
      };
    return makeDown.ageingTankL >= ageing.figure.value
      ? { tone: "good", words: "The unit keeps up: the ageing tank is large enough for this draw." }
      : {
          tone: "bad",
          words:
            "The ageing tank is too small for this draw: polymer leaves it before it has aged. A larger tank, a stronger solution or less feed.",
        };
  })();
  const neat: MadeInput = { name: "neat product", value: one.rates.neatKgPerH, unit: "kg/h" };
  const hours: MadeInput[] = [
    { name: "hours a day", value: feedCase.hoursPerDay, unit: "h" },
    { name: "days a year", value: feedCase.daysPerYear, unit: "d" },
  ];
  const use = ([kg, h, d]: number[]) => productUse(kg!, h!, d!);
  const container: MadeInput = {
    name: `container of ${product.label}`,
    value: product.containerKg,
    unit: "kg",
  };
  const figures: NamedFigure[] = [
    ageing,
    ...(makeDown.unit === "batch" ? [lasts, ready, least] : []),
    made("Neat product a day", "massKg", "neat x hours", [neat, ...hours], (known) => use(known).kgPerDay),
    made(
      "Neat product a month",
      "massKg",
      "a twelfth of the year",
      [neat, ...hours],
      (known) => use(known).kgPerMonth,
    ),
    made(
      "Neat product a year",
      "massKg",
      "neat x hours x days",
      [neat, ...hours],
      (known) => use(known).kgPerYear,
    ),
    made(
      "Containers a year",
      "ratio",
      "use a year / container",
      [neat, ...hours, container],
      (known) => stockDays(use(known), known[3]!, 1).containersPerYear,
    ),
    made(
      "Running days in stock",
      "days",
      "containers x container / use a day",
      [
        neat,
        ...hours,
        container,
        { name: "containers in stock", value: makeDown.containersInStock, unit: "" },
      ],
      (known) => stockDays(use(known), known[3]!, known[4]!).days,
    ),
  ];
  return { figures: one.rates.neatKgPerH > 0 ? figures : figures.slice(0, 1), verdict };
}

export interface LandChain {
  limit: Figure;
  total: Figure;
  verdict: { tone: StateTone; words: string };
}

/** Polymer per hectare against the user's own figures; both polymers and what is dosed elsewhere count together. */
export function landChain(land: RecordOf<"landLimit">, doses: number[]): LandChain {
  const limit = made(
    "Highest dose",
    "doseKgPerT",
    "limit per hectare / dry solids spread in the same years",
    [
      { name: "limit", value: land.limitKgPerHa, unit: "kg active/ha" },
      { name: "dry solids spread", value: land.drySolidsTPerHa, unit: "t/ha" },
    ],
    ([kg, t]) => landDoseLimitKgPerT(kg!, t!),
    sourceOf("outlet"),
  ).figure;
  const total = made(
    "Dose, all together",
    "doseKgPerT",
    "doses here + dosed elsewhere",
    [
      {
        name: "dose here",
        value: doses.length === 0 ? null : doses.reduce((sum, dose) => sum + dose, 0),
        unit: "kg/t",
      },
      { name: "dose elsewhere on the same solids (0 for none)", value: land.otherDoseKgPerT, unit: "kg/t" },
    ],
    ([here, elsewhere]) => here! + elsewhere!,
    "sum",
  ).figure;
  const lack = limit.missing ?? total.missing;
  const defer = "Local rules govern, and this is no legal advice.";
  return {
    limit,
    total,
    verdict: lack
      ? { tone: "missing", words: `To have this check: ${lack}.` }
      : total.value! <= limit.value!
        ? { tone: "good", words: `Within the limit entered. ${defer}` }
        : {
            tone: "bad",
            words: `Above the limit entered: less polymer, another way of disposal, or spread on more land. ${defer}`,
          },
  };
}
