import { benchPlanWords as words } from "../../../src/words/bench-plan.ts";

interface PlanField {
  name: string;
  label: string;
}

/**
 * What stands in the way of a plan, in the words of its own entries, with what to do; null where nothing here does. The
 * sentences of the plan itself speak of the terminal's names.
 */
export function planFault(
  design: string,
  numbers: Record<string, number | null>,
  fields: PlanField[],
): string | null {
  const label = (name: string) => fields.find((field) => field.name === name)?.label ?? name;
  const empty = fields.find(({ name }) => numbers[name] === null || numbers[name] === undefined);
  if (empty) return words.enterFirst(words.within(empty.label));
  const value = (name: string) => numbers[name]!;
  for (const [low, high] of [
    ["low", "high"],
    ["lowB", "highB"],
  ] as const) {
    if (!fields.some(({ name }) => name === low)) continue;
    if (value(low) >= value(high)) return words.belowHighest(label(low));
    if (value(low) < 0) return words.notNegative(label(low));
  }
  if (design === "geometric" && value("low") === 0) return words.aboveZero(label("low"));
  for (const { name, label: shown } of fields) {
    const most = { steps: 50, stepsB: 50, replicates: 10 }[name];
    if (most === undefined) continue;
    const least = name === "replicates" ? 1 : 2;
    if (!Number.isInteger(value(name)) || value(name) < least || value(name) > most)
      return words.wholeNumber(shown, least, most);
  }
  return null;
}
