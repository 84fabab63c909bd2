import type { Answer, OutputOf } from "../../src/contract.ts";
import type { Command } from "../../src/study/commands.ts";
import type { Change, ToldChange } from "../../src/study/history.ts";
import { serviceWords } from "../../src/words/service.ts";
import { ok, refused, type OpenStudy } from "./context.ts";

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

/** The entry whose parts were asked for last, so that it is read from the file once. */
const lastAsked = new WeakMap<OpenStudy, Change>();

/** The next parts of an entry's command, from this place of its order. */
export function changeParts(
  open: OpenStudy,
  seq: number,
  from: number,
): Answer<OutputOf<"study.changeParts">> {
  const known = lastAsked.get(open);
  const change = known?.seq === seq ? known : open.file.change(seq);
  if (change?.command.do !== "together") return refused(serviceWords.historyPart);
  lastAsked.set(open, change);
  const { commands } = change.command;
  const more = from + partsAtOnce < commands.length;
  if (!more) lastAsked.delete(open);
  return ok({ commands: commands.slice(from, from + partsAtOnce), more });
}
