import { bad, good, type Outcome } from "../../outcome.ts";
import { sourceOf } from "../../methods/methods.ts";
import { nextDose, type NextDose } from "../../plant/bench-factor.ts";
import { rectangular } from "../../bench/dose-uncertainty.ts";
import { plantDoseWords } from "../../words/plant-dose.ts";
import { plantInputWords } from "../../words/plant-inputs.ts";
import type { RecordOf, StudyState } from "../schema/records.ts";
import { figure, missingFigure, type Figure, type Made, type MadeInput } from "./figure.ts";
import { factorChain, type FactorChain } from "./plant-factor.ts";
import { pumpChain, type PumpChain } from "./plant-pump.ts";
import { sampleChain } from "./sample.ts";
import { stockChain } from "./stock.ts";

type Product = RecordOf<"product">;

/** One polymer of the decision on its way to the plant. */
export interface PlantPolymer {
  letter: "a" | "b";
  /** the dose that the settings follow: the bench dose, times the factor where one is in use */
  doseKgPerT: number;
  benchDoseKgPerT: number;
  /** that dose with its range and how it was made */
  dose: Figure;
  /** relative standard uncertainty of that dose from what is known: curve fit, bench scale, factor; null for none */
  doseRelative: number | null;
  /** parts of it, relative standard; null where not known */
  doseParts: { name: string; relative: number | null }[];
  /** the bench-to-plant factor in use; null where the bench dose is used as it is */
  factor: FactorChain | null;
  benchProduct: Product;
  /** the lot that stands at the plant; null until a make-down is entered */
  product: Product | null;
  makeDown: RecordOf<"makeDown"> | null;
  pump: PumpChain | null;
}

/** The series' latest decision that was not withdrawn. */
function latestDecision(state: StudyState, seriesId: string): RecordOf<"decision"> | null {
  return Object.values(state.decision).reduce<RecordOf<"decision"> | null>(
    (best, one) =>
      one.seriesId === seriesId && one.withdrawn === null && (best === null || one.at > best.at) ? one : best,
    null,
  );
}

/**
 * Relative standard uncertainty of the curve's own place. A decision's range is two standard uncertainties wide either
 * way and holds the whole bench scale as well, which is taken out again here: the plant repeats part of it.
 */
function fitRelative(
  state: StudyState,
  seriesId: string,
  doseKgPerT: number,
  scale: number | null,
): number | null {
  const decision = latestDecision(state, seriesId);
  if (!decision || decision.doseAKgPerT !== doseKgPerT || !(doseKgPerT > 0)) return null;
  const { lowKgPerT, highKgPerT } = decision;
  if (lowKgPerT === null || highKgPerT === null) return null;
  const quoted = (highKgPerT - lowKgPerT) / 4 / doseKgPerT;
  const own = quoted ** 2 - (scale ?? 0) ** 2;
  // nothing but the scale in the range: the dose was typed, and no curve says how sure it is
  return own > (0.02 * quoted) ** 2 ? Math.sqrt(own) : null;
}

/**
 * What the whole bench scale may be off by, and what of it is left once the plant converts with the very same figures
 * (see the dose's uncertainty); null where nothing of it is known.
 */
function scaleRelative(
  state: StudyState,
  series: RecordOf<"series">,
  stockId: string,
  makeDown: RecordOf<"makeDown"> | null,
): { whole: number | null; left: number | null } {
  const { parts, product } = stockChain(state, stockId);
  const sample = sampleChain(state, series.sampleId);
  const usual = Object.values(state.feedCase).find((one) => one.size === "usual");
  const solids =
    sample.totalSolidsStandard !== null && sample.totalSolids.value !== null
      ? sample.totalSolidsStandard / sample.totalSolids.value
      : null;
  const joined = (all: (number | null)[]) => {
    const known = all.filter((one) => one !== null);
    return known.some((one) => one > 0) ? Math.hypot(...known) : null;
  };
  const masses = [parts.neatMass, parts.totalMass];
  return {
    whole: joined([...masses, parts.activeShare, solids]),
    left: joined([
      ...masses,
      makeDown?.productId === product.id ? 0 : parts.activeShare,
      usual && usual.totalSolidsPct === null ? 0 : solids,
    ]),
  };
}

