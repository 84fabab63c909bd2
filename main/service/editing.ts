import type { Acknowledged, Answer } from "../../src/contract.ts";
import type { Command } from "../../src/study/commands.ts";
import { advanceUndoLine, nextOnLine, type Change } from "../../src/study/history.ts";
import type { Context, OpenStudy } from "./context.ts";
import { ok, refused } from "./context.ts";
import { backUpIfDue } from "./backing-up.ts";
import { applyInSlices, giveWay } from "./in-slices.ts";
import { movesInSlices } from "./next-moves.ts";
import { partsToFollow, readChange, rememberChange, toldChange } from "./told-change.ts";
import { serviceWords } from "../../src/words/service.ts";

interface Entry {
  command: Command;
  by: string;
  why: string;
  undoes: number | null;
  redoes: number | null;
}

/**
 * Applied and written in slices; a small edit in one go. Calls wait for one another, so nothing reads or writes the study
 * in between; but a host that ends closes it without a call, and then nothing of the step stays. It is acknowledged only
 * when the whole of it is durable.
 */
async function record(context: Context, open: OpenStudy, entry: Entry): Promise<Answer<Acknowledged>> {
  const base = open.state;
  const rest = giveWay();
  const applied = await applyInSlices(base, entry.command, rest);
  if (!applied.ok) return refused(applied.message);
  if (context.open !== open) return refused(serviceWords.noStudy, "no-study");
  if (open.state !== base) return refused(serviceWords.stale, "stale");
  const at = context.support.now();
  const { touched, state, inverse } = applied.value;
  const change: Change = { seq: open.seq + 1, at, inverse, ...entry };
  const written = await open.file.appendInSlices(change, touched, state, rest);
  if (!written) return refused(serviceWords.noStudy, "no-study");
  if (!written.ok) return refused(written.message, open.file.readOnlyBecause ? "read-only" : "refused");
  open.state = state;
  open.seq = change.seq;
  open.savedAt = at;
  open.line = advanceUndoLine(open.line, change);
  open.backup.changesSince += 1;
  rememberChange(open, change);
  backUpIfDue(context);
  const moves = await movesInSlices(open);
  return ok({ changes: [toldChange(change, partsToFollow)], seq: open.seq, savedAt: at, ...moves });
}

/** One edit: checked against the study as it is on disk, written, then acknowledged. */
export async function applyEdit(
  context: Context,
  input: { command: Command; afterSeq: number; why?: string | undefined; by: string; brief?: boolean },
): Promise<Answer<Acknowledged>> {
  const { open } = context;
  if (!open) return refused(serviceWords.noStudy, "no-study");
  if (input.afterSeq !== open.seq) return refused(serviceWords.stale, "stale");
  const written = await record(context, open, {
    command: input.command,
    by: input.by,
    why: input.why ?? "",
    undoes: null,
    redoes: null,
  });
  return written.ok && input.brief ? ok({ ...written.value, changes: [] }) : written;
}

/** What somebody has put their name to: undo never takes it back behind their back. */
const approvals = new Set(["decision", "tableApproval"]);

function touchesApproval(command: Command): boolean {
  const parts = command.do === "together" ? command.commands : [command];
  return parts.some((part) => approvals.has(part.kind));
}

/** Takes the last edit back, or does it again: an entry of its own in the history. */
export async function moveOnLine(
  context: Context,
  direction: "undo" | "redo",
  by: string,
): Promise<Answer<Acknowledged>> {
  const { open } = context;
  if (!open) return refused(serviceWords.noStudy, "no-study");
  const next = nextOnLine(open.line, direction);
  if (!next.ok) return refused(next.message);
  const change = await readChange(open, next.value);
  if (!change) return refused(serviceWords.stepGone);
  if (direction === "undo" && touchesApproval(change.command)) return refused(serviceWords.approvalStays);
  if (direction === "undo" && change.by !== "" && by !== "" && change.by !== by)
    return refused(serviceWords.stepOfAnother(change.by));
  return record(context, open, {
    command: direction === "undo" ? change.inverse : change.command,
    by,
    why: "",
    undoes: direction === "undo" ? change.seq : null,
    redoes: direction === "redo" ? change.seq : null,
  });
}
