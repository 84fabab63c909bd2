import { area } from "./language.ts";

/** Routine runs on their drift charts, runs compared in pairs, and the plan of a step test. */
export const plantWatchWords = area("plantWatch", {
  watched: { cake: "cake TS", filtrate: "filtrate TSS", dose: "dose" },
  outside: {
    above: (run: string, what: string) =>
      `Run ${run}: ${what} lies above what this plant does when nothing has changed. Sludge, polymer or machine is another: run the jars again before changing the dose.`,
    below: (run: string, what: string) =>
      `Run ${run}: ${what} lies below what this plant does when nothing has changed. Sludge, polymer or machine is another: run the jars again before changing the dose.`,
  },
  oneSided: (run: string, what: string) =>
    `Eight runs in a row, up to ${run}, have their ${what} on one side of the middle: something has shifted. Run the jars again.`,
  noDrift: "No drift: nothing says to run the jars again.",
  method:
    "Individuals chart: middle ± 3 x mean moving range / 1.128, from all runs before the latest (Shewhart, from memory); a square is a signal.",
  drift: (what: string) => `Drift of the ${what}`,
  inUnit: (what: string, unit: string) => `${what}, ${unit}`,
  run: (run: string, value: string) => `run ${run}: ${value}`,
  signalRun: (run: string, value: string) => `run ${run}: ${value}, a signal`,
  orderOfTime: "routine runs in order of time",
  limits: { upper: "upper limit", middle: "middle", lower: "lower limit" },
  giveSides: "give runs a side (A or B) and a pair number to compare two settings",
  pickMachine: "pick the machine",
  enterHoldUp: "enter the machine's hold-up, with the pipe behind the injection point",
  enterUsualFlow: "enter the usual feed flow",
});
