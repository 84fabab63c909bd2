/** A result that can fail for a reason a person should read. `message` is one plain sentence; it never carries a stack. */
export type Outcome<T> = { ok: true; value: T } | { ok: false; message: string };

/** Wraps a value that was had. */
export function good<T>(value: T): Outcome<T> {
  return { ok: true, value };
}

/** Wraps the sentence that says why a value was not had. */
export function bad<T = never>(message: string): Outcome<T> {
  return { ok: false, message };
}
