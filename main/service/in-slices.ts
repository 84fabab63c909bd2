import type { Outcome } from "../../src/outcome.ts";
import { inSlices, slicedBy } from "../../src/steps.ts";
import { applyInSteps, type Applied, type Command } from "../../src/study/commands.ts";
import type { StudyState } from "../../src/study/schema/records.ts";

/** Lets everything else that waits for this process go before. */
export const nextTask = () => new Promise<void>((resolve) => setImmediate(resolve));

/** The host's way of giving way between the steps of long work. */
export const giveWay = () => slicedBy(() => performance.now(), nextTask);

/**
 * Applies a command as `applyCommand` does, giving way to everything else between the slices of a large one. A small one
 * is answered without giving way at all.
 */
export const applyInSlices = (
  state: StudyState,
  command: Command,
  rest: () => Promise<void>,
): Promise<Outcome<Applied>> => inSlices(applyInSteps(state, command), rest);
