import { area } from "./language.ts";

/** Curves and the choice of the dose in the trial report. */
export const doseReportWords = area("doseReport", {
  curves: "Curves",
  noCurves: (why: string) => `No curves: ${why}.`,
  nothingRead: "nothing was read yet",
  statuses: {
    "not-converged": "no fit",
    "too-few-points": "too few jars",
    singular: "not determined",
  },
  models: {
    constant: "constant",
    linear: "linear",
    quadratic: "quadratic",
    "quadratic-log": "quadratic log",
    cubic: "cubic",
    "cubic-log": "cubic log",
    polynomial: "polynomial",
    "saturating-exponential": "saturating exponential",
    plateau: "plateau",
    "gaussian-valley": "gaussian valley",
    logistic: "logistic",
    "log-logistic": "log logistic",
  },
  withNoPolymer: (model: string) => `${model}, with the no-polymer jars`,
  table: {
    onLog: "Models, fitted on the natural log; doses in kg/t active (lb/short ton)",
    onPlain: "Models, fitted on the plain scale; doses in kg/t active (lb/short ton)",
    model: "model",
    jars: "jars",
    scatter: "scatter",
    lackOfFit: "lack of fit, p",
    dose: "dose, 95 % by profile",
    notRanked: "not ranked: too few jars",
    suggested: "suggested",
    none: "none fitted",
  },
  inUs: (dose: string, low: string, high: string) => `In US customary units: ${dose}, ${low} to ${high}.`,
  sentenceInUs: (sentence: string) => `In US customary units: ${sentence}`,
  under: (limit: string) => `under ${limit}`,
  outsideTested: (dose: string) => `${dose} outside the doses tested`,
  notDetermined: (dose: string) => `${dose}, not determined`,
  upToOrFrom: (dose: string, low: string, high: string) => `${dose}, up to ${low} or from ${high}`,
  fromTo: (dose: string, low: string, high: string) => `${dose}, ${low} to ${high}`,
  surface: {
    jar: (jar: string, readings: string) => `jar ${jar}: ${readings}`,
    doseA: "dose A, kg active per t dry solids",
    doseB: "dose B, kg/t active",
    best: "best fitted",
    approved: "approved",
    legend: (response: string) =>
      `Jars at their doses with ${response.replace(/^\p{Lu}(?=\p{Ll})/u, (first) => first.toLowerCase())} as read; thin: levels of the fitted surface, whose terms are in the table; dashed: up to where a target is held with one-sided 95 % confidence.`,
    none: "No surface was fitted.",
    onLog: "Second-order surface on the natural log, in both doses",
    onPlain: "Second-order surface on the plain scale, in both doses",
    term: "term",
    value: "value",
    error: "standard error",
    noTerms: "no terms",
    kinds: { minimum: "minimum", maximum: "maximum", saddle: "saddle", ridge: "ridge" },
    stationaryInside: (a: string, b: string, kind: string) =>
      `Stationary point: A ${a}, B ${b}, a ${kind} of the surface, inside the pairs tested.`,
    stationaryOutside: (a: string, b: string, kind: string) =>
      `Stationary point: A ${a}, B ${b}, a ${kind} of the surface, outside the pairs tested.`,
  },
  choice: "Choice of the dose",
  limits: {
    noneSet: "No limits were set.",
    atNoDose: "at no dose tested",
    caption: "Limits, each by itself at the one-sided 95 % bound of the mean curve",
    limit: "limit",
    holds: "holds from, to",
    onSurface: "judged on the fitted surface, see the pair below",
    notJudged: "not judged: this response has no fitted curve",
    window: (spans: string) => `Working window: ${spans}.`,
  },
  rules: {
    none: "No rule has a dose: no curve is fitted.",
    caption: "The rules side by side",
    rule: "rule",
    dose: "dose, kg/t active (lb/short ton)",
    range: "95 %, kg/t (lb/short ton)",
    cost: (currency: string) => `cost, ${currency} per t dry solids`,
    turbidity: "filtrate turbidity",
    cake: "cake TS, %",
    capture: "capture, %",
    edge: "to the nearest failing edge",
    miss: "chance to miss",
    againstToday: (currency: string) => `against today, ${currency} per t`,
    why: (rule: string, why: string) => `${rule}: ${why}`,
    chance: (draws: number, seed: number) =>
      `Chance to miss at least the likeliest limit: simulated (${draws} draws, seed ${seed}) from the curves' error, the dose error all jars share, the feed's drift at a fixed ratio and one jar's scatter.`,
    notPriced: "not priced",
    fails: (limit: string) => `fails: ${limit}`,
    distance: (distance: string, limit: string) => `${distance}: ${limit}`,
    noSaving: "not priced, or today's dose lies outside those tested",
    saving: (change: string, low: string, high: string, chance: string) =>
      `${change} (${low} to ${high}), cheaper with a chance of ${chance} %`,
  },
  pair: {
    none: "No limit of this series can be judged, so no pair was picked by rule.",
    cheapest: (a: string, b: string) => `Cheapest within all limits: A ${a}, B ${b} active.`,
    cheapestAt: (a: string, b: string, cost: string, currency: string) =>
      `Cheapest within all limits: A ${a}, B ${b} active at ${cost} ${currency} per t dry solids.`,
    least: (a: string, b: string) => `Least polymer within all limits: A ${a}, B ${b} active.`,
    leastAt: (a: string, b: string, cost: string, currency: string) =>
      `Least polymer within all limits: A ${a}, B ${b} active at ${cost} ${currency} per t dry solids.`,
  },
  decision: {
    none: "No dose was approved for this series.",
    withdrawn: "withdrawn",
    replaced: "replaced by a later one",
    pair: (a: string, b: string) => `A ${a}, B ${b} active`,
    goodFrom: "Good from, to",
    noRange: "no range was recorded",
    rule: "Rule",
    reason: "Reason",
    approved: "Approved",
    approvedBy: (name: string, moment: string, methods: string, inputs: number) =>
      `${name}, ${moment}, methods ${methods}, ${inputs} inputs kept with it`,
    outOfDate: "Out of date",
    since: (moved: string) => `since then ${moved}`,
    withdrawnHead: "Withdrawn",
    withdrawnBy: (name: string, moment: string, reason: string) => `${name}, ${moment}: ${reason}`,
  },
});

/** A model as tables name it; one without a text of its own goes by its name. */
export function modelTitle(name: string): string {
  const titles: Record<string, string> = doseReportWords.models;
  return titles[name] ?? name.replaceAll("-", " ");
}
