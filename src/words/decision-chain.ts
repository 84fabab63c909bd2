import { area } from "./language.ts";

/** The inputs under an approved dose by name, and what is said of one that moved since. */
export const decisionChainWords = area("decisionChain", {
  approved: "approved",
  outOfDate: "out of date",
  sample: (label: string) => `sample ${label}`,
  dish: (label: string) => `dish ${label}`,
  stock: (label: string) => `stock ${label}`,
  product: (label: string) => `product ${label}`,
  series: (label: string) => `series ${label}`,
  jar: (label: string) => `jar ${label}`,
  reading: (jar: string, number: number) => `jar ${jar} reading ${number}`,
  targets: "targets",
  nothing: "nothing",
  yes: "yes",
  no: "no",
  changed: (what: string, before: string, now: string) => `${what} was ${before} and is now ${now}`,
  gone: (what: string, before: string) => `${what} was ${before} and is gone`,
});
