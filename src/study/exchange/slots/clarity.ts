import { undilutedTurbidity } from "../../../bench/measurements.ts";
import type { Field } from "../../../exchange/columns.ts";
import { suspendedSolidsMgPerL } from "../../../sample/solids.ts";
import { agrees, bound, group, type SlotSpec } from "./slot.ts";
import { importWords } from "../../../words/imports.ts";

/** Turbidity and suspended solids of the filtrate. */
export const claritySlots: SlotSpec[] = [
  {
    slot: "turbidity",
    kinds: ["turbidity"],
    fields: ["turbidity_ntu", "turbidity_fnu", "turbidity_shown", "turbidity_dilution"],
    write: (result, series) => {
      if (result.kind !== "turbidity") return {};
      const { value, dilution, censored } = result;
      return {
        [series.turbidityUnit === "FNU" ? "turbidity_fnu" : "turbidity_ntu"]: bound(
          undilutedTurbidity(value, dilution),
          censored,
        ),
        ...(dilution === 1 ? {} : { turbidity_shown: bound(value, censored), turbidity_dilution: dilution }),
      };
    },
    read: (row, series) => {
      const own: Field = series.turbidityUnit === "FNU" ? "turbidity_fnu" : "turbidity_ntu";
      const other: Field = own === "turbidity_fnu" ? "turbidity_ntu" : "turbidity_fnu";
      if (row.filled(other)) {
        row.fault(other, importWords.otherTurbidityUnit(series.label, series.turbidityUnit));
        return null;
      }
      const shown = row.reading("turbidity_shown");
      if (shown === null) {
        const plain = row.reading(own);
        if (row.filled("turbidity_dilution") && !row.filled("turbidity_shown"))
          row.fault("turbidity_dilution", importWords.dilutionAlone);
        return plain
          ? {
              result: { kind: "turbidity", ...plain, dilution: 1 },
              from: { value: own, dilution: "turbidity_dilution" },
            }
          : null;
      }
      const dilution = row.has("turbidity_dilution") ? row.number("turbidity_dilution") : 1;
      if (dilution === null) {
        if (!row.filled("turbidity_dilution")) row.fault("turbidity_dilution", importWords.undiluted);
        return null;
      }
      agrees(row, own, undilutedTurbidity(shown.value, dilution));
      return {
        result: { kind: "turbidity", ...shown, dilution },
        from: { value: "turbidity_shown", dilution: "turbidity_dilution" },
      };
    },
  },
  {
    slot: "filtrate_tss",
    kinds: ["filtrate-tss", "filtrate-tss-dish"],
    fields: [
      "filtrate_tss_mg_per_l",
      "filtrate_dish_tare_g",
      "filtrate_dish_dry_g",
      "filtrate_dish_volume_ml",
    ],
    write: (result) => {
      if (result.kind === "filtrate-tss")
        return { filtrate_tss_mg_per_l: bound(result.mgPerL, result.censored) };
      if (result.kind !== "filtrate-tss-dish") return {};
      return {
        filtrate_tss_mg_per_l: madeMgPerL(result),
        filtrate_dish_tare_g: result.tareG,
        filtrate_dish_dry_g: result.dryG,
        filtrate_dish_volume_ml: result.volumeMl,
      };
    },
    read: (row) => {
      const before = row.faults.length;
      const dish = group(
        row,
        ["filtrate_dish_tare_g"],
        ["filtrate_dish_dry_g", "filtrate_dish_volume_ml"],
        "filterSolids",
      );
      if (row.faults.length > before) return null;
      if (dish) {
        const masses = {
          tareG: dish.filtrate_dish_tare_g,
          dryG: dish.filtrate_dish_dry_g,
          volumeMl: dish.filtrate_dish_volume_ml,
        };
        agrees(row, "filtrate_tss_mg_per_l", madeMgPerL(masses));
        return {
          result: { kind: "filtrate-tss-dish", ...masses },
          from: {
            tareG: "filtrate_dish_tare_g",
            dryG: "filtrate_dish_dry_g",
            volumeMl: "filtrate_dish_volume_ml",
          },
        };
      }
      const read = row.reading("filtrate_tss_mg_per_l");
      return (
        read && {
          result: { kind: "filtrate-tss", mgPerL: read.value, censored: read.censored },
          from: { mgPerL: "filtrate_tss_mg_per_l" },
        }
      );
    },
  },
];

/** What the filter's masses make, once it is dry. */
function madeMgPerL(dish: { tareG: number; dryG: number | null; volumeMl: number | null }): number | null {
  if (dish.dryG === null || dish.volumeMl === null) return null;
  const made = suspendedSolidsMgPerL(dish.tareG, dish.dryG, dish.volumeMl);
  return made.ok ? made.value : null;
}
