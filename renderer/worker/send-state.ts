import { emptyState, kinds, type Kind, type StudyState } from "../../src/study/schema/records.ts";
import { slicer } from "./next-task.ts";

/** Some records of a study on their way to a worker; the first of all empties what was there. */
export interface StatePart {
  do: "state";
  first: boolean;
  kind: Kind;
  records: { id: string }[];
}

const recordsAtOnce = 500;

/** Hands a study to a worker in parts, since a large one copied at once keeps the screen still. */
export async function sendState(worker: Worker, state: StudyState): Promise<void> {
  const rest = slicer();
  let first = true;
  for (const kind of kinds) {
    const records = Object.values(state[kind] as Record<string, { id: string }>);
    for (let from = 0; from < records.length || first; from += recordsAtOnce) {
      const part: StatePart = {
        do: "state",
        first,
        kind,
        records: records.slice(from, from + recordsAtOnce),
      };
      worker.postMessage(part);
      first = false;
      await rest();
    }
  }
}

/** The worker's end: puts the parts together again. */
export function stateReceiver(): { take(part: StatePart): void; state(): StudyState } {
  let state = emptyState();
  return {
    take({ first, kind, records }) {
      if (first) state = emptyState();
      const table = state[kind] as Record<string, { id: string }>;
      for (const record of records) table[record.id] = record;
    },
    state: () => state,
  };
}
