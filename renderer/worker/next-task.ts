import { slicedBy } from "../../src/steps.ts";

/** Lets everything else that waits for the screen's thread have its turn. */
export function nextTask(): Promise<void> {
  return new Promise((resolve) => {
    const { port1, port2 } = new MessageChannel();
    port1.onmessage = () => {
      port1.close();
      resolve();
    };
    port2.postMessage(null);
  });
}

/** Gives way whenever a slice has been worked for long enough: called between the steps of long work. */
export const slicer = (): (() => Promise<void>) => slicedBy(() => performance.now(), nextTask);
