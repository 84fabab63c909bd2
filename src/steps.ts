/** Does work that is made in steps in one go, and answers its outcome. */
export function toTheEnd<T>(steps: Generator<unknown, T>): T {
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
  }
}

/** Longer than this no slice of long work keeps a thread from what else waits for it. */
const sliceMs = 12;

/** Gives way by `nextTask` whenever a slice has been worked for long enough: called between the steps of long work. */
export function slicedBy(now: () => number, nextTask: () => Promise<void>): () => Promise<void> {
  let began = now();
  return async () => {
    if (now() - began < sliceMs) return;
    await nextTask();
    began = now();
  };
}

/** Told of work in slices: how far it is, and whether it is to be left off. */
export interface SlicesTold {
  step?: ((done: number) => void) | undefined;
  cancelled?: (() => boolean) | undefined;
}

/** Does work that is made in steps, giving way by `rest` between them. Null where it was left off. */
export async function inSlices<T>(
  steps: Generator<number, T>,
  rest: () => Promise<void>,
  told: SlicesTold,
): Promise<T | null>;
export async function inSlices<T>(steps: Generator<number, T>, rest: () => Promise<void>): Promise<T>;
export async function inSlices<T>(
  steps: Generator<number, T>,
  rest: () => Promise<void>,
  told: SlicesTold = {},
): Promise<T | null> {
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
    told.step?.(step.value);
    await rest();
    if (told.cancelled?.()) return null;
  }
}
