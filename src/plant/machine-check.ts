import { loadingKgPerHPerM } from "./load.ts";
import { plantFormulaWords } from "../words/plant-formulas.ts";

/** A machine's own limits: each unknown until its owner enters it. */
export interface MachineLimits {
  effectiveWidthM: number | null;
  /** for the class of sludge at hand, kg DS per hour and metre */
  loadingKgPerHPerM: number | null;
  hydraulicLimitM3PerH: number | null;
  feedLowPct: number | null;
  feedHighPct: number | null;
  solidsThresholdPct: number | null;
  inorganicLowPct: number | null;
  inorganicHighPct: number | null;
}

/** What runs onto the machine. */
export interface MachineFeed {
  dsKgPerH: number | null;
  feedM3PerH: number | null;
  totalSolidsPct: number | null;
  /** 100 - volatile share */
  inorganicPct: number | null;
}

export type MachineCheckName = "loading" | "hydraulic" | "feed-window" | "solids-threshold" | "inorganic";

export interface MachineCheck {
  name: MachineCheckName;
  state: "within" | "outside" | "missing";
  value: number | null;
  low: number | null;
  high: number | null;
  /** which input is missing, or what to do, or what it means */
  words: string;
}

type Check = (limits: MachineLimits, feed: MachineFeed) => Omit<MachineCheck, "name">;

const lacking = (words: string): Omit<MachineCheck, "name"> => ({
  state: "missing",
  value: null,
  low: null,
  high: null,
  words,
});

const checks: Record<MachineCheckName, Check> = {
  loading: (limits, feed) => {
    if (limits.effectiveWidthM === null) return lacking(plantFormulaWords.machine.width);
    if (limits.loadingKgPerHPerM === null) return lacking(plantFormulaWords.machine.loading);
    if (feed.dsKgPerH === null) return lacking(plantFormulaWords.machine.feedFirst);
    const value = loadingKgPerHPerM(feed.dsKgPerH, limits.effectiveWidthM);
    const within = value <= limits.loadingKgPerHPerM;
    return {
      state: within ? "within" : "outside",
      value,
      low: null,
      high: limits.loadingKgPerHPerM,
      words: within ? "" : plantFormulaWords.machine.overloaded,
    };
  },
  hydraulic: (limits, feed) => {
    if (limits.hydraulicLimitM3PerH === null) return lacking(plantFormulaWords.machine.hydraulicLimit);
    if (feed.feedM3PerH === null) return lacking(plantFormulaWords.machine.feedFirst);
    const within = feed.feedM3PerH <= limits.hydraulicLimitM3PerH;
    return {
      state: within ? "within" : "outside",
      value: feed.feedM3PerH,
      low: null,
      high: limits.hydraulicLimitM3PerH,
      words: within ? "" : plantFormulaWords.machine.flooded,
    };
  },
  "feed-window": (limits, feed) => {
    if (limits.feedLowPct === null || limits.feedHighPct === null)
      return lacking(plantFormulaWords.machine.feedWindow);
    if (feed.totalSolidsPct === null) return lacking(plantFormulaWords.machine.totalSolids);
    const thin = feed.totalSolidsPct < limits.feedLowPct;
    const thick = feed.totalSolidsPct > limits.feedHighPct;
    return {
      state: thin || thick ? "outside" : "within",
      value: feed.totalSolidsPct,
      low: limits.feedLowPct,
      high: limits.feedHighPct,
      words: thin ? plantFormulaWords.machine.tooThin : thick ? plantFormulaWords.machine.tooThick : "",
    };
  },
  "solids-threshold": (limits, feed) => {
    if (limits.solidsThresholdPct === null) return lacking(plantFormulaWords.machine.solidsThreshold);
    if (feed.totalSolidsPct === null) return lacking(plantFormulaWords.machine.totalSolids);
    const thin = feed.totalSolidsPct < limits.solidsThresholdPct;
    return {
      state: thin ? "outside" : "within",
      value: feed.totalSolidsPct,
      low: limits.solidsThresholdPct,
      high: null,
      words: thin ? plantFormulaWords.machine.thinFeed : "",
    };
  },
  inorganic: (limits, feed) => {
    if (limits.inorganicLowPct === null || limits.inorganicHighPct === null)
      return lacking(plantFormulaWords.machine.inorganicThresholds);
    if (feed.inorganicPct === null) return lacking(plantFormulaWords.machine.ashDishes);
    const { inorganicPct } = feed;
    const outside = inorganicPct >= limits.inorganicLowPct;
    return {
      state: outside ? "outside" : "within",
      value: inorganicPct,
      low: null,
      high: limits.inorganicLowPct,
      words:
        inorganicPct >= limits.inorganicHighPct
          ? plantFormulaWords.machine.abrasive
          : outside
            ? plantFormulaWords.machine.betweenThresholds
            : "",
    };
  },
};

/** A machine's own limits against one feed, each check by itself. Formulas: trade formulas, section 7; limits: the user's. */
export function checkMachine(limits: MachineLimits, feed: MachineFeed): MachineCheck[] {
  return (Object.keys(checks) as MachineCheckName[]).map((name) => ({ name, ...checks[name](limits, feed) }));
}
