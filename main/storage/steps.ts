type Watcher = (step: string) => void;

let watcher: Watcher = () => undefined;

/**
 * Names a moment between two writes to disk. Nothing happens here in use; the tests watch these moments to kill the
 * process at each of them.
 */
export function atStep(step: string): void {
  watcher(step);
}

/** Lets a test be told of every step. */
export function watchSteps(next: Watcher): void {
  watcher = next;
}
