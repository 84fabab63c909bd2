import { area } from "./language.ts";

/** What the comparison of studies says beside a series whose figures are not all there. */
export const summaryWords = area("summaries", {
  noPrice: "the polymer has no price or active share",
  onlyPolymer: "the cost is the polymer's alone: disposal has no price, cake or capture",
  noCurve: {
    filtrate: "no fitted curve of filtrate",
    cake: "no fitted curve of cake",
    both: "no fitted curve of filtrate or cake",
  },
  noFit: "no response of this series has a fitted curve",
  doseOutside: "the approved dose lies outside the tested doses",
  noSurface: "no response of this series has a fitted surface",
  pairOutside: "the approved pair lies outside the tested pairs",
  noReading: "no jar of this series was read",
  oneDoseForTwo: "the series varies both polymers, the approval names one dose",
  onlyB: "only polymer B was varied in this series",
});
