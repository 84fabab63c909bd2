import { area } from "./language.ts";

/** Choosing a dose: the limits in words, the responses by name, and why a rule or a comparison has nothing to say. */
export const choiceChainWords = area("choiceChain", {
  limits: {
    turbidity: (value: string, unit: string) => `turbidity at most ${value} ${unit}`,
    filtrateTss: (value: string) => `filtrate TSS at most ${value} mg/L`,
    cst: (value: string) => `CST at most ${value} s`,
    cake: (value: string) => `cake TS at least ${value} %`,
    drained: (value: string) => `drained at least ${value} mL`,
    capture: (value: string) => `capture at least ${value} %`,
  },
  responses: {
    turbidity_ntu: "Turbidity",
    filtrate_tss_mg_per_l: "Filtrate TSS",
    cst_s: "CST",
    srf_tm_per_kg: "SRF",
    cake_ts_pct: "Cake TS",
    drained_ml: "Drained",
    capture_pct: "Capture",
  },
  noCurve: "this response has no fitted curve, so the limit cannot be judged",
  kneeOf: (response: string) => `knee of ${response}`,
  bestOf: (response: string) => `best of ${response}`,
  overDoseNotPriced: "Over-dose not priced: capture was not read, so a constant stands in for it.",
  ofSeries: (series: string, why: string) => `${series}: ${why}`,
  noDisposal: (series: string) =>
    `${series}: its disposal cannot be priced, for cake or capture was not read there: enter a capture where it was not read.`,
  noLimitJudged: (series: string) => `${series}: no limit of this comparison can be judged there.`,
  noPolymerPrice: (series: string) => `${series}: a polymer has no price or active share.`,
  noPrice: (series: string) => `${series}: the polymer has no price or active share.`,
  nothingFitted: (series: string) => `${series}: nothing is fitted there yet.`,
});
