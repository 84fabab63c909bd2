import type { Outcome } from "../../src/outcome.ts";
import type { SimpleCommand } from "../../src/study/commands.ts";
import { usersOf } from "../../src/study/links.ts";
import { references } from "../../src/study/references.ts";
import type { Kind, NewRecordOf, RecordOf, StudyState } from "../../src/study/schema/records.ts";
import { useStudy } from "./study.ts";

/** Everything that names this record, and what names that, deepest first: what has to go with it. */
function dependants(state: StudyState, kind: Kind, id: string): { kind: Kind; id: string }[] {
  const found: { kind: Kind; id: string }[] = [];
  for (const link of references) {
    if (link.to !== kind) continue;
    for (const record of usersOf(state, link.from, link.field, id)) {
      found.push(...dependants(state, link.from, record.id), { kind: link.from, id: record.id });
    }
  }
  return found;
}

/** The edits that screens make, each one undo step. */
export function useEdit() {
  const study = useStudy();

  function set<K extends Kind>(kind: K, id: string, fields: Partial<RecordOf<K>>): Promise<Outcome<null>> {
    return study.run({ do: "set", kind, id, fields: fields as Record<string, unknown> });
  }

  function add<K extends Kind>(kind: K, record: NewRecordOf<K>): Promise<Outcome<null>> {
    return study.run({ do: "add", kind, record: record as Record<string, unknown> });
  }

  function run(command: SimpleCommand): Promise<Outcome<null>> {
    return study.run(command);
  }

  function together(label: string, commands: SimpleCommand[]): Promise<Outcome<null>> {
    return study.run({ do: "together", label, commands });
  }

  /** Removes a record with everything that hangs on it, as one step that undo brings back whole. */
  function removeWhole(kind: Kind, id: string, label: string): Promise<Outcome<null>> {
    const state = study.state;
    if (!state) return study.run({ do: "remove", kind, id });
    const seen = new Set<string>();
    const commands = [...dependants(state, kind, id), { kind, id }]
      .filter((place) => {
        const key = `${place.kind} ${place.id}`;
        if (seen.has(key)) return false;
        seen.add(key);
        return true;
      })
      .map((place): SimpleCommand => ({ do: "remove", ...place }));
    return together(label, commands);
  }

  return { set, add, run, together, removeWhole };
}
