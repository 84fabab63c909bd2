import { area } from "./language.ts";

/** A feed case's flow and dry-solids load: how they were made and what is missing. */
export const feedChainWords = area("feedChain", {
  meterFormula: "as read on the meter",
  timedFormula: "60 x volume / minutes",
  levelFormula: "60 x area x change of level / minutes",
  differenceFormula: "supply - return",
  timedVolume: "volume filled or drawn",
  time: "time",
  tankArea: "tank area",
  levelChange: "change of level",
  supply: "supply",
  returned: "overflow that returns",
  totalSolidsOfFeed: "total solids, of the feed",
  totalSolidsOfSample: "total solids, of the sample",
  densityOfFeed: "density, of the feed",
  densityOfSample: "density, of the sample",
  uncertaintyOf: (part: string) => `standard uncertainty of the ${part}`,
  notEntered: "not entered, left out of the spread",
  percentOfIt: "% of it",
  loadFormula: "flow x 1000 x density x TS; spread 2 x its parts in quadrature",
  enterFlow: "enter the feed flow",
  enterTotalSolids: "enter the feed's total solids",
  enterDensity: "enter the feed's density",
});
