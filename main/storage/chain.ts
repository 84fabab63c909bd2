import { createHash } from "node:crypto";
import { toTheEnd } from "../../src/steps.ts";
import type { Command } from "../../src/study/commands.ts";
import type { Change } from "../../src/study/history.ts";

export const chainStart = "0".repeat(64);

/** Parts of a command written between two steps: a millisecond of work. */
const partsAStep = 200;

/** Whether an entry is so large that it is written in several steps. */
export const isWrittenInSteps = ({ command }: Change): boolean =>
  command.do === "together" && command.commands.length > partsAStep;

/** A command as JSON, to the letter as JSON.stringify writes it, piece by piece. */
function* piecesOf(command: Command): Generator<string> {
  if (command.do !== "together" || command.commands.length <= partsAStep) {
    yield JSON.stringify(command);
    return;
  }
  let before = "{";
  for (const [key, value] of Object.entries(command)) {
    yield `${before}${JSON.stringify(key)}:`;
    before = ",";
    if (Array.isArray(value))
      for (let from = 0; from < value.length; from += partsAStep) {
        const text = JSON.stringify(value.slice(from, from + partsAStep)).slice(1, -1);
        yield `${from === 0 ? "[" : ","}${text}`;
      }
    yield Array.isArray(value) ? "]" : JSON.stringify(value);
  }
  yield "}";
}

/** What of an entry is worked out before it is written: its commands as JSON, and its hash. */
export interface EntryTexts {
  command: string;
  inverse: string;
  hash: string;
}

/** Writes an entry's commands as JSON and ties it to the one before it, in steps where it is large. */
export function* entryInSteps(previous: string, change: Change): Generator<number, EntryTexts> {
  const { seq, at, by, undoes, redoes, why } = change;
  const hash = createHash("sha256");
  function* write(command: Command): Generator<number, string> {
    let text = "";
    for (const piece of piecesOf(command)) {
      if (text !== "") yield text.length;
      hash.update(piece);
      text += piece;
    }
    return text;
  }
  // The hash is that of one list of all it holds.
  hash.update(`${JSON.stringify([previous, seq, at, by]).slice(0, -1)},`);
  const command = yield* write(change.command);
  hash.update(",");
  const inverse = yield* write(change.inverse);
  hash.update(`,${JSON.stringify([undoes, redoes, why]).slice(1)}`);
  return { command, inverse, hash: hash.digest("hex") };
}

/** The hash that ties an entry of the history to the one before it. */
export function chainHash(previous: string, change: Change): string {
  return toTheEnd(entryInSteps(previous, change)).hash;
}
