import { rectangular } from "../../bench/dose-uncertainty.ts";
import { bad, type Outcome } from "../../outcome.ts";
import { solutionWindow } from "../../product/life.ts";
import { recipeFor, strengthFromMasses, strengthSlip, type Recipe } from "../../product/make-down.ts";
import { stockChainWords } from "../../words/stock-chain.ts";
import type { RecordOf, StudyState } from "../schema/records.ts";
import { figure, missingFigure, type Figure, type Made } from "./figure.ts";
import { numberWords } from "./number-words.ts";
import { memo } from "./memo.ts";
import type { StateTone } from "./tone.ts";

export interface StockChain {
  stock: RecordOf<"stock">;
  product: RecordOf<"product">;
  active: Figure;
  asSupplied: Figure;
  /** relative standard uncertainties of the strength's parts; null where not entered */
  parts: { neatMass: number | null; activeShare: number | null; totalMass: number | null };
  usableFrom: string | null;
  discardAfter: string | null;
  warnings: string[];
}

const usualStrength = { low: 0.02, high: 2 };

/** A stock solution's strength, in active polymer and as supplied together, and its time window. */
export function stockChain(state: StudyState, stockId: string): StockChain {
  const stock = state.stock[stockId]!;
  const product = state.product[stock.productId]!;
  const number = numberWords(state);
  return known(stock, [product, state.study["study"]?.decimalMark], () => chainOf(stock, product, number));
}

const known = memo<StockChain>();

function chainOf(
  stock: RecordOf<"stock">,
  product: RecordOf<"product">,
  number: (value: number) => string,
): StockChain {
  const made: Made = {
    formula: stockChainWords.strengthFormula,
    inputs: [
      { name: stockChainWords.activeShareOf(product.label), value: product.activePct, unit: "%" },
      { name: stockChainWords.neatProduct, value: stock.neatMassG, unit: "g" },
      { name: stockChainWords.wholeSolution, value: stock.totalMassG, unit: "g" },
    ],
    source: stockChainWords.massBalance,
  };
  const strength = ((): Outcome<number> => {
    if (product.activePct === null) return bad(stockChainWords.enterActiveShare(product.label));
    if (stock.neatMassG === null) return bad(stockChainWords.weighNeat);
    if (stock.totalMassG === null) return bad(stockChainWords.weighWhole);
    return strengthFromMasses(stock.neatMassG, stock.totalMassG, product.activePct);
  })();
  const warnings: string[] = [];
  const active = strength.ok
    ? figure("percent", strength.value, made)
    : missingFigure("percent", strength.message, made);
  const supplied: Made = { ...made, formula: stockChainWords.suppliedFormula, inputs: made.inputs.slice(1) };
  const asSupplied =
    strength.ok && product.activePct !== null
      ? figure("percent", (100 * strength.value) / product.activePct, supplied)
      : missingFigure("percent", strength.ok ? "" : strength.message, supplied);
  const looksLikely = (pct: number) => pct >= usualStrength.low && pct <= usualStrength.high;
  if (
    strength.ok &&
    !looksLikely(strength.value) &&
    product.form !== "solution" &&
    product.form !== "metal-salt"
  )
    warnings.push(
      stockChainWords.unusualStrength(
        number(strength.value),
        number(usualStrength.low),
        number(usualStrength.high),
      ),
    );
  if (strength.ok && stock.targetActivePct !== null && product.activePct !== null) {
    const slip = strengthSlip(strength.value, stock.targetActivePct, product.activePct);
    const strengths = [number(strength.value), number(stock.targetActivePct)] as const;
    if (slip === "neat-as-active") warnings.push(stockChainWords.neatAsActive(...strengths));
    else if (slip === "divided-twice") warnings.push(stockChainWords.dividedTwice(...strengths));
    else if (slip === "off") warnings.push(stockChainWords.offTarget(...strengths));
  }
  const window = solutionWindow(product.form, active.value);
  const shift = (minutes: number) =>
    stock.mixStartedAt === null
      ? null
      : new Date(Date.parse(stock.mixStartedAt) + minutes * 60_000).toISOString();
  return {
    stock,
    product,
    active,
    asSupplied,
    parts: {
      neatMass:
        stock.neatMassUncertaintyG !== null && stock.neatMassG !== null
          ? stock.neatMassUncertaintyG / stock.neatMassG
          : null,
      activeShare:
        product.activeLimitPct !== null && product.activePct !== null
          ? rectangular(product.activeLimitPct, product.activePct)
          : null,
      totalMass:
        stock.totalMassLimitG !== null && stock.totalMassG !== null
          ? rectangular(stock.totalMassLimitG, stock.totalMassG)
          : null,
    },
    usableFrom: shift(stock.ageingMin ?? window.ageingMin),
    discardAfter: shift((stock.lifeHours ?? window.lifeHours) * 60),
    warnings,
  };
}

/** Where a solution stands in its time window, in words. */
export function stockClock(chain: StockChain, now: string): { tone: StateTone; words: string } {
  const { usableFrom, discardAfter } = chain;
  if (usableFrom === null || discardAfter === null)
    return { tone: "missing", words: stockChainWords.enterMixStart };
  const left = (until: string) => {
    const minutes = Math.max(0, Math.ceil((Date.parse(until) - Date.parse(now)) / 60_000));
    return minutes >= 60 ? `${Math.floor(minutes / 60)} h ${minutes % 60} min` : `${minutes} min`;
  };
  if (now < usableFrom) return { tone: "open", words: stockChainWords.ageing(left(usableFrom)) };
  if (now < discardAfter) return { tone: "good", words: stockChainWords.usable(left(discardAfter)) };
  return { tone: "bad", words: stockChainWords.pastLife };
}

/** What to weigh of this stock's product for a strength and a mass. */
export function makeDownFor(
  state: StudyState,
  stockId: string,
  target: { activePct: number; totalMassG: number },
): Outcome<Recipe> {
  const stock = state.stock[stockId]!;
  const product = state.product[stock.productId]!;
  if (product.activePct === null) return bad(stockChainWords.enterActiveShareFirst(product.label));
  return recipeFor(target.activePct, target.totalMassG, {
    activePct: product.activePct,
    densityKgPerL: product.densityKgPerL,
    dry: product.form === "dry",
  });
}
