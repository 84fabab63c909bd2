import type { RecordOf, StudyState } from "../schema/records.ts";
import { fluidOf } from "./plant-pump.ts";
import type { PlantChain } from "./plant.ts";
import type { StateTone } from "./tone.ts";

type Approval = RecordOf<"tableApproval">;
type SnapshotValue = Approval["snapshot"][number];

/** Why a settings table does not survive the change of one of its inputs, by the last word of its key. */
const whys: Record<string, string> = {
  dose: "every setting goes with the dose",
  lot: "another lot may be thicker or thinner, and the pump then slips by another amount",
  active: "the same flow now brings another amount of active polymer",
  density: "the same volume now weighs another amount",
  strength: "the same flow of solution now brings another amount of active polymer",
  pump: "each pump has its own line",
  draws: "settings are read off the line through these draw-downs",
  range: "settings are refused outside what the panel can do",
  unit: "the panel's number means something else",
};

/** What a table of settings rests on: dose, lot, active share, densities, strength, pump and its draw-downs. */
export function tableInputs(state: StudyState, plant: PlantChain): SnapshotValue[] {
  return plant.polymers.flatMap((polymer): SnapshotValue[] => {
    const { letter, makeDown, product } = polymer;
    const of = (key: string, name: string, value: SnapshotValue["value"]): SnapshotValue => ({
      key: `${letter} ${key}`,
      name: `polymer ${letter.toUpperCase()}, ${name}`,
      value,
    });
    const pump = polymer.pump?.pump ?? null;
    const draws = (polymer.pump?.draws ?? [])
      .filter((draw) => !draw.leftOut)
      .map((draw) => `${draw.setting}: ${draw.amount} in ${draw.seconds} s`);
    return [
      // twelve digits: a dose recomputed in another order of sums has not moved
      of("dose", "dose", Number(polymer.doseKgPerT.toPrecision(12))),
      of("lot", "lot", (pump ? fluidOf(state, pump)?.lot : null) ?? product?.label ?? null),
      of("active", "active share", product?.activePct ?? null),
      of("density", "density, neat", product?.densityKgPerL ?? null),
      of("strength", "solution strength", makeDown?.solutionActivePct ?? null),
      of("solution density", "density of the solution", makeDown?.solutionDensityKgPerL ?? null),
      of("pump", "pump", pump?.label ?? null),
      of(
        "unit",
        "unit of the setting",
        pump ? `${pump.settingUnit}, ${pump.stream}, ${pump.measuredIn}` : null,
      ),
      of(
        "range",
        "range of the panel",
        pump ? `${pump.settingLow ?? "open"} to ${pump.settingHigh ?? "open"}` : null,
      ),
      of("draws", "calibration", draws.length === 0 ? null : draws.join("; ").slice(0, 2000)),
    ];
  });
}

export interface TableChain {
  approval: Approval | null;
  /** what changed since, each as one sentence with the reason why it matters */
  moved: string[];
  word: "not approved" | "approved" | "out of date";
  tone: StateTone;
}

/** The latest approval of a series' settings, and what has moved since. */
export function tableChain(state: StudyState, seriesId: string, plant: PlantChain): TableChain {
  const approval = Object.values(state.tableApproval).reduce<Approval | null>(
    (best, one) => (one.seriesId === seriesId && (best === null || one.at > best.at) ? one : best),
    null,
  );
  if (!approval) return { approval: null, moved: [], word: "not approved", tone: "open" };
  const now = new Map(tableInputs(state, plant).map((one) => [one.key, one]));
  const before = new Map(approval.snapshot.map((one) => [one.key, one]));
  const moved: string[] = [];
  for (const key of new Set([...before.keys(), ...now.keys()])) {
    const was = before.get(key)?.value ?? null;
    const is = now.get(key)?.value ?? null;
    if (was === is) continue;
    const name = now.get(key)?.name ?? before.get(key)?.name ?? key;
    const why = whys[key.split(" ").at(-1) ?? ""] ?? "the settings rest on it";
    // A calibration is a long list: that it changed is said, not recited.
    const change = /draws$/.test(key) ? "has been changed" : `was ${shown(was)} and is now ${shown(is)}`;
    moved.push(`${name} ${change}: ${why}`);
  }
  return {
    approval,
    moved,
    word: moved.length > 0 ? "out of date" : "approved",
    tone: moved.length > 0 ? "warn" : "good",
  };
}

function shown(value: SnapshotValue["value"]): string {
  if (value === null) return "nothing";
  return typeof value === "number" ? String(Number(value.toPrecision(5))) : value;
}
