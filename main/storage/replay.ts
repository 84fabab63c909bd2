import type { Change } from "../../src/study/history.ts";
import type { SimpleCommand } from "../../src/study/commands.ts";
import {
  kinds,
  recordSchemas,
  type AnyRecord,
  type Kind,
  type StudyState,
} from "../../src/study/schema/records.ts";

/**
 * Whether the records of a study are what its history says, entry by entry from its start. Answers the first record
 * that is not ("jar jar-1-04"), or null. The rules between records are not judged again: they were when it was written.
 */
export function firstDifference(changes: Iterable<Change>, state: StudyState): string | null {
  const said = new Map<string, AnyRecord>();
  const play = (command: SimpleCommand) => {
    const id = command.do === "add" ? String(command.record["id"]) : command.id;
    const key = `${command.kind} ${id}`;
    if (command.do === "remove") {
      said.delete(key);
      return;
    }
    const next = command.do === "add" ? command.record : { ...said.get(key), ...command.fields };
    const parsed = recordSchemas[command.kind].safeParse(next);
    if (parsed.success) said.set(key, parsed.data as AnyRecord);
  };
  for (const { command } of changes)
    for (const one of command.do === "together" ? command.commands : [command]) play(one);
  for (const kind of kinds)
    for (const [id, record] of Object.entries(state[kind as Kind] as Record<string, AnyRecord>)) {
      const key = `${kind} ${id}`;
      if (JSON.stringify(said.get(key)) !== JSON.stringify(record)) return key;
      said.delete(key);
    }
  const [lost] = said.keys();
  return lost ?? null;
}
