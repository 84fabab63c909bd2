import { fileSlots } from "../responses/registry.ts";
import type { Field, JarField } from "./columns.ts";

const slotWords = Object.fromEntries(fileSlots.map(({ slot, words }) => [slot, words]));

const own: Record<JarField, string> = {
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
};
const readings: Record<string, string> = Object.assign({}, ...fileSlots.map(({ fields }) => fields));

/** What a column is called on the screen and in sentences. */
export function fieldLabel(field: Field): string {
  if (Object.hasOwn(own, field)) return own[field as JarField];
  if (Object.hasOwn(readings, field)) return readings[field]!;
  const [, slot, ending] = /^(.*?)_(left_out_note|left_out|note)$/.exec(field)!;
  const words = slotWords[slot!];
  if (ending === "note") return `note on the ${words}`;
  return `${words} left out, ${ending === "left_out" ? "reason" : "words"}`;
}
