import { emptyState, kinds, type Kind, type StudyState } from "../../src/study/schema/records.ts";
import { slicer } from "./next-task.ts";

/** Some records of one kind on their way to a worker; the first of them empties what was there of that kind. */
export interface StatePart {
  do: "state";
  first: boolean;
  kind: Kind;
  records: { id: string }[];
}

/** A photo is a hundred kilobytes and more; of other records so many are copied within a few milliseconds. */
const recordsAtOnce = (kind: Kind) => (kind === "photo" ? 5 : 200);

/** Hands a worker what it has not of a study, and then its question. */
export interface StateSender {
  /** Questions are posted in the order they were asked, each with the study as it was asked about. */
  post(state: StudyState, question: object, wanted?: readonly Kind[]): Promise<void>;
  /** nothing further is posted: the worker is gone */
  end(): void;
}

/**
 * Opens the way of studies to one worker. A study goes in parts, since a large one copied at once keeps the screen
 * still, and only the kinds that are wanted and have changed since: tables are never changed in place.
 */
export function stateSender(worker: Worker): StateSender {
  const sent = new Map<Kind, object>();
  let gone = false;
  let last: Promise<void> = Promise.resolve();

  async function postNow(state: StudyState, question: object, wanted: readonly Kind[]): Promise<void> {
    const rest = slicer();
    for (const kind of wanted) {
      const table: object = state[kind];
      if (sent.get(kind) === table) continue;
      const records = Object.values(table) as { id: string }[];
      await rest();
      for (let from = 0; from < records.length || from === 0; from += recordsAtOnce(kind)) {
        if (gone) return;
        worker.postMessage({
          do: "state",
          first: from === 0,
          kind,
          records: records.slice(from, from + recordsAtOnce(kind)),
        } satisfies StatePart);
        await rest();
      }
      sent.set(kind, table);
    }
    if (!gone) worker.postMessage(question);
  }

  return {
    post(state, question, wanted = kinds) {
      const posted = last.then(() => postNow(state, question, wanted));
      last = posted.catch(() => undefined);
      return posted;
    },
    end: () => void (gone = true),
  };
}

/** The worker's end: puts the parts together again. */
export function stateReceiver(): { take(part: StatePart): void; state(): StudyState } {
  let state = emptyState();
  return {
    take({ first, kind, records }) {
      // A new table, not the old one emptied: what was derived from that is remembered by its identity.
      if (first) state = { ...state, [kind]: {} };
      const table = state[kind] as Record<string, { id: string }>;
      for (const record of records) table[record.id] = record;
    },
    state: () => state,
  };
}
