import type { StudyState } from "../schema/records.ts";

/**
 * Remembers what was last worked out for a record, for as long as everything it was made from is the very same. States
 * are never changed in place, so the same object means the same value, and an edit costs only what hangs on it.
 */
export function memo<V>(): (key: object, inputs: readonly unknown[], make: () => V) => V {
  const known = new WeakMap<object, { inputs: readonly unknown[]; value: V }>();
  return (key, inputs, make) => {
    const before = known.get(key);
    if (
      before &&
      before.inputs.length === inputs.length &&
      before.inputs.every((one, i) => one === inputs[i])
    )
      return before.value;
    const value = make();
    known.set(key, { inputs, value });
    return value;
  };
}

/**
 * Remembers what was worked out of a whole state for one of its records, as long as that state is in use: the strip, the
 * guide and a room ask for the same of one state.
 */
export function memoOfState<V>(): {
  get(state: StudyState, id: string): V | undefined;
  keep(state: StudyState, id: string, value: V): V;
} {
  const known = new WeakMap<StudyState, Map<string, V>>();
  return {
    get: (state, id) => known.get(state)?.get(id),
    keep(state, id, value) {
      const ofState = known.get(state) ?? new Map<string, V>();
      known.set(state, ofState.set(id, value));
      return value;
    },
  };
}

const collator = new Intl.Collator("en", { numeric: true });

/** Orders names as people number them: 2 before 10. */
export const byNumberedName = (a: string, b: string): number => collator.compare(a, b);
