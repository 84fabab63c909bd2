import type { choiceChainWords } from "../choice-chain.ts";

export const choiceChain: typeof choiceChainWords = {
  limits: {
    turbidity: (value, unit) => `Trübung höchstens ${value} ${unit}`,
    filtrateTss: (value) => `TSS im Filtrat höchstens ${value} mg/L`,
    cst: (value) => `CST höchstens ${value} s`,
    cake: (value) => `Kuchen-TR mindestens ${value} %`,
    drained: (value) => `abgelaufenes Volumen mindestens ${value} mL`,
    capture: (value) => `Abscheidegrad mindestens ${value} %`,
  },
  responses: {
    turbidity_ntu: "Trübung",
    filtrate_tss_mg_per_l: "TSS im Filtrat",
    cst_s: "CST",
    srf_tm_per_kg: "Filtrationswiderstand",
    cake_ts_pct: "Kuchen-TR",
    drained_ml: "Abgelaufenes Volumen",
    capture_pct: "Abscheidegrad",
  },
  noCurve: "zu dieser Messgröße gibt es keine angepasste Kurve; der Grenzwert lässt sich nicht beurteilen",
  kneeOf: (response) => `Knick: ${response}`,
  bestOf: (response) => `Optimum: ${response}`,
  overDoseNotPriced:
    "Überdosierung nicht bepreist: Der Abscheidegrad wurde nicht abgelesen, eine Konstante steht an seiner Stelle.",
  ofSeries: (series, why) => `${series}: ${why}`,
  noDisposal: (series) =>
    `${series}: Die Entsorgung lässt sich nicht bepreisen, denn Kuchen-TR oder Abscheidegrad wurde dort nicht abgelesen: Abscheidegrad eintragen, wo er nicht abgelesen wurde.`,
  noLimitJudged: (series) => `${series}: Dort lässt sich kein Grenzwert dieses Vergleichs beurteilen.`,
  noPolymerPrice: (series) => `${series}: Einem Polymer fehlt Preis oder Wirksubstanzanteil.`,
  noPrice: (series) => `${series}: Dem Polymer fehlt Preis oder Wirksubstanzanteil.`,
  nothingFitted: (series) => `${series}: Dort ist noch nichts angepasst.`,
};
