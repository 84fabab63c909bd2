import type { CstWords } from "../cst.ts";

export const responseCst: CstWords = {
  label: "CST",
  ask: "Kapillare Fließzeit ablesen",
  standard: "Standard Methods 2710 G (Nummer aus dem Gedächtnis); EN 14701-1",
  head: "CST, s",
  onScreen: (seconds) => `CST ${seconds} s`,
  slot: "CST (kapillare Fließzeit)",
  field: "CST (kapillare Fließzeit), s",
};
