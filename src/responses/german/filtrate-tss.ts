import type { FiltrateTssWords } from "../filtrate-tss.ts";

export const responseFiltrateTss: FiltrateTssWords = {
  label: "TSS im Filtrat",
  column: "TSS im Filtrat",
  ask: "Abfiltrierbare Stoffe im Filtrat ablesen",
  run: "TSS im Filtrat, abgelesen",
  head: "TSS im Fil\u00adtrat, mg/L",
  onScreen: (mgPerL) => `TSS im Filtrat ${mgPerL} mg/L`,
  tare: "leerer Filter",
  askTare: "Leeren Filter wiegen",
  volume: "filtriert",
  askVolume: "Filtrieren und das Volumen notieren, dann den Filter in den Ofen legen",
  dry: "getrockneter Filter",
  askDry: "Getrockneten Filter wiegen",
  runDish: "TSS im Filtrat, mit Filter",
  form: "TSS im Filtrat mit Filter",
  headDish: "Filter: leer, trocken g; mL = mg/L",
  needsTare: "Zuerst den leeren Filter wiegen.",
  needsVolume: "Zuerst den leeren Filter wiegen und ein Volumen filtrieren.",
  notWeighed: "nicht gewogen",
  dishOnScreen: (tare, volume, dry, mgPerL) =>
    `Filter ${tare} g, ${volume === null ? "nicht filtriert" : `${volume} mL`}, ${dry === null ? "im Ofen" : `${dry} g`}${mgPerL === null ? "" : `: ${mgPerL} mg/L`}`,
  slot: "abfiltrierbare Stoffe im Filtrat",
  group: "die TSS mit Filter",
  fields: {
    filtrate_tss_mg_per_l: "abfiltrierbare Stoffe im Filtrat, mg/L",
    filtrate_dish_tare_g: "abfiltrierbare Stoffe: leerer Filter, g",
    filtrate_dish_dry_g: "abfiltrierbare Stoffe: getrockneter Filter, g",
    filtrate_dish_volume_ml: "abfiltrierbare Stoffe: filtriertes Volumen, mL",
  },
};
