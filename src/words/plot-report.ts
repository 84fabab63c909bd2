import { area } from "./language.ts";

/** The plots of the trial report: what their signs mean and where their numbers stand. */
export const plotReportWords = area("plotReport", {
  drainage: "Drainage over time",
  inJarTable: "Every volume is in the table of the jars.",
  filtration: {
    title: "Filtration tests",
    filled: "Filled: the points the line goes through; the pairs are in the table.",
    caption: "Filtration tests, filtrate in mL at seconds",
    jar: "jar",
    pairs: "pairs",
    straight: "straight part",
    pair: (volume: string, seconds: string) => `${volume} at ${seconds}`,
    points: (first: number, last: number) => `points ${first} to ${last}`,
    none: "none",
  },
  residuals: {
    title: "Residuals of the suggested models",
    note: "In standard deviations of each model's scatter; about 1 in 20 lies beyond 2. The readings are in the table of the jars, the scatter in the tables of the models.",
    beyond: (jars: string[]) => `Beyond 2: ${jars.join(", ")}.`,
    jarAt: (jar: string, deviations: string) => `jar ${jar} at ${deviations}`,
  },
  slices: {
    through: {
      approved: "Cut through the approved pair",
      cheapest: "Cut through the pair picked by rule",
      best: "Cut through the best fitted pair",
    },
    mark: (dose: string) => `cut at ${dose}`,
    where: "The terms of the surface are in its table.",
  },
  limits:
    "Solid: held with one-sided 95 % confidence of the mean curve, each limit by itself; pale: held at the mean only. The doses are in the table above.",
  cost: "The cost at each rule's dose is in the table above.",
  pump: "The draw-downs are in the table above.",
  runsOnCurves: "Runs are the diamonds on the bench curves of their series, under Curves.",
});
