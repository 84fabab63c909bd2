import { sludgeDensityKgPerL } from "../../sample/density.ts";
import { sourceOf } from "../../methods/methods.ts";
import {
  feedDifferenceLimitPct,
  replicates,
  totalSolidsPct,
  volatileSolidsPct,
} from "../../sample/solids.ts";
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

const solidsSource = sourceOf("solids");
const densitySource = sourceOf("density");
const assumedVolatilePct = 75;

function dishChain(dish: RecordOf<"dish">): DishChain {
  const masses = (names: ("tareG" | "wetG" | "dryG" | "ashG")[]) =>
    names.map((name) => ({ name: name.replace("G", " mass"), value: dish[name], unit: "g" }));
  const ts: Made = {
    formula: "100 (dry - tare) / (wet - tare)",
    inputs: masses(["tareG", "wetG", "dryG"]),
    source: solidsSource,
  };
  const vs: Made = {
    formula: "100 (dry - ash) / (dry - tare)",
    inputs: masses(["tareG", "dryG", "ashG"]),
    source: solidsSource,
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

function meanFigure(values: { label: string; value: number }[], what: string, missing: string): Figure {
  const made: Made = {
    formula: `mean of the dishes' ${what}; spread t(n - 1) s / sqrt(n) at 95 %`,
    inputs: values.map(({ label, value }) => ({ name: `dish ${label}`, value, unit: "%" })),
    source: solidsSource,
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
  let totalSolids = meanFigure(
    totals,
    "total solids",
    "enter the dish masses, or a provisional value from the moisture balance",
  );
  let stage: SampleChain["stage"] = "final";
  if (totals.length === 0) {
    stage = "missing";
    if (sample.provisionalTotalSolidsPct !== null) {
      stage = "provisional";
      totalSolids = figure("percent", sample.provisionalTotalSolidsPct, {
        formula: "as read on the moisture balance",
        inputs: [{ name: "moisture balance", value: sample.provisionalTotalSolidsPct, unit: "%" }],
        source: "typed by the technician; provisional until the dishes are dry",
      });
      warnings.push("Total solids are provisional: every dose will move when the dishes are dry.");
    }
  }
  if (summary.ok && (summary.value.relativeDifferencePct ?? 0) > feedDifferenceLimitPct)
    warnings.push(
      `The dishes differ by ${number(summary.value.relativeDifferencePct!)} % of their mean, more than ${feedDifferenceLimitPct} %: dry another dish.`,
    );
  if (totals.length === 1) warnings.push("One dish alone has no spread: dry a second one.");
  const volatileSolids = meanFigure(
    pick("volatileSolids"),
    "volatile share",
    "ash the dishes to have the volatile share",
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
      density: figure("densityKgPerL", sample.densityKgPerL, {
        formula: "as measured",
        inputs: [{ name: "density", value: sample.densityKgPerL, unit: "kg/L" }],
        source: "typed by the technician",
      }),
      densityNote: "",
    };
  const share = volatile ?? assumedVolatilePct;
  const made: Made = {
    formula: "1 / (TS / solids density + (1 - TS) / water), solids density from the volatile share",
    inputs: [
      { name: "total solids", value: totalSolids, unit: "%" },
      { name: volatile === null ? "volatile share, assumed" : "volatile share", value: share, unit: "%" },
    ],
    source: densitySource,
  };
  if (totalSolids === null)
    return { density: missingFigure("densityKgPerL", "needs the total solids first", made), densityNote: "" };
  return {
    density: figure("densityKgPerL", sludgeDensityKgPerL(totalSolids, share), made),
    densityNote:
      volatile === null
        ? `Estimated, with a volatile share of ${assumedVolatilePct} % assumed (common practice, no source) until the dishes are ashed.`
        : "Estimated from total solids and volatile share.",
  };
}
