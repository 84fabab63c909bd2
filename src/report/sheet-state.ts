import { decisionChain, type DecisionChain } from "../study/derive/decision.ts";
import { calibrationAge } from "../study/derive/plant-pump.ts";
import { tableChain, type TableChain } from "../study/derive/plant-table.ts";
import type { PlantChain } from "../study/derive/plant.ts";
import type { StudyState } from "../study/schema/records.ts";
import { sheetWords } from "../words/sheet.ts";

/** Whether a sheet may be used, and until when. */
export interface SheetState {
  decision: DecisionChain | null;
  /** the separate approval of the table of settings, where there is one */
  table: TableChain;
  status: "approved" | "out of date" | "not approved";
  /** why it is out of date, most upstream first; empty where it is not */
  reasons: string[];
  /** ISO moment up to which the calibrations are good by the pumps' own limits; null where no limit is set */
  validUntil: string | null;
}

const dayMs = 86_400_000;

/** Judges a series' sheet at a moment: the dose's inputs, the settings' inputs, and the calibrations' age and fluid. */
export function sheetState(state: StudyState, seriesId: string, plant: PlantChain, now: string): SheetState {
  const decision = decisionChain(state, seriesId);
  const table = tableChain(state, seriesId, plant);
  const pumps = plant.polymers.flatMap(({ pump }) => (pump && pump.draws.length > 0 ? [pump] : []));
  const reasons = [
    ...(decision?.moved ? [decision.moved] : []),
    ...table.moved,
    ...pumps.flatMap((pump) => [
      ...pump.changes.map((change) => `${pump.pump.label}: ${change}`),
      ...(calibrationAge(pump, now).old
        ? [sheetWords.agedPump(pump.pump.label, calibrationAge(pump, now).words)]
        : []),
    ]),
  ];
  const ends = pumps.flatMap(({ calibratedAt, pump }) =>
    calibratedAt === null || pump.calibrationGoodDays === null
      ? []
      : [Date.parse(calibratedAt) + pump.calibrationGoodDays * dayMs],
  );
  return {
    decision,
    table,
    status: !decision ? "not approved" : reasons.length > 0 ? "out of date" : "approved",
    reasons,
    validUntil: ends.length > 0 ? new Date(Math.min(...ends)).toISOString() : null,
  };
}
