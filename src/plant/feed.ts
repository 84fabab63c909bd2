import { bad, good, type Outcome } from "../outcome.ts";

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
      return input.flowM3PerH === null ? bad("enter the feed flow") : good(input.flowM3PerH);
    case "timed":
      if (timedVolumeM3 === null) return bad("enter the volume that was timed");
      if (timedMin === null) return bad("enter the minutes it took");
      return good((timedVolumeM3 * 60) / timedMin);
    case "level":
      if (tankAreaM2 === null) return bad("enter the tank's area");
      if (levelChangeM === null) return bad("enter the change of level");
      if (timedMin === null) return bad("enter the minutes it took");
      return good((tankAreaM2 * levelChangeM * 60) / timedMin);
    case "difference":
      if (supplyM3PerH === null) return bad("enter the supply flow");
      if (returnM3PerH === null) return bad("enter the flow that returns");
      if (returnM3PerH >= supplyM3PerH)
        return bad("the flow that returns must be less than the supply: check both");
      return good(supplyM3PerH - returnM3PerH);
  }
}

/** Relative standard uncertainty of a product or quotient of independent factors. */
export function relativeOfProduct(relatives: number[]): number {
  return Math.hypot(...relatives);
}
