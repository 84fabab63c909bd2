import { area } from "./language.ts";

/** What the columns of a sheet are called on the screen and in sentences; the heads in the files themselves stay as they are. */
export const columnWords = area("columns", {
  own: {
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
    mixed_at: "mixed at, date and time with offset",
    mixed_fast_rpm: "as mixed: fast, rpm",
    mixed_fast_s: "as mixed: fast, s",
    mixed_between_s: "as mixed: between polymers, s",
    mixed_slow_rpm: "as mixed: slow, rpm",
    mixed_slow_s: "as mixed: slow, s",
    mixed_pours: "as mixed: pours",
    left_out: "jar left out, reason",
    left_out_note: "jar left out, words",
    note: "note on the jar",
  },
  note: (slot: string) => `note on the ${slot}`,
  takenAt: (slot: string) => `${slot} read at, date and time with offset`,
  leftOutReason: (slot: string) => `${slot} left out, reason`,
  leftOutWords: (slot: string) => `${slot} left out, words`,
});
