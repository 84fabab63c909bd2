import { columnWords } from "../words/columns.ts";
import type { Field, Slot } from "./columns.ts";

type AboutField = `${Slot}_left_out` | `${Slot}_left_out_note` | `${Slot}_note`;

/** What a column is called on the screen and in sentences. */
export function fieldLabel(field: Field): string {
  const own: Record<Exclude<Field, AboutField>, string> = columnWords.own;
  const slotWords: Record<Slot, string> = columnWords.slots;
  if (Object.hasOwn(own, field)) return own[field as keyof typeof own];
  const [, slot, ending] = /^(.*?)_(left_out_note|left_out|note)$/.exec(field)!;
  const words = slotWords[slot as Slot];
  if (ending === "note") return columnWords.note(words);
  return ending === "left_out" ? columnWords.leftOutReason(words) : columnWords.leftOutWords(words);
}
