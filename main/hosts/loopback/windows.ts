/** Which windows are open, told by the connections they hold: a closed window, a killed browser lets go by itself. */
export interface Windows {
  /** a window took up its connection; the answer is called once, when the connection ended */
  arrived(): () => void;
  open(): number;
  /** settles when the first window has come */
  first: Promise<void>;
  /** from now on, says once that no window has been open for so long; a window that comes in between (a reload) stops it */
  whenNone(graceMs: number, then: () => void): void;
  stop(): void;
}

/** Counts windows. Until `whenNone` is asked for, nothing follows from their going. */
export function countWindows(): Windows {
  let count = 0;
  let wait: { graceMs: number; then: () => void } | null = null;
  let timer: NodeJS.Timeout | null = null;
  let came: () => void = () => undefined;
  const first = new Promise<void>((resolve) => (came = resolve));

  const look = () => {
    if (timer) clearTimeout(timer);
    timer = null;
    if (!wait || count > 0) return;
    const { graceMs, then } = wait;
    timer = setTimeout(() => {
      wait = null;
      then();
    }, graceMs);
  };

  return {
    arrived() {
      count += 1;
      came();
      look();
      let gone = false;
      return () => {
        if (gone) return;
        gone = true;
        count -= 1;
        look();
      };
    },
    open: () => count,
    first,
    whenNone(graceMs, then) {
      wait = { graceMs, then };
      look();
    },
    stop() {
      wait = null;
      look();
    },
  };
}
