import {
  combineUncertainty,
  rectangular,
  type DoseUncertainty,
  type UncertaintyPart,
} from "../../bench/dose-uncertainty.ts";
import type { RecordOf, StudyState } from "../schema/records.ts";
import type { SampleChain } from "./sample.ts";
import type { StockChain } from "./stock.ts";

/** What a jar's dose rests on, for its uncertainty. */
export interface JarUncertaintyBasis {
  series: RecordOf<"series">;
  sample: SampleChain;
  stock: StockChain;
  /** volume injected, mL; null where none is known yet: then only what all jars share is counted */
  syringeMl: number | null;
  sampleVolumeMl: number | null;
}

/**
 * Relative standard uncertainty of one jar's dose by propagation (trade formulas, section 2.2), split into what all
 * jars share and what is this jar's own; null where nothing is known of any part.
 */
export function jarUncertainty(state: StudyState, basis: JarUncertaintyBasis): DoseUncertainty | null {
  const { series, sample, stock, syringeMl, sampleVolumeMl } = basis;
  const parts: UncertaintyPart[] = [];
  const add = (name: UncertaintyPart["name"], relative: number | null, shared: boolean) => {
    if (relative !== null && relative > 0) parts.push({ name, relative, shared });
  };
  add("neat-mass", stock.parts.neatMass, true);
  add("active-share", stock.parts.activeShare, true);
  add("total-mass", stock.parts.totalMass, true);
  if (sample.totalSolidsStandard !== null && sample.totalSolids.value !== null)
    add("total-solids", sample.totalSolidsStandard / sample.totalSolids.value, true);
  if (syringeMl !== null && syringeMl > 0 && series.syringeLimitMl !== null)
    add("syringe", rectangular(series.syringeLimitMl, syringeMl), false);
  if (series.sampleVolumeLimitMl !== null && sampleVolumeMl !== null && series.sampleVolumeLimitMl > 0)
    add("sample-volume", rectangular(series.sampleVolumeLimitMl, sampleVolumeMl), false);
  if (parts.length === 0) return null;
  return combineUncertainty(parts, cancelledAtPlant(state, stock));
}

/** The same at the middle of the series: what stands for a dose read off the curve. */
export function middleUncertainty(
  state: StudyState,
  series: RecordOf<"series">,
  sample: SampleChain,
  stock: StockChain | null,
  syringesMl: (number | null)[],
): DoseUncertainty | null {
  if (!stock) return null;
  const volumes = syringesMl
    .filter((volume): volume is number => volume !== null && volume > 0)
    .sort((a, b) => a - b);
  return jarUncertainty(state, {
    series,
    sample,
    stock,
    syringeMl: volumes[Math.floor(volumes.length / 2)] ?? null,
    sampleVolumeMl: series.sampleVolumeMl,
  });
}

/**
 * What the surest dose among a series' jars is good to by itself (95 %, kg/t), by whose place all of them are written:
 * what all jars share moves them alike. Null where nothing is known of it.
 */
export function surestDoseSpread(
  uncertainty: DoseUncertainty | null,
  doses: (number | null)[],
): number | null {
  const dosed = doses.filter((dose): dose is number => dose !== null && dose > 0);
  return uncertainty && uncertainty.perJar > 0 && dosed.length > 0
    ? 2 * uncertainty.perJar * Math.min(...dosed)
    : null;
}

/**
 * The shared parts that the plant's own conversion repeats with the very same record: the active share where bench
 * and plant use one lot, total solids and density where the usual feed takes them from the sample.
 */
function cancelledAtPlant(
  state: StudyState,
  stock: StockChain,
): ("active-share" | "total-solids" | "density")[] {
  const makeDown = Object.values(state.makeDown).find((one) => one.benchProductId === stock.product.id);
  const feed = Object.values(state.feedCase).find((one) => one.size === "usual");
  return [
    ...(makeDown?.productId === stock.product.id ? ["active-share" as const] : []),
    ...(feed && feed.totalSolidsPct === null ? ["total-solids" as const] : []),
    ...(feed && feed.densityKgPerL === null ? ["density" as const] : []),
  ];
}
