import { loadingKgPerHPerM } from "./load.ts";

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

const ask = "Ask the machine's supplier and a licensed engineer.";

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
    if (limits.effectiveWidthM === null) return lacking("enter the effective width");
    if (limits.loadingKgPerHPerM === null) return lacking("enter the loading for this class of sludge");
    if (feed.dsKgPerH === null) return lacking("enter the feed first");
    const value = loadingKgPerHPerM(feed.dsKgPerH, limits.effectiveWidthM);
    const within = value <= limits.loadingKgPerHPerM;
    return {
      state: within ? "within" : "outside",
      value,
      low: null,
      high: limits.loadingKgPerHPerM,
      words: within ? "" : `Lower the feed, run longer hours or add width. ${ask}`,
    };
  },
  hydraulic: (limits, feed) => {
    if (limits.hydraulicLimitM3PerH === null) return lacking("enter the hydraulic limit");
    if (feed.feedM3PerH === null) return lacking("enter the feed first");
    const within = feed.feedM3PerH <= limits.hydraulicLimitM3PerH;
    return {
      state: within ? "within" : "outside",
      value: feed.feedM3PerH,
      low: null,
      high: limits.hydraulicLimitM3PerH,
      words: within ? "" : `Lower the feed flow or thicken the sludge first. ${ask}`,
    };
  },
  "feed-window": (limits, feed) => {
    if (limits.feedLowPct === null || limits.feedHighPct === null)
      return lacking("enter the lowest and highest feed solids");
    if (feed.totalSolidsPct === null) return lacking("enter the feed's total solids");
    const thin = feed.totalSolidsPct < limits.feedLowPct;
    const thick = feed.totalSolidsPct > limits.feedHighPct;
    return {
      state: thin || thick ? "outside" : "within",
      value: feed.totalSolidsPct,
      low: limits.feedLowPct,
      high: limits.feedHighPct,
      words: thin
        ? `Too thin: thicken the sludge first. ${ask}`
        : thick
          ? `Too thick: dilute the feed, or it will not mix with the polymer. ${ask}`
          : "",
    };
  },
  "solids-threshold": (limits, feed) => {
    if (limits.solidsThresholdPct === null) return lacking("enter the solids threshold");
    if (feed.totalSolidsPct === null) return lacking("enter the feed's total solids");
    const thin = feed.totalSolidsPct < limits.solidsThresholdPct;
    return {
      state: thin ? "outside" : "within",
      value: feed.totalSolidsPct,
      low: limits.solidsThresholdPct,
      high: null,
      words: thin ? `Counts as thin feed: the water, not the solids, may set the machine's size. ${ask}` : "",
    };
  },
  inorganic: (limits, feed) => {
    if (limits.inorganicLowPct === null || limits.inorganicHighPct === null)
      return lacking("enter the two thresholds of the inorganic share");
    if (feed.inorganicPct === null) return lacking("ash the sample's dishes to have the inorganic share");
    const { inorganicPct } = feed;
    const outside = inorganicPct >= limits.inorganicLowPct;
    return {
      state: outside ? "outside" : "within",
      value: inorganicPct,
      low: null,
      high: limits.inorganicLowPct,
      words:
        inorganicPct >= limits.inorganicHighPct
          ? `Above the upper threshold: heavy, abrasive sludge; capacity and wear differ. ${ask}`
          : outside
            ? `Between the two thresholds: take the loading from a trial, not from a table. ${ask}`
            : "",
    };
  },
};

/** A machine's own limits against one feed, each check by itself. Formulas: trade formulas, section 7; limits: the user's. */
export function checkMachine(limits: MachineLimits, feed: MachineFeed): MachineCheck[] {
  return (Object.keys(checks) as MachineCheckName[]).map((name) => ({ name, ...checks[name](limits, feed) }));
}
