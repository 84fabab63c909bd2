import { sludgeDensityKgPerL } from "../../sample/density.ts";
import { benchSourceOf } from "../../methods/bench-source.ts";
import {
  feedDifferenceLimitPct,
  replicates,
  totalSolidsPct,
  volatileSolidsPct,
} from "../../sample/solids.ts";
import { sampleChainWords } from "../../words/sample-chain.ts";
import type { RecordOf, StudyState } from "../schema/records.ts";
import { figure, missingFigure, type Figure, type Made } from "./figure.ts";
import { numberWords } from "./number-words.ts";
import { byNumberedName, memo } from "./memo.ts";
import type { StateTone } from "./tone.ts";

export interface DishChain {
  dish: RecordOf<"dish">;
  totalSolids: Figure;
  volatileSolids: Figure;
}

export interface SampleChain {
  totalSolids: Figure;
  /** standard uncertainty of the total solids in percent, null for a single dish or a provisional value */
  totalSolidsStandard: number | null;
  volatileSolids: Figure;
  density: Figure;
  /** what the density rests on, where it was not measured */
  densityNote: string;
  stage: "missing" | "provisional" | "final";
  tone: StateTone;
  dishes: DishChain[];
  warnings: string[];
}

const assumedVolatilePct = 75;

function dishChain(dish: RecordOf<"dish">): DishChain {
  const masses = (names: ("tareG" | "wetG" | "dryG" | "ashG")[]) =>
    names.map((name) => ({ name: sampleChainWords.masses[name], value: dish[name], unit: "g" }));
  const ts: Made = {
    formula: sampleChainWords.totalSolidsFormula,
    inputs: masses(["tareG", "wetG", "dryG"]),
    source: benchSourceOf("solids"),
  };
  const vs: Made = {
    formula: sampleChainWords.volatileFormula,
    inputs: masses(["tareG", "dryG", "ashG"]),
    source: benchSourceOf("solids"),
  };
  const total = totalSolidsPct(dish);
  const volatile = volatileSolidsPct(dish);
  return {
    dish,
    totalSolids: total.ok ? figure("percent", total.value, ts) : missingFigure("percent", total.message, ts),
    volatileSolids: volatile.ok
      ? figure("percent", volatile.value, vs)
      : missingFigure("percent", volatile.message, vs),
  };
}

function meanFigure(values: { label: string; value: number }[], formula: string, missing: string): Figure {
  const made: Made = {
    formula,
    inputs: values.map(({ label, value }) => ({ name: sampleChainWords.dish(label), value, unit: "%" })),
    source: benchSourceOf("solids"),
  };
  const summary = replicates(values.map(({ value }) => value));
  return summary.ok
    ? figure("percent", summary.value.mean, made, { spread: summary.value.halfWidth95 })
    : missingFigure("percent", missing, made);
}

/** A sample's solids and density with where each comes from. The sample must exist. */
export function sampleChain(state: StudyState, sampleId: string): SampleChain {
  const sample = state.sample[sampleId]!;
  const dishes = Object.values(state.dish)
    .filter((dish) => dish.sampleId === sampleId)
    .sort((a, b) => byNumberedName(a.label, b.label));
  const number = numberWords(state);
  const mark = state.study["study"]?.decimalMark;
  return known(sample, [mark, ...dishes], () => chainOf(sample, dishes.map(dishChain), number));
}

const known = memo<SampleChain>();

function chainOf(
  sample: RecordOf<"sample">,
  dishes: DishChain[],
  number: (value: number) => string,
): SampleChain {
  const used = dishes.filter(({ dish }) => dish.leftOut === null);
  const pick = (key: "totalSolids" | "volatileSolids") =>
    used.flatMap((chain) => {
      const { value } = chain[key];
      return value === null ? [] : [{ label: chain.dish.label, value }];
    });
  const totals = pick("totalSolids");
  const summary = replicates(totals.map(({ value }) => value));
  const warnings: string[] = [];
  let totalSolids = meanFigure(totals, sampleChainWords.meanTotalSolids, sampleChainWords.enterDishes);
  let stage: SampleChain["stage"] = "final";
  if (totals.length === 0) {
    stage = "missing";
    if (sample.provisionalTotalSolidsPct !== null) {
      stage = "provisional";
      totalSolids = figure(
        "percent",
        sample.provisionalTotalSolidsPct,
        {
          formula: sampleChainWords.asReadOnBalance,
          inputs: [{ name: sampleChainWords.balance, value: sample.provisionalTotalSolidsPct, unit: "%" }],
          source: sampleChainWords.balanceSource,
        },
        { given: true },
      );
      warnings.push(sampleChainWords.provisionalWarning);
    }
  }
  if (summary.ok && (summary.value.relativeDifferencePct ?? 0) > feedDifferenceLimitPct)
    warnings.push(
      sampleChainWords.dishesDiffer(number(summary.value.relativeDifferencePct!), feedDifferenceLimitPct),
    );
  if (totals.length === 1) warnings.push(sampleChainWords.oneDish);
  const volatileSolids = meanFigure(
    pick("volatileSolids"),
    sampleChainWords.meanVolatile,
    sampleChainWords.ashDishes,
  );
  return {
    totalSolids,
    totalSolidsStandard: summary.ok ? summary.value.standardError : null,
    volatileSolids,
    ...densityOf(sample, totalSolids.value, volatileSolids.value),
    stage,
    tone: stage === "final" ? "good" : stage === "provisional" ? "warn" : "missing",
    dishes,
    warnings,
  };
}

function densityOf(
  sample: RecordOf<"sample">,
  totalSolids: number | null,
  volatile: number | null,
): Pick<SampleChain, "density" | "densityNote"> {
  if (sample.densityKgPerL !== null)
    return {
      density: figure(
        "densityKgPerL",
        sample.densityKgPerL,
        {
          formula: sampleChainWords.asMeasured,
          inputs: [{ name: sampleChainWords.density, value: sample.densityKgPerL, unit: "kg/L" }],
          source: sampleChainWords.typed,
        },
        { given: true },
      ),
      densityNote: "",
    };
  const share = volatile ?? assumedVolatilePct;
  const made: Made = {
    formula: sampleChainWords.densityFormula,
    inputs: [
      { name: sampleChainWords.totalSolids, value: totalSolids, unit: "%" },
      {
        name: volatile === null ? sampleChainWords.volatileShareAssumed : sampleChainWords.volatileShare,
        value: share,
        unit: "%",
      },
    ],
    source: benchSourceOf("density"),
  };
  if (totalSolids === null)
    return {
      density: missingFigure("densityKgPerL", sampleChainWords.needsTotalSolids, made),
      densityNote: "",
    };
  return {
    density: figure("densityKgPerL", sludgeDensityKgPerL(totalSolids, share), made),
    densityNote:
      volatile === null
        ? sampleChainWords.densityAssumed(assumedVolatilePct)
        : sampleChainWords.densityEstimated,
  };
}
