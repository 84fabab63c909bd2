import {
  ageingTankL,
  batchTiming,
  landDoseLimitKgPerT,
  productUse,
  stockDays,
} from "../../plant/make-down-unit.ts";
import { sourceOf } from "../../methods/methods.ts";
import { plantInputWords } from "../../words/plant-inputs.ts";
import { unitChainWords } from "../../words/unit-chain.ts";
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
  const draw: MadeInput = { name: unitChainWords.solutionDrawn, value: one.rates.solutionLPerH, unit: "L/h" };
  const ageing = made(
    unitChainWords.ageingVolume.title,
    "volumeL",
    unitChainWords.ageingVolume.formula,
    [
      draw,
      { name: unitChainWords.ageingTime, value: makeDown.ageingMin, unit: "min" },
      { name: unitChainWords.deadVolume, value: makeDown.deadVolumePct, unit: "%" },
    ],
    ([solution, minutes, dead]) => ageingTankL(solution!, minutes!, dead!),
  );
  const times: MadeInput[] = [
    { name: unitChainWords.fillingTime, value: makeDown.fillMin, unit: "min" },
    { name: unitChainWords.wettingTime, value: makeDown.wetMin, unit: "min" },
    { name: unitChainWords.ageingTime, value: makeDown.ageingMin, unit: "min" },
    { name: unitChainWords.transferTime, value: makeDown.transferMin, unit: "min" },
  ];
  const batch: MadeInput = { name: unitChainWords.batch, value: makeDown.batchL, unit: "L" };
  const timing = (known: number[]) =>
    batchTiming(known[0]!, known[1]!, {
      fillMin: known[2]!,
      wetMin: known[3]!,
      ageMin: known[4]!,
      transferMin: known[5]!,
    });
  const lasts = made(
    unitChainWords.batchLasts.title,
    "minutes",
    unitChainWords.batchLasts.formula,
    [batch, draw],
    ([l, q]) => (l! * 60) / q!,
  );
  const ready = made(
    unitChainWords.nextTakes.title,
    "minutes",
    unitChainWords.nextTakes.formula,
    times,
    (known) => known.reduce((sum, value) => sum + value, 0),
  );
  const least = made(
    unitChainWords.leastBatch.title,
    "volumeL",
    unitChainWords.leastBatch.formula,
    [draw, ...times],
    ([q, ...minutes]) => (q! * minutes.reduce((sum, value) => sum + value, 0)) / 60,
  );
  const verdict = ((): UnitChain["verdict"] => {
    if (!(one.rates.solutionLPerH > 0)) return { tone: "missing", words: unitChainWords.nothingDrawn };
    if (makeDown.unit === "batch") {
      const inputs = [batch, draw, ...times];
      const lack = inputs.find((input) => input.value === null);
      if (lack) return { tone: "missing", words: unitChainWords.toTell(plantInputWords.enter(lack.name)) };
      const { keepsUp } = timing(inputs.map((input) => input.value as number));
      return keepsUp
        ? { tone: "good", words: unitChainWords.batchKeepsUp }
        : {
            tone: "bad",
            words: unitChainWords.batchTooSlow,
          };
    }
    if (ageing.figure.value === null)
      return { tone: "missing", words: unitChainWords.toTell(ageing.figure.missing ?? "") };
    if (makeDown.ageingTankL === null)
      return {
        tone: "missing",
        words: unitChainWords.enterTank,
      };
    return makeDown.ageingTankL >= ageing.figure.value
      ? { tone: "good", words: unitChainWords.tankKeepsUp }
      : {
          tone: "bad",
          words: unitChainWords.tankTooSmall,
        };
  })();
  const neat: MadeInput = { name: unitChainWords.neatProduct, value: one.rates.neatKgPerH, unit: "kg/h" };
  const hours: MadeInput[] = [
    { name: plantInputWords.hoursPerDay, value: feedCase.hoursPerDay, unit: "h" },
    { name: plantInputWords.daysPerYear, value: feedCase.daysPerYear, unit: "d" },
  ];
  const use = ([kg, h, d]: number[]) => productUse(kg!, h!, d!);
  const container: MadeInput = {
    name: unitChainWords.containerOf(product.label),
    value: product.containerKg,
    unit: "kg",
  };
  const figures: NamedFigure[] = [
    ageing,
    ...(makeDown.unit === "batch" ? [lasts, ready, least] : []),
    made(
      unitChainWords.neatPerDay.title,
      "massKg",
      unitChainWords.neatPerDay.formula,
      [neat, ...hours],
      (known) => use(known).kgPerDay,
    ),
    made(
      unitChainWords.neatPerMonth.title,
      "massKg",
      unitChainWords.neatPerMonth.formula,
      [neat, ...hours],
      (known) => use(known).kgPerMonth,
    ),
    made(
      unitChainWords.neatPerYear.title,
      "massKg",
      unitChainWords.neatPerYear.formula,
      [neat, ...hours],
      (known) => use(known).kgPerYear,
    ),
    made(
      unitChainWords.containersPerYear.title,
      "ratio",
      unitChainWords.containersPerYear.formula,
      [neat, ...hours, container],
      (known) => stockDays(use(known), known[3]!, 1).containersPerYear,
    ),
    made(
      unitChainWords.stockDays.title,
      "days",
      unitChainWords.stockDays.formula,
      [
        neat,
        ...hours,
        container,
        { name: unitChainWords.containersInStock, value: makeDown.containersInStock, unit: "" },
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
    unitChainWords.land.limitTitle,
    "doseKgPerT",
    unitChainWords.land.limitFormula,
    [
      { name: unitChainWords.land.limit, value: land.limitKgPerHa, unit: unitChainWords.land.limitUnit },
      { name: unitChainWords.land.drySolidsSpread, value: land.drySolidsTPerHa, unit: "t/ha" },
    ],
    ([kg, t]) => landDoseLimitKgPerT(kg!, t!),
    sourceOf("outlet"),
  ).figure;
  const total = made(
    unitChainWords.land.totalTitle,
    "doseKgPerT",
    unitChainWords.land.totalFormula,
    [
      {
        name: unitChainWords.land.doseHere,
        value: doses.length === 0 ? null : doses.reduce((sum, dose) => sum + dose, 0),
        unit: "kg/t",
      },
      { name: unitChainWords.land.doseElsewhere, value: land.otherDoseKgPerT, unit: "kg/t" },
    ],
    ([here, elsewhere]) => here! + elsewhere!,
    unitChainWords.land.totalSource,
  ).figure;
  const lack = limit.missing ?? total.missing;
  return {
    limit,
    total,
    verdict: lack
      ? { tone: "missing", words: unitChainWords.land.lacking(lack) }
      : total.value! <= limit.value!
        ? { tone: "good", words: unitChainWords.land.within }
        : {
            tone: "bad",
            words: unitChainWords.land.above,
          },
  };
}
