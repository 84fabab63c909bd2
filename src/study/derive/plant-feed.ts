import { feedFlowM3PerH, relativeOfProduct } from "../../plant/feed.ts";
import { sourceOf } from "../../methods/methods.ts";
import { drySolidsKgPerH } from "../../plant/rates.ts";
import { feedChainWords } from "../../words/feed-chain.ts";
import { plantInputWords } from "../../words/plant-inputs.ts";
import type { RecordOf } from "../schema/records.ts";
import { figure, missingFigure, type Figure, type Made, type MadeInput } from "./figure.ts";
import type { SampleChain } from "./sample.ts";

type FeedCase = RecordOf<"feedCase">;

export interface FeedChain {
  flowM3PerH: number | null;
  flow: Figure;
  totalSolidsPct: number | null;
  densityKgPerL: number | null;
  load: Figure;
  /** relative standard uncertainty of the load from what is known of it; null where nothing is */
  loadRelative: number | null;
  /** the parts of that uncertainty, in words with percent, and the parts that are not known */
  parts: { name: string; relative: number | null }[];
  /** what is missing for a load, or null */
  missing: string | null;
}

const ways = (): Record<
  FeedCase["flowFrom"],
  { formula: string; fields: { field: keyof FeedCase; name: string; unit: string }[] }
> => ({
  meter: {
    formula: feedChainWords.meterFormula,
    fields: [{ field: "flowM3PerH", name: plantInputWords.feedFlow, unit: "m³/h" }],
  },
  timed: {
    formula: feedChainWords.timedFormula,
    fields: [
      { field: "timedVolumeM3", name: feedChainWords.timedVolume, unit: "m³" },
      { field: "timedMin", name: feedChainWords.time, unit: "min" },
    ],
  },
  level: {
    formula: feedChainWords.levelFormula,
    fields: [
      { field: "tankAreaM2", name: feedChainWords.tankArea, unit: "m²" },
      { field: "levelChangeM", name: feedChainWords.levelChange, unit: "m" },
      { field: "timedMin", name: feedChainWords.time, unit: "min" },
    ],
  },
  difference: {
    formula: feedChainWords.differenceFormula,
    fields: [
      { field: "supplyM3PerH", name: feedChainWords.supply, unit: "m³/h" },
      { field: "returnM3PerH", name: feedChainWords.returned, unit: "m³/h" },
    ],
  },
});

function flowFigure(feed: FeedCase): Figure {
  const { formula, fields } = ways()[feed.flowFrom];
  const made: Made = {
    formula,
    inputs: fields.map(({ field, name, unit }) => ({ name, value: feed[field], unit })),
    source: sourceOf("feedFlow"),
  };
  const flow = feedFlowM3PerH(feed);
  if (!flow.ok) return missingFigure("flowM3PerH", flow.message, made);
  const spread = feed.flowUncertaintyPct === null ? null : (2 * flow.value * feed.flowUncertaintyPct) / 100;
  return figure("flowM3PerH", flow.value, made, { spread });
}

/** A feed case with its flow and dry-solids load. What the case leaves empty comes from the series' sample. */
export function feedChain(feed: FeedCase, sample: SampleChain | null): FeedChain {
  const flow = flowFigure(feed);
  const own = feed.totalSolidsPct !== null;
  const ts = feed.totalSolidsPct ?? sample?.totalSolids.value ?? null;
  const density = feed.densityKgPerL ?? sample?.density.value ?? null;
  const standard = own ? feed.totalSolidsUncertaintyPct : (sample?.totalSolidsStandard ?? null);
  const parts = [
    {
      name: plantInputWords.feedFlow,
      relative: feed.flowUncertaintyPct === null ? null : feed.flowUncertaintyPct / 100,
    },
    { name: plantInputWords.totalSolids, relative: standard === null || ts === null ? null : standard / ts },
    {
      name: plantInputWords.density,
      relative:
        feed.densityLimitKgPerL === null || density === null
          ? null
          : feed.densityLimitKgPerL / Math.sqrt(3) / density,
    },
  ];
  const known = parts.flatMap(({ relative }) => (relative === null ? [] : [relative]));
  const loadRelative = known.length === 0 ? null : relativeOfProduct(known);
  const inputs: MadeInput[] = [
    { name: plantInputWords.feedFlow, value: flow.value, unit: "m³/h" },
    {
      name: own ? feedChainWords.totalSolidsOfFeed : feedChainWords.totalSolidsOfSample,
      value: ts,
      unit: "%",
    },
    {
      name: feed.densityKgPerL === null ? feedChainWords.densityOfSample : feedChainWords.densityOfFeed,
      value: density,
      unit: "kg/L",
    },
    ...parts.map(({ name, relative }) => ({
      name: feedChainWords.uncertaintyOf(name),
      value: relative === null ? feedChainWords.notEntered : 100 * relative,
      unit: relative === null ? "" : feedChainWords.percentOfIt,
    })),
  ];
  const made: Made = {
    formula: feedChainWords.loadFormula,
    inputs,
    source: sourceOf("feedFlow"),
  };
  const missing =
    flow.value === null
      ? (flow.missing ?? feedChainWords.enterFlow)
      : ts === null
        ? feedChainWords.enterTotalSolids
        : density === null
          ? feedChainWords.enterDensity
          : null;
  const value = missing === null ? drySolidsKgPerH(flow.value!, density!, ts!) : null;
  return {
    flowM3PerH: flow.value,
    flow,
    totalSolidsPct: ts,
    densityKgPerL: density,
    load:
      value === null
        ? missingFigure("kgPerH", missing!, made)
        : figure("kgPerH", value, made, {
            spread: loadRelative === null ? null : 2 * loadRelative * value,
          }),
    loadRelative,
    parts,
    missing,
  };
}
