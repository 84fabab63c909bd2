let closeOther: (() => void) | null = null;

/** Of all notes of the window one is open at a time: the one before is closed by its own way. */
export function onlyThisNote(close: () => void): void {
  if (closeOther !== close) closeOther?.();
  closeOther = close;
}
