import type { Outcome } from "../../src/outcome.ts";
import { applyInSteps, type Applied, type Command } from "../../src/study/commands.ts";
import type { StudyState } from "../../src/study/schema/records.ts";

/** Longer than this no slice of a large step keeps the host from what else it has to answer. */
const sliceMs = 12;

/**
 * Applies a command as `applyCommand` does, giving way to everything else between the slices of a large one. A small one
 * is answered without giving way at all.
 */
export async function applyInSlices(state: StudyState, command: Command): Promise<Outcome<Applied>> {
  const steps = applyInSteps(state, command);
  let began = performance.now();
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
    if (performance.now() - began < sliceMs) continue;
    await new Promise((resolve) => setImmediate(resolve));
    began = performance.now();
  }
}
