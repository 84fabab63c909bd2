import type { CakeTsWords } from "../cake-ts.ts";

export const responseCakeTs: CakeTsWords = {
  label: "Kuchen-TR",
  column: "Kuchen-TR",
  ask: "Trockenrückstand des Kuchens ablesen",
  run: "Kuchen-TR, abgelesen",
  head: "Kuchen-TR, %",
  onScreen: (pct) => `Kuchen-TR ${pct} %`,
  tare: "Kuchenschale, leer",
  askTare: "Leere Schale wiegen",
  wet: "mit nassem Kuchen",
  askWet: "Pressen, Schale mit nassem Kuchen wiegen, dann in den Ofen stellen",
  dry: "Kuchen getrocknet",
  askDry: "Schale mit trockenem Kuchen wiegen",
  dryStandard: "Standard Methods 2540 G; EN 15934 (Nummer aus dem Gedächtnis)",
  runDish: "Kuchen-TR, mit Schale",
  form: "Kuchenschale",
  formTare: "leere Schale",
  formDry: "getrocknet",
  headDish: "Kuchenschale: leer, nass, trocken g = %",
  needsTare: "Zuerst die leere Schale wiegen.",
  notWeighed: "nicht gewogen",
  dishOnScreen: (tare, wet, dry, pct) =>
    `Kuchenschale ${tare}, ${wet ?? "nass nicht gewogen"}, ${dry ?? "im Ofen"}${pct === null ? "" : ` g: ${pct} %`}`,
  slot: "Kuchen-TR",
  group: "eine Kuchenschale",
  fields: {
    cake_ts_pct: "Kuchen-TR, %",
    cake_dish_tare_g: "Kuchenschale: leer, g",
    cake_dish_wet_g: "Kuchenschale: nass, g",
    cake_dish_dry_g: "Kuchenschale: trocken, g",
  },
};
