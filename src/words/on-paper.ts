import { area, counted } from "./language.ts";

/** What both papers share: how gaps, moments, histories and readings are written on them. */
export const onPaperWords = area("onPaper", {
  /** the page's language as HTML names it */
  languageTag: "en",
  study: "study",
  notMeasured: "not measured",
  notNoted: "not noted",
  notGiven: "not given",
  notKnown: "not known",
  none: "none",
  missing: (what: string) => `missing: ${what}`,
  anInput: "an input",
  lotNotNoted: "lot not noted",
  open: "open",
  range: (low: string, high: string) => `${low} to ${high}`,
  active: (amount: string) => `${amount} active`,
  asSupplied: (amount: string) => `${amount} as supplied`,
  date: (year: string, month: string, day: string) => `${year}-${month}-${day}`,
  history: (entries: number, hash: string) => `history entry ${entries}, hash ${hash}`,
  historyBegins: (entries: number, hash: string) => `history entry ${entries}, hash begins ${hash}`,
  brokenHistory: (history: string) => `${history} (THE HISTORY'S CHAIN IS BROKEN)`,
  ago: {
    after: "after this print",
    minutes: (minutes: number) => `${minutes} min before this print`,
    hours: (hours: number) => `${hours} h before this print`,
    days: (days: number) => `${days} days before this print`,
  },
  leftOut: {
    spilled: "spilled",
    "wrong-dose": "wrong dose",
    "mixing-failed": "mixing failed",
    "timer-missed": "timer missed",
    "reading-failed": "reading failed",
    "sample-changed": "sample changed",
    other: "other",
  },
  feedSizes: { least: "least", usual: "usual", most: "most" },
  streams: { neat: "neat product", solution: "solution" },
  rules: {
    "cheapest-in-limits": "cheapest within all limits",
    minimum: "best of a response",
    knee: "knee of a response",
    "near-least-cost": "lowest within 1 % of least cost",
    "least-cost": "least total cost",
    desirability: "most desirable",
    own: "our own judgement",
  },
  calibration: {
    noPump: "missing: a pump with draw-downs",
    noDraws: "missing: draw-downs",
    draws: (count: number, low: string, high: string, unit: string) =>
      `${counted(count, "draw-down", "draw-downs")} from ${low} to ${high} ${unit}`,
    noDate: "date not noted",
  },
});
