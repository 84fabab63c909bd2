import { feedFlowM3PerH, relativeOfProduct } from "../../plant/feed.ts";
import { sourceOf } from "../../methods/methods.ts";
import { drySolidsKgPerH } from "../../plant/rates.ts";
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

const source = sourceOf("feedFlow");

const ways: Record<
  FeedCase["flowFrom"],
  { formula: string; fields: { field: keyof FeedCase; name: string; unit: string }[] }
> = {
  meter: {
    formula: "as read on the meter",
    fields: [{ field: "flowM3PerH", name: "feed flow", unit: "m³/h" }],
  },
  timed: {
    formula: "60 x volume / minutes",
    fields: [
      { field: "timedVolumeM3", name: "volume filled or drawn", unit: "m³" },
      { field: "timedMin", name: "time", unit: "min" },
    ],
  },
  level: {
    formula: "60 x area x change of level / minutes",
    fields: [
      { field: "tankAreaM2", name: "tank area", unit: "m²" },
      { field: "levelChangeM", name: "change of level", unit: "m" },
      { field: "timedMin", name: "time", unit: "min" },
    ],
  },
  difference: {
    formula: "supply - return",
    fields: [
      { field: "supplyM3PerH", name: "supply", unit: "m³/h" },
      { field: "returnM3PerH", name: "overflow that returns", unit: "m³/h" },
    ],
  },
};

function flowFigure(feed: FeedCase): Figure {
  const { formula, fields } = ways[feed.flowFrom];
  const made: Made = {
    formula,
    inputs: fields.map(({ field, name, unit }) => ({ name, value: feed[field], unit })),
    source: "volume balance",
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
    { name: "feed flow", relative: feed.flowUncertaintyPct === null ? null : feed.flowUncertaintyPct / 100 },
    { name: "total solids", relative: standard === null || ts === null ? null : standard / ts },
    {
      name: "density",
      relative:
        feed.densityLimitKgPerL === null || density === null
          ? null
          : feed.densityLimitKgPerL / Math.sqrt(3) / density,
    },
  ];
  const known = parts.flatMap(({ relative }) => (relative === null ? [] : [relative]));
  const loadRelative = known.length === 0 ? null : relativeOfProduct(known);
  const inputs: MadeInput[] = [
    { name: "feed flow", value: flow.value, unit: "m³/h" },
    { name: own ? "total solids, of the feed" : "total solids, of the sample", value: ts, unit: "%" },
    {
      name: feed.densityKgPerL === null ? "density, of the sample" : "density, of the feed",
      value: density,
      unit: "kg/L",
    },
    ...parts.map(({ name, relative }) => ({
      name: `standard uncertainty of the ${name}`,
      value: relative === null ? "not entered, left out of the spread" : 100 * relative,
      unit: relative === null ? "" : "% of it",
    })),
  ];
  const made: Made = {
    formula: "flow x 1000 x density x TS; spread 2 x its parts in quadrature",
    inputs,
    source,
  };
  const missing =
    flow.value === null
      ? (flow.missing ?? "enter the feed flow")
      : ts === null
        ? "enter the feed's total solids"
        : density === null
          ? "enter the feed's density"
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
