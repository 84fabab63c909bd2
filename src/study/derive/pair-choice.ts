import { cheapestPair, type Pair, type PairChoice } from "../../choice/pair.ts";
import type { Limit } from "../../choice/limits.ts";
import type { ResponseWorking } from "../../curve/analyse-types.ts";
import { insideHull } from "../../curve/canonical.ts";
import { surfaceBounds, surfaceMean } from "../../curve/surface-bands.ts";
import type { SurfaceFit } from "../../curve/surface.ts";
import type { DoseWords } from "../../units/dose-words.ts";
import type { StudyState } from "../schema/records.ts";
import { limitsOf, targetsOf, type Targets } from "./choice.ts";
import type { SeriesChain } from "./jars.ts";

export interface PairCost {
  polymerA: number | null;
  polymerB: number | null;
  disposal: number | null;
  total: number | null;
}

export interface PairChain {
  limits: { limit: Limit; surface: SurfaceFit | null }[];
  surfaces: NamedSurface[];
  cheapest: PairChoice | null;
  /** the best pair of the first response that has one */
  optimum: Pair | null;
  costAt(pair: Pair): PairCost;
  /** fitted cake TS in percent; null where cake was not read */
  cakeAt(pair: Pair): number | null;
}

export interface NamedSurface {
  response: string;
  surface: SurfaceFit;
}

/** What a tonne of dry solids costs at a pair of doses, on the fitted cake surface and the assumed capture. */
export function pairCost(
  chain: SeriesChain,
  surfaces: NamedSurface[],
  targets: Targets | null,
): (pair: Pair) => PairCost {
  const cake = surfaces.find((one) => one.response === "cake_ts_pct")?.surface ?? null;
  const capturePct = targets?.assumedCapturePct ?? null;
  const price = (
    product: { pricePerKgNeat: number | null; activePct: number | null } | undefined,
    dose: number,
  ) =>
    product?.pricePerKgNeat == null || product.activePct === null
      ? null
      : (dose / (product.activePct / 100)) * product.pricePerKgNeat;
  return (pair) => {
    const polymerA = price(chain.stockA?.product, pair.a);
    const polymerB = price(chain.stockB?.product, pair.b);
    const dryness = cake ? surfaceMean(cake, pair.a, pair.b) / 100 : null;
    const disposal =
      targets?.disposalPerWetT == null || dryness === null || capturePct === null
        ? null
        : (capturePct / 100 / dryness) * targets.disposalPerWetT;
    return {
      polymerA,
      polymerB,
      disposal,
      total: polymerA === null || polymerB === null ? null : polymerA + polymerB + (disposal ?? 0),
    };
  };
}

/** Limits, costs and the cheapest pair of a two-polymer series. */
export function pairChain(
  state: StudyState,
  chain: SeriesChain,
  workings: ResponseWorking[],
  number: (value: number) => string,
  targets: Targets | null = targetsOf(state, chain.series.id),
  doses: DoseWords = { number, given: number, unit: "kg/t" },
): PairChain | null {
  const surfaces = workings.flatMap(({ surface, analysis }) =>
    surface ? [{ response: analysis.name, surface }] : [],
  );
  const [first] = surfaces;
  if (!first) return null;
  const limits = limitsOf(targets, chain.series.turbidityUnit, number).map((limit) => ({
    limit,
    surface: surfaces.find((one) => one.response === limit.response)?.surface ?? null,
  }));
  const cake = surfaces.find((one) => one.response === "cake_ts_pct")?.surface ?? null;
  const costAt = pairCost(chain, surfaces, targets);
  const located = workings.find(({ analysis }) => analysis.verdict.kind === "optimum")?.analysis.verdict.dose;
  return {
    limits,
    surfaces,
    cheapest: limits.some(({ surface }) => surface)
      ? cheapestPair(
          {
            rangeA: {
              low: first.surface.middle[0] - first.surface.half[0],
              high: first.surface.middle[0] + first.surface.half[0],
            },
            rangeB: {
              low: first.surface.middle[1] - first.surface.half[1],
              high: first.surface.middle[1] + first.surface.half[1],
            },
            inside: (pair) => insideHull(first.surface.hull, [pair.a, pair.b]),
            limits: limits.flatMap(({ limit, surface }) =>
              surface
                ? [
                    {
                      words: limit.words,
                      excess: (pair: Pair) => {
                        const bounds = surfaceBounds(surface, pair.a, pair.b);
                        // Relative, so that limits in different units can be compared for the nearest pair.
                        return limit.side === "at-most"
                          ? bounds.high / limit.value - 1
                          : 1 - bounds.low / limit.value;
                      },
                    },
                  ]
                : [],
            ),
            cost: (pair) => costAt(pair).total,
          },
          doses.number,
          doses.unit,
        )
      : null,
    optimum: located && typeof located === "object" ? located : null,
    costAt,
    cakeAt: (pair) => (cake ? surfaceMean(cake, pair.a, pair.b) : null),
  };
}
