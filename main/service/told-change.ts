import type { Answer, OutputOf } from "../../src/contract.ts";
import type { Command } from "../../src/study/commands.ts";
import type { Change, ToldChange } from "../../src/study/history.ts";
import { serviceWords } from "../../src/words/service.ts";
import { ok, refused, type OpenStudy } from "./context.ts";
import { giveWay } from "./in-slices.ts";
import { oneAnswerOf } from "./one-answer.ts";

/** More parts of a step than this say nothing more to somebody who reads of it. */
export const partsToRead = 20;
/** A step of more parts than this is handed to a page in parts, so that following it does not keep the screen still. */
export const partsToFollow = 500;
const partsAtOnce = 2000;

const shortened = (command: Command, most: number): Command =>
  command.do === "together" && command.commands.length > most
    ? { ...command, commands: command.commands.slice(0, most) }
    : command;

/** An entry of the history as a page is told of it: a step of more than `most` parts by its first ones. */
export function toldChange(change: Change, most: number): ToldChange {
  const { command } = change;
  if (command.do !== "together" || command.commands.length <= most) return change;
  return {
    ...change,
    command: shortened(command, partsToRead),
    inverse: shortened(change.inverse, partsToRead),
    left: command.commands.length - partsToRead,
  };
}

/** The entry written or asked for last, so that a large one is not read from the file at once again. */
const lastKnown = new WeakMap<OpenStudy, Change>();

/** Keeps an entry at hand: what was just written is what is asked for next. */
export function rememberChange(open: OpenStudy, change: Change): void {
  lastKnown.set(open, change);
}

/** An entry of the history, giving way while a large one is read; null where there is none that can be read. */
export async function readChange(open: OpenStudy, seq: number): Promise<Change | null> {
  const known = lastKnown.get(open);
  return known?.seq === seq ? known : open.file.changeInSlices(seq, giveWay());
}

/** The next parts of an entry's command, from this place of its order. */
export async function changeParts(
  open: OpenStudy,
  seq: number,
  from: number,
): Promise<Answer<OutputOf<"study.changeParts">>> {
  const change = await readChange(open, seq);
  if (change?.command.do !== "together") return refused(serviceWords.historyPart);
  rememberChange(open, change);
  const { commands } = change.command;
  const some = oneAnswerOf(commands, from, partsAtOnce);
  const more = from + some.length < commands.length;
  if (!more) lastKnown.delete(open);
  return ok({ commands: some, more });
}
