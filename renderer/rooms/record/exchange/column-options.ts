import { fieldLabel } from "../../../../src/exchange/column-words.ts";
import {
  ignored,
  slots,
  type ColumnUse,
  type DoseBasis,
  type DoseUnit,
  type Field,
} from "../../../../src/exchange/columns.ts";

interface Choice {
  value: string;
  label: string;
}

const group = (label: string, list: Field[]) => ({
  label,
  choices: list.map((field): Choice => ({ value: field, label: fieldLabel(field) })),
});

/** What a column may be taken for, with what a technician needs first; the rest is for files of our own. */
export const columnGroups: { label: string; choices: Choice[] }[] = [
  {
    label: "Doses",
    choices: [
      { value: "dose_a", label: "dose of polymer A" },
      { value: "dose_b", label: "dose of polymer B" },
      ...(["planned_dose_a_kg_per_t", "planned_dose_b_kg_per_t"] as const).map((field) => ({
        value: field,
        label: fieldLabel(field),
      })),
    ],
  },
  group("The jar", [
    "jar",
    "series",
    "order",
    "block",
    "role",
    "sample_volume_ml",
    "blank_water_ml",
    "note",
    "left_out",
    "left_out_note",
    "sample",
    "stock_a",
    "stock_b",
    "mixed_fast_rpm",
    "mixed_fast_s",
    "mixed_between_s",
    "mixed_slow_rpm",
    "mixed_slow_s",
    "mixed_pours",
  ]),
  group("Filtrate", [
    "turbidity_ntu",
    "turbidity_fnu",
    "turbidity_shown",
    "turbidity_dilution",
    "filtrate_tss_mg_per_l",
    "filtrate_dish_tare_g",
    "filtrate_dish_dry_g",
    "filtrate_dish_volume_ml",
    "capture_pct",
    "zeta_mv",
  ]),
  group("Drainage and cake", [
    "drained_ml",
    "drained_at_s",
    "drainage_ml",
    "drainage_at_s",
    "cst_s",
    "filter_time_s",
    "cake_ts_pct",
    "cake_dish_tare_g",
    "cake_dish_wet_g",
    "cake_dish_dry_g",
    "floc_grade",
    "re_shear_first_mm",
    "re_shear_broken_mm",
    "re_shear_regrown_mm",
    "srf_tm_per_kg",
    "srf_volumes_ml",
    "srf_times_s",
    "srf_first_used",
    "srf_last_used",
    "srf_diameter_mm",
    "srf_pressure_kpa",
    "srf_temperature_c",
    "srf_cake_kg_per_m3",
  ]),
  group(
    "Reasons and notes of readings",
    slots.flatMap((slot): Field[] => [`${slot}_left_out`, `${slot}_left_out_note`, `${slot}_note`]),
  ),
];

export const unitChoices: { value: DoseUnit; label: string }[] = [
  { value: "kg-per-t", label: "kg/t of dry solids" },
  { value: "lb-per-short-ton", label: "lb/short ton of dry solids" },
  { value: "mg-per-l-feed", label: "mg/L of feed sludge" },
  { value: "ml-solution", label: "mL of stock solution" },
];

export const basisChoices: { value: DoseBasis; label: string }[] = [
  { value: "active", label: "active polymer" },
  { value: "as-supplied", label: "product as supplied" },
];

/** A column's use as the value of its list, and back. A dose begins with its unit and basis open. */
export function useValue(use: ColumnUse): string {
  if (use.as === "ignore") return "";
  return use.as === "dose" ? `dose_${use.polymer}` : use.field;
}

export function useFrom(value: string, before: ColumnUse): ColumnUse {
  if (value === "") return ignored;
  if (value !== "dose_a" && value !== "dose_b") return { as: "field", field: value as Field };
  const polymer = value === "dose_a" ? "a" : "b";
  return before.as === "dose" ? { ...before, polymer } : { as: "dose", polymer, unit: null, basis: null };
}
