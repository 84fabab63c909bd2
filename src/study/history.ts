import { z } from "zod";
import { bad, good, type Outcome } from "../outcome.ts";
import { commandSchema, type Command } from "./commands.ts";
import { instantSchema } from "./schema/common.ts";
import { historyWords } from "../words/history.ts";

/** One entry of the append-only history. `undoes`/`redoes` name the sequence number of the entry taken back or done again. */
export interface Change {
  seq: number;
  at: string;
  by: string;
  command: Command;
  inverse: Command;
  undoes: number | null;
  redoes: number | null;
  why: string;
}

/** An entry as a page is told of it: of a large step only the first parts; `left` counts the others. */
export interface ToldChange extends Change {
  left?: number | undefined;
}

const changeFields = {
  seq: z.int().min(1),
  at: instantSchema,
  by: z.string().max(120),
  command: commandSchema,
  inverse: commandSchema,
  undoes: z.int().min(1).nullable(),
  redoes: z.int().min(1).nullable(),
  why: z.string().max(4000),
};
export const changeSchema: z.ZodType<Change> = z.strictObject(changeFields);
export const toldChangeSchema: z.ZodType<ToldChange> = z.strictObject({
  ...changeFields,
  left: z.int().min(1).optional(),
});

/** Sequence numbers that can be taken back (the last one next) and done again. */
export interface UndoLine {
  undo: number[];
  redo: number[];
}

/** Follows one more entry: a new edit clears what could be done again; an undo and a redo move one entry across. */
export function advanceUndoLine(line: UndoLine, change: Pick<Change, "seq" | "undoes" | "redoes">): UndoLine {
  if (change.undoes !== null) return { undo: line.undo.slice(0, -1), redo: [...line.redo, change.undoes] };
  if (change.redoes !== null) return { undo: [...line.undo, change.redoes], redo: line.redo.slice(0, -1) };
  return { undo: [...line.undo, change.seq], redo: [] };
}

/** The next entry to take back or do again, or the sentence for a button that has nothing to do. */
export function nextOnLine(line: UndoLine, direction: "undo" | "redo"): Outcome<number> {
  const seq = line[direction].at(-1);
  if (seq !== undefined) return good(seq);
  return bad(direction === "undo" ? historyWords.nothingToUndo : historyWords.nothingToRedo);
}

/** The undo line of a whole history, in one pass. */
export function undoLineOf(changes: Iterable<Pick<Change, "seq" | "undoes" | "redoes">>): UndoLine {
  const undo: number[] = [];
  const redo: number[] = [];
  for (const change of changes) {
    if (change.undoes !== null) {
      undo.pop();
      redo.push(change.undoes);
    } else if (change.redoes !== null) {
      redo.pop();
      undo.push(change.redoes);
    } else {
      undo.push(change.seq);
      redo.length = 0;
    }
  }
  return { undo, redo };
}
