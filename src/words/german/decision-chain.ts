import type { decisionChainWords } from "../decision-chain.ts";

export const decisionChain: typeof decisionChainWords = {
  approved: "freigegeben",
  outOfDate: "überholt",
  sample: (label) => `Probe ${label}`,
  dish: (label) => `Schale ${label}`,
  stock: (label) => `Stammlösung ${label}`,
  product: (label) => `Produkt ${label}`,
  series: (label) => `Reihe ${label}`,
  jar: (label) => `Becher ${label}`,
  reading: (jar, number) => `Becher ${jar}, Ablesung ${number}`,
  targets: "Zielwerte",
  nothing: "leer",
  yes: "ja",
  no: "nein",
  changed: (what, before, now) => `${what}: war ${before}, ist jetzt ${now}`,
  gone: (what, before) => `${what}: war ${before}, fehlt jetzt`,
};
