import { area } from "./language.ts";

/** Drift charts, pairs of settings, mixing and the limit on land in the trial report. */
export const watchReportWords = area("watchReport", {
  driftTitle: (series: string) => `Drift watch on routine runs: ${series}`,
  noChart: (what: string, why: string) => `No chart of the ${what}: ${why}.`,
  pairs: {
    title: (series: string) => `Two machine settings compared in pairs: ${series}`,
    caption: "B less A, pairs taken soon after one another; paired t-test",
    result: "result",
    pairs: "pairs",
    difference: "B less A",
    says: "what it says",
    notYet: (why: string) => `not yet: ${why}`,
    real: "a real difference",
    chance: "no difference that these pairs could tell from chance",
  },
  mixing: {
    title: "Mixing, jars against plant",
    inTank: (letter: string, product: string) => `Polymer ${letter}, ${product}: mixed in a stirred tank`,
    inPipe: (letter: string, product: string) => `Polymer ${letter}, ${product}: mixed in a pipe`,
  },
  land: {
    title: "Cake on land: polymer per hectare",
    limit: "Limit, active",
    period: "in",
    years: (years: string) => `${years} years`,
    drySolids: "Dry solids spread",
    inThoseYears: (amount: string) => `${amount} t/ha in those years`,
    elsewhere: "Dosed elsewhere",
    highest: "Highest dose by that limit",
    together: "Dose, all together",
    notEntered: "not entered",
  },
});
