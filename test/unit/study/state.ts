import { applyCommand, type Command } from "../../../src/study/commands.ts";
import { tableInputs } from "../../../src/study/derive/plant-table.ts";
import type { PlantChain } from "../../../src/study/derive/plant.ts";
import { demoCommands } from "../../../src/study/demo.ts";
import { emptyState, type StudyState } from "../../../src/study/schema/records.ts";

/** Somebody's approval of a series' settings, resting on the plant as it is handed in. */
export const approvalOfSettings = (state: StudyState, plant: PlantChain, at: string): Command => ({
  do: "add",
  kind: "tableApproval",
  record: {
    id: "table-1",
    seriesId: "series-1",
    byName: "Ilse K.",
    at,
    snapshot: tableInputs(state, plant),
  },
});

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
