import { references, uniqueLabels } from "./references.ts";
import type { Kind, StudyState } from "./schema/records.ts";
import { childrenOf, type Table } from "./tables.ts";
import { kindWords, recordWords } from "../words/records.ts";

interface Place {
  kind: Kind;
  id: string;
}

type Loose = Record<string, unknown>;

const recordAt = (state: StudyState, { kind, id }: Place) =>
  Object.hasOwn(state[kind], id) ? (state[kind][id] as Loose) : undefined;

/** Everything that names this record by a field of that kind. */
export const usersOf = (
  state: StudyState,
  from: Kind,
  field: string,
  id: string,
): readonly { id: string }[] => childrenOf(state[from] as Table<Loose & { id: string }>, field, id);

/** A field that names a record which is not there, or a removed record that is still named; the sentence, or null. */
export function linkFault(state: StudyState, places: Place[]): string | null {
  for (const place of places) {
    const { kind, id } = place;
    const record = recordAt(state, place);
    for (const link of references) {
      if (record && link.from === kind) {
        const aim = record[link.field];
        if (typeof aim === "string" && !Object.hasOwn(state[link.to], aim))
          return recordWords.linkMissing(kindWords[kind].one, kindWords[link.to].one);
      }
      if (!record && link.to === kind) {
        const users = usersOf(state, link.from, link.field, id);
        if (users.length > 0) {
          const words = kindWords[link.from];
          return recordWords.inUse(kindWords[kind].one, users.length, words.one, words.many);
        }
      }
    }
  }
  return null;
}

const nameOf = (record: Loose) => String(record["label"] ?? record["name"]);

/** Two records of a kind (or of one parent) that are called the same but for capitals; the sentence, or null. */
export function labelFault(state: StudyState, places: Place[]): string | null {
  for (const { kind, within } of uniqueLabels) {
    const mine = places.flatMap((place): Loose[] => {
      const record = place.kind === kind ? recordAt(state, place) : undefined;
      return record ? [record] : [];
    });
    if (mine.length === 0) continue;
    const table = state[kind] as Table<Loose>;
    // Names are counted once for each parent, so that a pasted block of jars is not a search for each jar.
    const countsOf = new Map<unknown, Map<string, number>>();
    for (const record of mine) {
      const parent = within ? record[within] : null;
      let counts = countsOf.get(parent);
      if (!counts) {
        counts = new Map();
        const others = within ? childrenOf(table, within, String(parent)) : Object.values(table);
        for (const other of others) {
          const name = nameOf(other).toLowerCase();
          counts.set(name, (counts.get(name) ?? 0) + 1);
        }
        countsOf.set(parent, counts);
      }
      if ((counts.get(nameOf(record).toLowerCase()) ?? 0) > 1)
        return recordWords.nameTaken(kindWords[kind].one, nameOf(record));
    }
  }
  return null;
}
