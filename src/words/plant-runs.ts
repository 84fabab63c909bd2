import { area } from "./language.ts";

/** A plant run: the ways its dose is known by, how they were made, and what is missing for each. */
export const plantRunWords = area("plantRuns", {
  ways: {
    "draw-down": "draw-down",
    container: "container's loss of mass",
    "pump-line": "pump line at the setting",
  },
  activeBy: (way: string) => `active by ${way}`,
  loadFormula: "flow x 1000 x density x TS",
  totalSolidsOfRun: "total solids, of the run",
  densityOfRun: "density, of the run",
  enterFeedFlow: "enter the run's feed flow",
  enterTotalSolids: "enter the run's total solids",
  waysDiffer: (product: string, spread: string) =>
    `${product}: the ways of knowing the dose differ by ${spread} %, more than 5 %: find the wrong measurement before changing the dose.`,
  enterActiveShare: "enter the active share of the product",
  pickPump: "pick the pump",
  enterCaught: "enter what was caught and the seconds",
  enterContainer: "enter the container's loss of mass and the hours",
  enterSetting: "enter the pump's setting",
  outsideProven: "the setting lies outside those proven by draw-down",
  doseFormula:
    "1000 x active / load; a draw-down counts before the container, the container before the pump line",
  washWater: "wash water",
  addedLiquid: "added liquid over feed, by mass",
  enterCake: "enter the cake's solids",
  enterFiltrate: "enter the filtrate's suspended solids",
  enterWash: "enter the wash water (0 for none)",
  needsDoses: "needs the doses of this run",
});
