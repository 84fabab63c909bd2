import type { Field, Slot } from "./columns.ts";

const slotWords: Record<Slot, string> = {
  turbidity: "turbidity",
  filtrate_tss: "filtrate TSS",
  drained: "drained volume",
  drainage: "drainage at another time",
  cst: "CST",
  filter_time: "time to filter",
  srf: "specific resistance",
  cake: "cake TS",
  capture: "capture",
  floc: "floc grade",
  re_shear: "floc strength",
  zeta: "zeta potential",
};

type AboutField = `${Slot}_left_out` | `${Slot}_left_out_note` | `${Slot}_note`;

const own: Record<Exclude<Field, AboutField>, string> = {
  series: "series name",
  sample: "sample name",
  stock_a: "stock solution of polymer A",
  stock_b: "stock solution of polymer B",
  jar: "jar name",
  order: "running order",
  role: "jar's role",
  block: "block (bucket or day)",
  planned_dose_a_kg_per_t: "planned dose A, kg/t active",
  planned_dose_b_kg_per_t: "planned dose B, kg/t active",
  blank_water_ml: "blank water, mL",
  sample_volume_ml: "sample volume, mL",
  mixed_fast_rpm: "as mixed: fast, rpm",
  mixed_fast_s: "as mixed: fast, s",
  mixed_between_s: "as mixed: between polymers, s",
  mixed_slow_rpm: "as mixed: slow, rpm",
  mixed_slow_s: "as mixed: slow, s",
  mixed_pours: "as mixed: pours",
  left_out: "jar left out, reason",
  left_out_note: "jar left out, words",
  note: "note on the jar",
  turbidity_ntu: "turbidity, NTU, dilution counted",
  turbidity_fnu: "turbidity, FNU, dilution counted",
  turbidity_shown: "turbidity as the instrument shows it",
  turbidity_dilution: "dilution factor of the turbidity",
  filtrate_tss_mg_per_l: "filtrate TSS, mg/L",
  filtrate_dish_tare_g: "filtrate TSS: empty filter, g",
  filtrate_dish_dry_g: "filtrate TSS: dried filter, g",
  filtrate_dish_volume_ml: "filtrate TSS: volume filtered, mL",
  drained_ml: "drained volume, mL",
  drained_at_s: "drained volume: read at, s",
  drainage_ml: "drainage at another time, mL",
  drainage_at_s: "drainage at another time: read at, s",
  cst_s: "CST, s",
  filter_time_s: "time to filter, s",
  srf_tm_per_kg: "specific resistance, Tm/kg",
  srf_volumes_ml: "specific resistance: volumes, mL",
  srf_times_s: "specific resistance: times, s",
  srf_first_used: "specific resistance: first point used",
  srf_last_used: "specific resistance: last point used",
  srf_diameter_mm: "specific resistance: filter diameter, mm",
  srf_pressure_kpa: "specific resistance: pressure, kPa",
  srf_temperature_c: "specific resistance: temperature, °C",
  srf_cake_kg_per_m3: "specific resistance: dry cake per filtrate, kg/m³",
  cake_ts_pct: "cake TS, %",
  cake_dish_tare_g: "cake dish: empty, g",
  cake_dish_wet_g: "cake dish: wet, g",
  cake_dish_dry_g: "cake dish: dry, g",
  capture_pct: "capture, %",
  floc_grade: "floc grade, 1 to 5",
  re_shear_first_mm: "floc size before breaking, mm",
  re_shear_broken_mm: "floc size when broken, mm",
  re_shear_regrown_mm: "floc size when regrown, mm",
  zeta_mv: "zeta potential, mV",
};

/** What a column is called on the screen and in sentences. */
export function fieldLabel(field: Field): string {
  if (Object.hasOwn(own, field)) return own[field as keyof typeof own];
  const [, slot, ending] = /^(.*?)_(left_out_note|left_out|note)$/.exec(field)!;
  const words = slotWords[slot as Slot];
  if (ending === "note") return `note on the ${words}`;
  return `${words} left out, ${ending === "left_out" ? "reason" : "words"}`;
}
