import { area, counted } from "./language.ts";

/** Plant runs in the trial report. */
export const runsReportWords = area("runsReport", {
  title: "Plant runs",
  none: "No plant runs logged.",
  kinds: { step: "step test", routine: "routine", comparison: "comparison" },
  runs: {
    caption: "Runs as logged; –: not measured",
    run: "run",
    whenBy: "when, by",
    kind: "kind",
    feed: "feed, m³/h (gal/min)",
    totalSolids: "TS, %",
    dose: "dose, kg/t active (lb/short ton)",
    cake: "cake TS, %",
    filtrate: "filtrate TSS, mg/L",
    capture: "capture, %",
    machine: "machine",
    counts: "counts, notes",
    noRow: "none",
    doses: (doses: string[]) => doses.join(" and "),
    leftOut: "LEFT OUT",
    forFactor: "for the factor",
  },
  ways: {
    caption: "Dose of each run by every way that was logged, kg/t active (lb/short ton)",
    polymer: "polymer",
    differ: "ways differ by",
    benchDose: "bench dose",
    counting: (dose: string) => `${dose} (counts)`,
    notHad: (why: string) => `not had: ${why}`,
    notLogged: "not logged",
    oneAlone: "one way alone",
    differBy: (pct: string) => `${pct} %`,
    wrong: (pct: string) => `${pct} %: a measurement is wrong`,
  },
  factor: {
    none: (what: string, why: string) => `Bench-to-plant factor of ${what}: none, ${why}.`,
    inUse: (what: string, factor: string, runs: number, range: string) =>
      `Bench-to-plant factor of ${what}: ${factor} from ${counted(runs, "run", "runs")} (${range}); in use for the settings.`,
    notInUse: (what: string, factor: string, runs: number, range: string) =>
      `Bench-to-plant factor of ${what}: ${factor} from ${counted(runs, "run", "runs")} (${range}); not in use.`,
    oneRun: "one run alone has no spread",
    range: (low: string, high: string, spreadPct: string) =>
      `95 % ${low} to ${high}, runs scatter by ${spreadPct} %`,
  },
});