/** The polymers that a decision (or a dose looked at) brings to the plant, in order of injection. */
export function polymersOf(
  state: StudyState,
  series: RecordOf<"series">,
  dose: { a: number; b: number | null },
): PlantPolymer[] {
  const parts = [
    { letter: "a" as const, stockId: series.stockAId, benchDoseKgPerT: dose.a },
    { letter: "b" as const, stockId: series.stockBId, benchDoseKgPerT: dose.b ?? 0 },
  ];
  return parts.flatMap(({ letter, stockId, benchDoseKgPerT }) => {
    const stock = stockId ? state.stock[stockId] : undefined;
    const benchProduct = stock ? state.product[stock.productId] : undefined;
    if (!stockId || !benchProduct) return [];
    const makeDown =
      Object.values(state.makeDown).find((one) => one.benchProductId === benchProduct.id) ?? null;
    const pump = makeDown
      ? Object.values(state.pump).find((one) => one.makeDownId === makeDown.id)
      : undefined;
    const streamId = state.sample[series.sampleId]?.streamId;
    const factor =
      makeDown?.factorMachineId && streamId
        ? factorChain(state, {
            machineId: makeDown.factorMachineId,
            streamId,
            productId: benchProduct.id,
          })
        : null;
    const scale = scaleRelative(state, series, stockId, makeDown);
    const doseParts = [
      {
        name: plantDoseWords.curveFit,
        relative: letter === "a" ? fitRelative(state, series.id, benchDoseKgPerT, scale.whole) : null,
      },
      { name: plantDoseWords.benchScale, relative: scale.left },
    ];
    const known = doseParts.flatMap(({ relative }) => (relative === null ? [] : [relative]));
    const next = nextDose(
      benchDoseKgPerT,
      known.length > 0 ? Math.hypot(...known) : null,
      factor?.factor.ok ? factor.factor.value : null,
    );
    return [
      {
        letter,
        doseKgPerT: next.doseKgPerT,
        benchDoseKgPerT,
        dose: doseFigure(benchDoseKgPerT, next, factor, doseParts),
        doseRelative: next.relative,
        doseParts,
        factor,
        benchProduct,
        product: makeDown ? (state.product[makeDown.productId] ?? null) : null,
        makeDown,
        pump: pump ? pumpChain(state, pump.id) : null,
      },
    ];
  });
}

function doseFigure(
  benchDoseKgPerT: number,
  next: NextDose,
  factor: FactorChain | null,
  parts: PlantPolymer["doseParts"],
): Figure {
  const inputs: MadeInput[] = [
    { name: plantDoseWords.benchDose, value: benchDoseKgPerT, unit: "kg/t" },
    ...(factor
      ? [
          {
            name: plantDoseWords.factor(factor.title, factor.trials.length),
            value: factor.factor.ok ? factor.factor.value.factor : null,
            unit: "",
          },
        ]
      : []),
    ...parts.map(({ name, relative }) => ({
      name: plantInputWords.uncertainty(name),
      value: relative === null ? plantDoseWords.notKnown : 100 * relative,
      unit: relative === null ? "" : "%",
    })),
    ...(factor
      ? [
          {
            name: plantInputWords.uncertainty(plantDoseWords.nextRun),
            value:
              factor.factor.ok && factor.factor.value.nextRelative !== null
                ? 100 * factor.factor.value.nextRelative
                : plantDoseWords.oneRun,
            unit: factor.factor.ok && factor.factor.value.nextRelative !== null ? "%" : "",
          },
        ]
      : []),
  ];
  const made: Made = {
    formula: factor ? plantDoseWords.withFactor : plantDoseWords.withoutFactor,
    inputs,
    source: sourceOf("quotedDose"),
  };
  if (factor && !factor.factor.ok) return missingFigure("doseKgPerT", factor.factor.message, made);
  // Without the curve's own fit the largest part is missing: a range of the rest would look surer than anybody is.
  const whole = parts.every(({ relative }) => relative !== null);
  return figure("doseKgPerT", next.doseKgPerT, made, {
    low: whole ? next.low : null,
    high: whole ? next.high : null,
    given: !factor,
  });
}

