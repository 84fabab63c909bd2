import type { Pair } from "../../choice/pair.ts";
import { tQuantile } from "../../curve/distributions.ts";
import { offScale } from "../../curve/problem.ts";
import { codedOf, surfaceBounds, surfaceOnScale } from "../../curve/surface-bands.ts";
import type { SurfaceFit } from "../../curve/surface.ts";
import { sourceOf } from "../../methods/methods.ts";
import { doseReportWords } from "../../words/dose-report.ts";
import { madeChoiceWords } from "../../words/made-choice.ts";
import { madeFitWords as words } from "../../words/made-fit.ts";
import type { Targets } from "./choice.ts";
import type { Made, MadeInput } from "./figure.ts";
import type { SeriesChain } from "./jars.ts";
import type { MadeNumbers } from "./made-fit.ts";
import type { PairChain } from "./pair-choice.ts";

const terms = ["b0", "b1", "b2", "b11", "b22", "b12"];

/** A surface's coefficients on coded doses, with what its jars say of the scatter and where it turns. */
export function surfaceInputs({ coded, report, residualSd, scale }: SurfaceFit): MadeInput[] {
  const { stationary } = report;
  return [
    ...terms.map((name, k) => ({ name, value: coded.coefficients[k] ?? null, unit: "" })),
    { name: words.inputs.jars, value: report.n, unit: words.jarsCounted },
    {
      name: scale === "log" ? words.inputs.scatterOfLog : words.inputs.scatter,
      value: residualSd,
      unit: "",
    },
    ...(stationary
      ? [
          { name: words.inputs.stationary, value: doseReportWords.surface.kinds[stationary.kind], unit: "" },
          { name: words.inputs.doseA, value: stationary.x1, unit: "kg/t" },
          { name: words.inputs.doseB, value: stationary.x2, unit: "kg/t" },
          ...stationary.codedEigenvalues.map((value) => ({ name: words.inputs.curvatures, value, unit: "" })),
        ]
      : []),
  ];
}

const pairInputs = ({ a, b }: Pair): MadeInput[] => [
  { name: words.inputs.doseA, value: a, unit: "kg/t" },
  { name: words.inputs.doseB, value: b, unit: "kg/t" },
];

/** How a fitted response at a pair of doses and its one-sided bounds were made. */
export function fittedAtPairMade(surface: SurfaceFit, pair: Pair, unit: string): Made {
  const { mean, se } = surfaceOnScale(surface, pair.a, pair.b);
  const log = surface.scale === "log";
  const t = tQuantile(0.95, surface.df);
  const [u, v] = codedOf(surface, pair.a, pair.b);
  const { inputs: names } = words;
  return {
    formula: log ? words.fittedOnLog(words.surface) : words.fitted(words.surface),
    inputs: [
      ...pairInputs(pair),
      { name: names.codedA, value: u, unit: "" },
      { name: names.codedB, value: v, unit: "" },
      ...terms.map((name, k) => ({ name, value: surface.coded.coefficients[k] ?? null, unit: "" })),
      { name: log ? names.errorOfLog : names.error, value: se, unit: log ? "" : unit },
      { name: names.freedom, value: surface.df, unit: "" },
      { name: names.t, value: t, unit: "" },
      { name: names.low, value: offScale(mean - t * se, surface.scale), unit },
      { name: names.high, value: offScale(mean + t * se, surface.scale), unit },
    ],
    source: sourceOf("band"),
  };
}

/** How the cost at a pair of doses was made. */
export function pairCostMade(
  chain: SeriesChain,
  choice: PairChain,
  pair: Pair,
  targets: Targets | null,
  currency: string,
): Made {
  const cost = choice.costAt(pair);
  const { limitInputs: own, inputs: names } = madeChoiceWords;
  const [a, b] = [chain.stockA?.product, chain.stockB?.product];
  return {
    formula: madeChoiceWords.pairCost,
    inputs: [
      ...pairInputs(pair),
      { name: own.priceA, value: a?.pricePerKgNeat ?? null, unit: `${currency}/kg` },
      { name: own.activeA, value: a?.activePct ?? null, unit: "%" },
      { name: own.priceB, value: b?.pricePerKgNeat ?? null, unit: `${currency}/kg` },
      { name: own.activeB, value: b?.activePct ?? null, unit: "%" },
      { name: names.cake, value: choice.cakeAt(pair), unit: "%" },
      { name: own.assumedCapture, value: targets?.assumedCapturePct ?? null, unit: "%" },
      { name: names.disposalOfCake, value: targets?.disposalPerWetT ?? null, unit: `${currency}/t` },
      { name: `${names.polymer} A`, value: cost.polymerA, unit: currency },
      { name: `${names.polymer} B`, value: cost.polymerB, unit: currency },
      { name: names.disposal, value: cost.disposal, unit: currency },
    ],
    source: sourceOf("cost"),
  };
}

/** How the cheapest pair within all limits was found. */
export function cheapestPairMade(
  choice: PairChain,
  pair: Pair,
  currency: string,
  { number }: MadeNumbers,
): Made {
  const { limitInputs: own } = madeChoiceWords;
  return {
    formula: madeChoiceWords.cheapestPair,
    inputs: [
      ...pairInputs(pair),
      ...choice.limits.flatMap(({ limit, surface }) => {
        if (!surface) return [];
        const { low, high } = surfaceBounds(surface, pair.a, pair.b);
        const bound = number(limit.side === "at-most" ? high : low);
        return [{ name: limit.words, value: `${own.bound}: ${bound}`, unit: "" }];
      }),
      { name: own.cost, value: choice.costAt(pair).total, unit: `${currency}/t` },
    ],
    source: sourceOf("limits"),
  };
}
