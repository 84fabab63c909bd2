import type { OutputOf } from "../../src/contract.ts";
import { emptyState, kinds, type Kind, type StudyState } from "../../src/study/schema/records.ts";
import { keysOf } from "../../src/study/tables.ts";
import { charactersAtOnce, charactersOf, oneAnswerOf } from "./one-answer.ts";

/** A table of more records than this is handed to a page in parts; reading it in one go would keep the screen still. */
const recordsAtOnce = 1500;

/** Whether a table is too large for one answer, by its records or by what they hold: photos, long texts. */
function isLarge(state: StudyState, kind: Kind): boolean {
  const table = state[kind];
  const keys = keysOf(table);
  if (keys.length > recordsAtOnce) return true;
  let characters = 0;
  return keys.some((key) => (characters += charactersOf(table[key])) > charactersAtOnce);
}

/** A study as a page is told of it at first: without its large tables, which are named. */
export function withoutLarge(state: StudyState): { state: StudyState; later: Kind[] } {
  const later = kinds.filter((kind) => isLarge(state, kind));
  const empty = emptyState();
  const left = Object.fromEntries(later.map((kind) => [kind, empty[kind]]));
  return { state: { ...state, ...left }, later };
}

/** The next records of a table, from this place of its order. */
export function recordsFrom(state: StudyState, kind: Kind, from: number): OutputOf<"study.records"> {
  const table = state[kind];
  const keys = keysOf(table);
  const some = keys.slice(from, from + recordsAtOnce).map((key) => table[key]!);
  const records = oneAnswerOf(some, 0, recordsAtOnce);
  return { records, more: from + records.length < keys.length };
}
