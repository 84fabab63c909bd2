import { mayBeTyped, writeNumber, type DecimalMark } from "../../units/number-entry.ts";
import { pumpChainWords } from "../../words/pump-chain.ts";
import { settingTableWords } from "../../words/setting-table.ts";
import type { RecordOf, StudyState } from "../schema/records.ts";
import { fluidOf } from "./plant-pump.ts";
import type { PlantChain } from "./plant.ts";
import type { StateTone } from "./tone.ts";

type Approval = RecordOf<"tableApproval">;
type SnapshotValue = Approval["snapshot"][number];

type InputKey = keyof typeof settingTableWords.names;
const isInputKey = (key: string): key is InputKey => key in settingTableWords.names;

/** What a table of settings rests on: dose, lot, active share, densities, strength, pump and its draw-downs. Values speak no language: they are kept and compared. */
export function tableInputs(state: StudyState, plant: PlantChain): SnapshotValue[] {
  return plant.polymers.flatMap((polymer): SnapshotValue[] => {
    const { letter, makeDown, product } = polymer;
    const of = (key: InputKey, value: SnapshotValue["value"]): SnapshotValue => ({
      key: `${letter} ${key}`,
      name: nameOf(letter, key),
      value,
    });
    const pump = polymer.pump?.pump ?? null;
    const draws = (polymer.pump?.draws ?? [])
      .filter((draw) => !draw.leftOut)
      .map((draw) => `${draw.setting}: ${draw.amount} in ${draw.seconds} s`);
    return [
      // twelve digits: a dose recomputed in another order of sums has not moved
      of("dose", Number(polymer.doseKgPerT.toPrecision(12))),
      of("lot", (pump ? fluidOf(state, pump)?.lot : null) ?? product?.label ?? null),
      of("active", product?.activePct ?? null),
      of("density", product?.densityKgPerL ?? null),
      of("strength", makeDown?.solutionActivePct ?? null),
      of("solution density", makeDown?.solutionDensityKgPerL ?? null),
      of("pump", pump?.label ?? null),
      of("unit", pump ? `${pump.settingUnit}, ${pump.stream}, ${pump.measuredIn}` : null),
      of("range", pump ? `${pump.settingLow ?? "open"} to ${pump.settingHigh ?? "open"}` : null),
      of("draws", draws.length === 0 ? null : draws.join("; ").slice(0, 2000)),
    ];
  });
}

export interface TableChain {
  approval: Approval | null;
  /** what changed since, each as one sentence with the reason why it matters */
  moved: string[];
  word: string;
  tone: StateTone;
}

/** The latest approval of a series' settings, and what has moved since. */
export function tableChain(state: StudyState, seriesId: string, plant: PlantChain): TableChain {
  const approval = Object.values(state.tableApproval).reduce<Approval | null>(
    (best, one) => (one.seriesId === seriesId && (best === null || one.at > best.at) ? one : best),
    null,
  );
  if (!approval) return { approval: null, moved: [], word: settingTableWords.states.none, tone: "open" };
  const now = new Map(tableInputs(state, plant).map((one) => [one.key, one]));
  const before = new Map(approval.snapshot.map((one) => [one.key, one]));
  const mark = state.study["study"]?.decimalMark ?? ".";
  const moved: string[] = [];
  for (const key of new Set([...before.keys(), ...now.keys()])) {
    const was = before.get(key)?.value ?? null;
    const is = now.get(key)?.value ?? null;
    if (was === is) continue;
    const [letter = "", ...rest] = key.split(" ");
    const input = rest.join(" ");
    const known = isInputKey(input);
    const name = known ? nameOf(letter, input) : (before.get(key)?.name ?? key);
    const why = known ? settingTableWords.whys[input] : settingTableWords.restsOnIt;
    // A calibration is a long list: that it changed is said, not recited.
    moved.push(
      input === "draws"
        ? settingTableWords.calibrationChanged(name, why)
        : settingTableWords.changed(name, shown(input, was, mark), shown(input, is, mark), why),
    );
  }
  return {
    approval,
    moved,
    word: moved.length > 0 ? settingTableWords.states.stale : settingTableWords.states.approved,
    tone: moved.length > 0 ? "warn" : "good",
  };
}

function nameOf(letter: string, key: InputKey): string {
  return settingTableWords.ofPolymer(letter.toUpperCase(), settingTableWords.names[key]);
}

/** A kept value in words: the range and the unit of a panel are kept as codes. */
function shown(input: string, value: SnapshotValue["value"], mark: DecimalMark): string {
  if (value === null) return settingTableWords.nothing;
  if (typeof value === "number")
    return writeNumber(mayBeTyped(value) ? value : Number(value.toPrecision(5)), mark);
  const codes: Record<string, string> = { ...settingTableWords.codes, ...pumpChainWords.units };
  if (input === "unit")
    return value
      .split(", ")
      .map((code) => codes[code] ?? code)
      .join(", ");
  const [low, high] = input === "range" ? value.split(" to ") : [];
  if (low === undefined || high === undefined) return value;
  const end = (text: string) => (text === "open" ? settingTableWords.open : writeNumber(Number(text), mark));
  return settingTableWords.range(end(low), end(high));
}
