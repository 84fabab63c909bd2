import { fileSlots } from "../responses/registry.ts";
import { columnWords } from "../words/columns.ts";
import type { Field, JarField } from "./columns.ts";

/** What a column is called on the screen and in sentences. */
export function fieldLabel(field: Field): string {
  const own: Record<JarField, string> = columnWords.own;
  if (Object.hasOwn(own, field)) return own[field as JarField];
  const readings: Record<string, string> = Object.assign({}, ...fileSlots.map(({ fields }) => fields));
  if (Object.hasOwn(readings, field)) return readings[field]!;
  const [, slot, ending] = /^(.*?)_(left_out_note|left_out|note|taken_at)$/.exec(field)!;
  const words = fileSlots.find((one) => one.slot === slot)!.words;
  if (ending === "note") return columnWords.note(words);
  if (ending === "taken_at") return columnWords.takenAt(words);
  return ending === "left_out" ? columnWords.leftOutReason(words) : columnWords.leftOutWords(words);
}
