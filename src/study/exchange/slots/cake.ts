import { totalSolidsPct } from "../../../sample/solids.ts";
import { agrees, group, plainSlot, type SlotSpec } from "./slot.ts";

/** What is left: cake solids, capture, and the floc itself. */
export const cakeSlots: SlotSpec[] = [
  {
    slot: "cake",
    kinds: ["cake-ts", "cake-dish"],
    fields: ["cake_ts_pct", "cake_dish_tare_g", "cake_dish_wet_g", "cake_dish_dry_g"],
    write: (result) => {
      if (result.kind === "cake-ts") return { cake_ts_pct: result.pct };
      if (result.kind !== "cake-dish") return {};
      return {
        cake_ts_pct: madePct(result),
        cake_dish_tare_g: result.tareG,
        cake_dish_wet_g: result.wetG,
        cake_dish_dry_g: result.dryG,
      };
    },
    read: (row) => {
      const before = row.faults.length;
      const dish = group(row, ["cake_dish_tare_g"], ["cake_dish_wet_g", "cake_dish_dry_g"], "cakeDish");
      if (row.faults.length > before) return null;
      if (dish) {
        const masses = {
          tareG: dish.cake_dish_tare_g,
          wetG: dish.cake_dish_wet_g,
          dryG: dish.cake_dish_dry_g,
        };
        agrees(row, "cake_ts_pct", madePct(masses));
        return {
          result: { kind: "cake-dish", ...masses },
          from: { tareG: "cake_dish_tare_g", wetG: "cake_dish_wet_g", dryG: "cake_dish_dry_g" },
        };
      }
      const pct = row.number("cake_ts_pct");
      return pct === null ? null : { result: { kind: "cake-ts", pct }, from: { pct: "cake_ts_pct" } };
    },
  },
  plainSlot("capture", "capture", "pct", "capture_pct"),
  plainSlot("floc", "floc-grade", "grade", "floc_grade"),
  plainSlot("zeta", "zeta", "mV", "zeta_mv"),
  {
    slot: "re_shear",
    kinds: ["re-shear"],
    fields: ["re_shear_first_mm", "re_shear_broken_mm", "re_shear_regrown_mm"],
    write: (result) =>
      result.kind === "re-shear"
        ? {
            re_shear_first_mm: result.firstMm,
            re_shear_broken_mm: result.brokenMm,
            re_shear_regrown_mm: result.regrownMm,
          }
        : {},
    read: (row) => {
      const sizes = group(
        row,
        ["re_shear_first_mm", "re_shear_broken_mm"],
        ["re_shear_regrown_mm"],
        "flocStrength",
      );
      return (
        sizes && {
          result: {
            kind: "re-shear",
            firstMm: sizes.re_shear_first_mm,
            brokenMm: sizes.re_shear_broken_mm,
            regrownMm: sizes.re_shear_regrown_mm,
          },
          from: {
            firstMm: "re_shear_first_mm",
            brokenMm: "re_shear_broken_mm",
            regrownMm: "re_shear_regrown_mm",
          },
        }
      );
    },
  },
];

/** What the dish makes, once it is dry. */
function madePct(dish: { tareG: number; wetG: number | null; dryG: number | null }): number | null {
  const made = totalSolidsPct({ ...dish, ashG: null });
  return made.ok ? made.value : null;
}
