import { area } from "./language.ts";

/** What each warning of an analysis means and what to do about it. */
export const warningWords = area("warnings", {
  "few-doses": "Fewer than five distinct doses: add doses on both sides.",
  tie: "More than one model fits about equally well: the range covers them all.",
  "lack-of-fit": "A model misses the doses by more than repeated jars scatter.",
  outlier: "One jar lies far off the curve: repeat it, or leave it out with a reason.",
  "outlier-masks-lack-of-fit": "An outlying jar widens the scatter and hides a poor fit.",
  edge: "The interval leaves the doses tested: add jars there.",
  censored: "Readings beyond the instrument's range are used as bounds, not as numbers.",
  "single-jars": "No dose was repeated in a separate jar, so scatter is judged from the curve alone.",
  "zero-dose": "No-polymer jars are set aside in the ranking and used only by shapes that hold at 0.",
});