/** What stands in the way of this polymer's rates, in words; null for nothing. */
export function missingFor(polymer: PlantPolymer): string | null {
  const letter = polymer.letter.toUpperCase();
  const { product, makeDown } = polymer;
  if (!makeDown || !product) return plantDoseWords.sayMakeDown(letter, polymer.benchProduct.label);
  if (product.activePct === null) return plantDoseWords.enterActiveShareOf(letter, product.label);
  if (product.form !== "dry" && product.densityKgPerL === null)
    return plantDoseWords.enterDensityOf(letter, product.label);
  if (makeDown.solutionActivePct === null) return plantDoseWords.enterPlantStrength(letter);
  if (makeDown.solutionDensityKgPerL === null) return plantDoseWords.enterPlantDensity(letter);
  if (polymer.factor && !polymer.factor.factor.ok)
    return plantDoseWords.lacksFactor(letter, polymer.factor.factor.message);
  return null;
}

/** The parts of a measured flow's dose range, relative standard; null where not known. */
function flowParts(
  polymer: PlantPolymer,
  loadParts: { name: string; relative: number | null }[],
): { name: string; relative: number | null }[] {
  const neat = polymer.pump?.pump.stream !== "solution";
  const activePct = neat ? polymer.product?.activePct : polymer.makeDown?.solutionActivePct;
  const limit = neat ? polymer.product?.activeLimitPct : polymer.makeDown?.solutionLimitPct;
  const sameLot = neat && polymer.product?.id === polymer.benchProduct.id;
  const strength = limit == null || activePct == null ? null : sameLot ? 0 : rectangular(limit, activePct);
  return [
    ...loadParts,
    { name: neat ? plantInputWords.activeShare : plantInputWords.strength, relative: strength },
    ...polymer.doseParts,
  ];
}

/** Names of the parts that are not known and therefore left out of a measured flow's dose range. */
export function leftOutParts(
  polymer: PlantPolymer,
  loadParts: { name: string; relative: number | null }[],
): string[] {
  return flowParts(polymer, loadParts).flatMap(({ name, relative }) => (relative === null ? [name] : []));
}

/**
 * The dose that a measured pump flow (mL/min, or g/min on a balance) means on a load, with its range from solids,
 * strength, density and fit. The pump's own band is not in it.
 */
export function doseOfFlow(
  polymer: PlantPolymer,
  flowPerMin: number,
  load: { value: number | null; missing: string | null; parts: { name: string; relative: number | null }[] },
): Figure {
  const pump = polymer.pump?.pump;
  const neat = pump?.stream !== "solution";
  const density = neat ? polymer.product?.densityKgPerL : polymer.makeDown?.solutionDensityKgPerL;
  const activePct = neat ? polymer.product?.activePct : polymer.makeDown?.solutionActivePct;
  const parts = flowParts(polymer, load.parts);
  const made: Made = {
    formula: plantDoseWords.flowFormula,
    inputs: [
      {
        name: plantDoseWords.flowCaught,
        value: flowPerMin,
        unit: pump?.measuredIn === "g" ? "g/min" : "mL/min",
      },
      { name: plantDoseWords.flowDensity, value: density ?? null, unit: "kg/L" },
      {
        name: neat ? plantInputWords.activeShare : plantInputWords.strength,
        value: activePct ?? null,
        unit: "%",
      },
      { name: plantInputWords.load, value: load.value, unit: "kg/h" },
      ...parts.map(({ name, relative }) => ({
        name: plantInputWords.uncertainty(name),
        value:
          relative === null
            ? plantDoseWords.notKnown
            : relative === 0
              ? plantDoseWords.cancels
              : 100 * relative,
        unit: relative === null || relative === 0 ? "" : "%",
      })),
    ],
    source: sourceOf("runDose"),
  };
  const dose = ((): Outcome<number> => {
    if (load.value === null) return bad(load.missing ?? plantDoseWords.enterFeed);
    if (activePct == null) return bad(neat ? plantDoseWords.enterActiveShare : plantDoseWords.enterStrength);
    if (pump?.measuredIn !== "g" && density == null) return bad(plantDoseWords.enterFlowDensity);
    const gramsPerMin = pump?.measuredIn === "g" ? flowPerMin : flowPerMin * density!;
    return good((gramsPerMin * 60 * activePct) / 100 / load.value);
  })();
  if (!dose.ok) return missingFigure("doseKgPerT", dose.message, made);
  const relative = Math.hypot(...parts.map((part) => part.relative ?? 0));
  if (!(relative > 0)) return figure("doseKgPerT", dose.value, made);
  const half = 2 * relative * dose.value;
  return figure("doseKgPerT", dose.value, made, { low: dose.value - half, high: dose.value + half });
}
