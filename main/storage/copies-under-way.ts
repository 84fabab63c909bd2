/** Copies of an open study that are being made at this moment. */
export interface CopiesUnderWay {
  any(): boolean;
  /** counts a copy until it is made or has failed, and answers it */
  count<T>(copy: Promise<T>): Promise<T>;
  /** ends when all that are being made now have come to an end, whichever */
  ended(): Promise<void>;
}

/**
 * SQLite lets a copy get no further while something is being written: what takes several slices to write waits for the
 * copies that are being made. One that fails is told to whoever asked for it, and keeps nobody else from going on.
 */
export function copiesUnderWay(): CopiesUnderWay {
  const copying = new Set<Promise<void>>();
  return {
    any: () => copying.size > 0,
    count(copy) {
      const ended = copy.then(
        () => void copying.delete(ended),
        () => void copying.delete(ended),
      );
      copying.add(ended);
      return copy;
    },
    async ended() {
      await Promise.all(copying);
    },
  };
}
