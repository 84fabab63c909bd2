import { bad, good, type Outcome } from "../outcome.ts";
import { plantFormulaWords } from "../words/plant-formulas.ts";

/** How the feed flow was had. */
export type FlowSource = "meter" | "timed" | "level" | "difference";

/** Everything a feed flow can rest on; what the source does not use may be empty. */
export interface FeedFlowInput {
  flowFrom: FlowSource;
  flowM3PerH: number | null;
  timedVolumeM3: number | null;
  tankAreaM2: number | null;
  levelChangeM: number | null;
  timedMin: number | null;
  supplyM3PerH: number | null;
  returnM3PerH: number | null;
}

/** Feed flow in m³/h from a meter, a timed volume, a timed change of level, or supply less what overflows back. */
export function feedFlowM3PerH(input: FeedFlowInput): Outcome<number> {
  const { timedMin, timedVolumeM3, tankAreaM2, levelChangeM, supplyM3PerH, returnM3PerH } = input;
  switch (input.flowFrom) {
    case "meter":
      return input.flowM3PerH === null ? bad(plantFormulaWords.feed.flow) : good(input.flowM3PerH);
    case "timed":
      if (timedVolumeM3 === null) return bad(plantFormulaWords.feed.timedVolume);
      if (timedMin === null) return bad(plantFormulaWords.feed.timedMinutes);
      return good((timedVolumeM3 * 60) / timedMin);
    case "level":
      if (tankAreaM2 === null) return bad(plantFormulaWords.feed.tankArea);
      if (levelChangeM === null) return bad(plantFormulaWords.feed.levelChange);
      if (timedMin === null) return bad(plantFormulaWords.feed.timedMinutes);
      return good((tankAreaM2 * levelChangeM * 60) / timedMin);
    case "difference":
      if (supplyM3PerH === null) return bad(plantFormulaWords.feed.supply);
      if (returnM3PerH === null) return bad(plantFormulaWords.feed.returned);
      if (returnM3PerH >= supplyM3PerH) return bad(plantFormulaWords.feed.returnOrder);
      return good(supplyM3PerH - returnM3PerH);
  }
}

/** Relative standard uncertainty of a product or quotient of independent factors. */
export function relativeOfProduct(relatives: number[]): number {
  return Math.hypot(...relatives);
}
