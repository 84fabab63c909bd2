import { fileSlots } from "../../responses/registry.ts";
import type { RecordOf } from "../schema/records.ts";
import { about, type Field, type Slot } from "../../exchange/columns.ts";
import type { FileCell, FileSlot } from "../../responses/response.ts";
import { instantSchema, leftOutSchema } from "../schema/common.ts";
import { clip, type RowReader } from "./row-reader.ts";
import { importWords } from "../../words/imports.ts";

type Reading = RecordOf<"reading">;
type Result = Reading["result"];
type Series = RecordOf<"series">;
type LeftOut = Reading["leftOut"];

/** A reading as it comes from a row, before it belongs to a jar. */
export interface ReadResult {
  result: Result;
  /** the column that each part came from, so that a refused part can be named */
  from: Partial<Record<string, Field>>;
  slot: Slot;
  leftOut: LeftOut;
  note: string;
  takenAt: string | null;
}

/** One thing read of a jar as columns of a file. */
export type JarSlot = FileSlot<Field> & { slot: Slot };
const jarSlots = fileSlots as unknown as JarSlot[];

const reasons = leftOutSchema.shape.reason.options;

function specOf(result: Result, series: Series): JarSlot {
  return jarSlots.find(
    ({ kinds, holds }) => kinds.includes(result.kind) && (!holds || holds(result as never, series)),
  )!;
}

/** Why something is left out, from its two columns; an unknown reason is a fault that lists the known ones. */
export function readLeftOut(row: RowReader, reason: Field, note: Field): LeftOut {
  const given = row.label(reason).toLowerCase();
  if (given === "") {
    if (row.filled(note)) row.fault(note, importWords.needsReason(reasons.join(", ")));
    return null;
  }
  const known = reasons.find((one, index) => one === given || String(index + 1) === given);
  if (known) return { reason: known, note: row.text(note) };
  row.fault(reason, importWords.notReason(given.slice(0, 40), reasons.join(", ")));
  return null;
}

/** A moment with its offset, as it stands in the file: a time without one could be any hour of that day. */
export function readMoment(row: RowReader, field: Field): string | null {
  const given = row.label(field);
  if (given === "") return null;
  if (instantSchema.safeParse(given).success) return given;
  row.fault(field, importWords.notMoment(clip(given)));
  return null;
}

/** The slots that a file has a column of; the others need not be looked at in each row. */
export function slotsWith(has: (field: Field) => boolean): JarSlot[] {
  return jarSlots.filter(({ slot, fields }) =>
    [...Object.keys(fields), ...about(slot)].some((field) => has(field as Field)),
  );
}

/** Everything that was read of a jar in one row. */
export function readSlots(row: RowReader, series: Series, specs: JarSlot[]): ReadResult[] {
  const found: ReadResult[] = [];
  for (const { slot, fields, read } of specs) {
    const before = row.faults.length;
    const answer = read(row, series);
    const leftOut = readLeftOut(row, `${slot}_left_out`, `${slot}_left_out_note`);
    const note = row.text(`${slot}_note`);
    const takenAt = readMoment(row, `${slot}_taken_at`);
    if (answer)
      found.push({ slot, result: answer.result as Result, from: answer.from, leftOut, note, takenAt });
    else if (row.faults.length === before) {
      const lonely = about(slot).find((field) => row.filled(field));
      if (lonely) row.fault(lonely, importWords.noReadingBeside(Object.keys(fields)[0] ?? ""));
    }
  }
  return found;
}

/** The slot a reading is written to, in a series. */
export function slotOf(result: Result, series: Series): Slot {
  return specOf(result, series).slot;
}

/** A reading as cells of a row. */
export function writeSlot(reading: Reading, series: Series): Partial<Record<Field, FileCell>> {
  const { slot, write } = specOf(reading.result, series);
  return {
    ...write(reading.result as never, series),
    [`${slot}_left_out`]: reading.leftOut?.reason ?? null,
    [`${slot}_left_out_note`]: reading.leftOut?.note ?? null,
    [`${slot}_note`]: reading.note,
    [`${slot}_taken_at`]: reading.takenAt,
  };
}
