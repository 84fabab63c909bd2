import type { Opened } from "../../src/contract.ts";
import type { Change, ToldChange } from "../../src/study/history.ts";
import type { OpenStudy } from "./context.ts";
import { partsToRead, readChange, toldChange } from "./told-change.ts";

/** The entries told of last as next moves, so that a large one is not read from the file for every answer. */
const toldLast = new WeakMap<OpenStudy, Map<number, ToldChange | null>>();

const next = ({ line }: OpenStudy) => ({ undo: line.undo.at(-1), redo: line.redo.at(-1) });
const short = (change: Change | null) => change && toldChange(change, partsToRead);

/** The entries that undo and redo would move next, a large step by its first parts. */
export function nextMoves(open: OpenStudy): Pick<Opened, "undo" | "redo"> {
  const before = toldLast.get(open);
  const now = new Map<number, ToldChange | null>();
  toldLast.set(open, now);
  const told = (seq: number | undefined) => {
    if (seq === undefined) return null;
    const change = before?.get(seq) ?? short(open.file.change(seq));
    now.set(seq, change);
    return change;
  };
  const { undo, redo } = next(open);
  return { undo: told(undo), redo: told(redo) };
}

/** The same, giving way while a large entry is read. */
export async function movesInSlices(open: OpenStudy): Promise<Pick<Opened, "undo" | "redo">> {
  const known = new Map(toldLast.get(open));
  for (const seq of Object.values(next(open)))
    if (seq !== undefined && !known.has(seq)) known.set(seq, short(await readChange(open, seq)));
  toldLast.set(open, known);
  return nextMoves(open);
}
