import type { Command, SimpleCommand } from "../../src/study/commands.ts";
import { slicer } from "../worker/next-task.ts";

/** Told of a large step: how far it is, and whether it is to be left off. */
export interface LongRun {
  step(done: number, total: number): void;
  cancelled(): boolean;
}

export type LargeCommand = Command & { do: "together" };

/** A large step as the service will read it, and its parts as JSON on their way there. */
export interface LargeStep {
  command: LargeCommand;
  texts: Blob[];
}

// Joining the text of every part at once would keep the screen still.
const partsAText = 2000;

/** Writes a large step as JSON in slices. Null where it was left off. */
export async function writeLargeStep(asked: LargeCommand, told: LongRun): Promise<LargeStep | null> {
  const rest = slicer();
  const commands: SimpleCommand[] = [];
  const texts: Blob[] = [];
  let written: string[] = [];
  for (const [index, one] of asked.commands.entries()) {
    const text = JSON.stringify(one);
    written.push(text);
    // The very command that the service will read, so that what is shown here is what becomes durable there.
    commands.push(JSON.parse(text) as SimpleCommand);
    if (written.length === partsAText || index === asked.commands.length - 1) {
      texts.push(new Blob([texts.length > 0 ? "," : "", written.join(",")]));
      written = [];
    }
    await rest();
    if (told.cancelled()) return null;
  }
  return { command: { ...asked, commands }, texts };
}

/** The request that carries a large step. */
export const requestOf = ({ command, texts }: LargeStep, about: object): Blob =>
  new Blob([
    `{"command":{"do":"together","label":${JSON.stringify(command.label)},"commands":[`,
    ...texts,
    `]},"brief":true,${JSON.stringify(about).slice(1)}`,
  ]);
