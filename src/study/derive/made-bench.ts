import type { PlanInput, PlannedJar } from "../../bench/plan.ts";
import { solutionWindow } from "../../product/life.ts";
import { sourceOf } from "../../methods/methods.ts";
import { benchMethodWords } from "../../words/bench-methods.ts";
import { madeBenchWords as words } from "../../words/made-bench.ts";
import type { Made, MadeInput } from "./figure.ts";
import type { SeriesChain } from "./jars.ts";
import type { Flag } from "./quality/flag.ts";
import type { StockChain } from "./stock.ts";

/** How what is weighed for a solution was made. */
export function recipeMade({ stock, product }: StockChain): Made {
  return {
    formula: words.recipe,
    inputs: [
      { name: words.inputs.wanted, value: stock.targetActivePct, unit: "%" },
      { name: words.inputs.whole, value: stock.targetTotalG, unit: "g" },
      { name: words.inputs.activeShare, value: product.activePct, unit: "%" },
      { name: words.inputs.density, value: product.densityKgPerL, unit: "kg/L" },
    ],
    source: sourceOf("strength"),
  };
}

/** How the times between which a solution is used were made. */
export function lifeMade({ stock, product, active }: StockChain, mixedAt: string): Made {
  const usual = solutionWindow(product.form, active.value);
  return {
    formula: words.life,
    inputs: [
      { name: words.inputs.mixed, value: mixedAt, unit: "" },
      { name: words.inputs.ageing, value: stock.ageingMin ?? usual.ageingMin, unit: "min" },
      { name: words.inputs.life, value: stock.lifeHours ?? usual.lifeHours, unit: "h" },
    ],
    source: sourceOf("life"),
  };
}

/** How the doses of a plan were made. */
export function planDosesMade(plan: PlanInput): Made {
  const { inputs: names } = words;
  const { second } = plan;
  return {
    formula: words.designs[plan.design],
    inputs: [
      { name: names.low, value: plan.low, unit: "kg/t" },
      { name: names.high, value: plan.high, unit: "kg/t" },
      { name: names.steps, value: plan.steps, unit: "" },
      ...(plan.guess === undefined ? [] : [{ name: names.guess, value: plan.guess, unit: "kg/t" }]),
      ...(plan.stepPct === undefined ? [] : [{ name: names.step, value: plan.stepPct, unit: "%" }]),
      ...(second
        ? [
            { name: names.lowB, value: second.low, unit: "kg/t" },
            { name: names.highB, value: second.high, unit: "kg/t" },
            { name: names.stepsB, value: second.steps, unit: "" },
          ]
        : []),
      { name: names.seed, value: plan.seed, unit: "" },
    ],
    source: sourceOf("plan"),
  };
}

/** How the syringe volumes of a plan were made. */
export function planSyringesMade(plan: PlanInput, letter: "A" | "B"): Made {
  const { inputs: names } = words;
  const strength: MadeInput =
    letter === "A"
      ? { name: names.strengthA, value: plan.solutionActivePct, unit: "%", derived: true }
      : { name: names.strengthB, value: plan.second?.solutionActivePct ?? null, unit: "%", derived: true };
  return {
    formula: words.syringe,
    inputs: [
      { name: names.sample, value: plan.sampleVolumeMl, unit: "mL" },
      { name: names.sludgeDensity, value: plan.densityKgPerL, unit: "kg/L" },
      { name: names.solids, value: plan.totalSolidsPct, unit: "%" },
      strength,
      { name: names.solutionDensity, value: plan.solutionDensityKgPerL ?? 1, unit: "kg/L" },
    ],
    source: sourceOf("dose"),
  };
}

/** How the blank water of a plan was made. */
export function planWaterMade(jars: readonly PlannedJar[]): Made {
  const most = Math.max(...jars.map(({ syringeAMl, syringeBMl }) => syringeAMl + syringeBMl));
  return {
    formula: words.blankWater,
    inputs: [{ name: words.inputs.most, value: most, unit: "mL" }],
    source: sourceOf("plan"),
  };
}

/** How the error of a dose in the middle of a series was made. */
export function doseErrorMade({ series, sample, stockA, uncertaintyA }: SeriesChain): Made {
  const { inputs: names } = words;
  const percent = (name: string, relative: number | null | undefined): MadeInput => ({
    name,
    value: relative == null ? null : relative * 100,
    unit: "%",
  });
  const { value: solids } = sample.totalSolids;
  return {
    formula: words.doseError,
    inputs: [
      percent(names.neatMass, stockA?.parts.neatMass),
      percent(names.shareError, stockA?.parts.activeShare),
      percent(names.wholeMass, stockA?.parts.totalMass),
      percent(
        names.solidsError,
        sample.totalSolidsStandard === null || solids === null ? null : sample.totalSolidsStandard / solids,
      ),
      { name: names.syringeLimit, value: series.syringeLimitMl, unit: "mL" },
      { name: names.sampleLimit, value: series.sampleVolumeLimitMl, unit: "mL" },
      { name: names.sample, value: series.sampleVolumeMl, unit: "mL" },
      percent(names.shared, uncertaintyA?.shared),
      percent(names.own, uncertaintyA?.perJar),
    ],
    source: sourceOf("doseUncertainty"),
  };
}

/** How a flag came about: every check there is, and what this one found. */
export function flagMade({ word, sentence }: Flag): Made {
  return {
    formula: benchMethodWords.quality.formula,
    inputs: [{ name: word, value: sentence, unit: "" }],
    source: sourceOf("quality"),
  };
}
