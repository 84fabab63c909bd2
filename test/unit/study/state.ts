import { applyCommand, type Command } from "../../../src/study/commands.ts";
import { demoCommands } from "../../../src/study/demo.ts";
import { emptyState, type StudyState } from "../../../src/study/schema/records.ts";

/** Applies a command that must stand. */
export function apply(state: StudyState, command: Command): StudyState {
  const applied = applyCommand(state, command);
  if (!applied.ok) throw new Error(applied.message);
  return applied.value.state;
}

/** The invented demo as it is at a moment. */
export function demoState(at: string): StudyState {
  return demoCommands(at).reduce(apply, emptyState());
}
