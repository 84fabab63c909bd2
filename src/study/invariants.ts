import type { Kind, StudyState } from "./schema/records.ts";

type Check<K extends Kind> = (state: StudyState, record: StudyState[K][string]) => string | null;

/** Dish masses in their only possible order: tare < ash < dry < wet, as far as they are entered. */
function massOrder(masses: { name: string; massG: number | null }[]): string | null {
  const known = masses.filter((mass): mass is { name: string; massG: number } => mass.massG !== null);
  for (let index = 1; index < known.length; index++) {
    const lighter = known[index - 1];
    const heavier = known[index];
    if (lighter && heavier && lighter.massG >= heavier.massG)
      return `The ${heavier.name} (${heavier.massG} g) must weigh more than the ${lighter.name} (${lighter.massG} g): check both for swapped digits.`;
  }
  return null;
}

const checks: { [K in Kind]?: Check<K> } = {
  dish: (_state, dish) =>
    massOrder([
      { name: "empty dish", massG: dish.tareG },
      { name: "dish with ash", massG: dish.ashG },
      { name: "dish with dry solids", massG: dish.dryG },
      { name: "dish with wet sludge", massG: dish.wetG },
    ]),
  stock: (_state, stock) =>
    stock.neatMassG !== null && stock.totalMassG !== null && stock.neatMassG >= stock.totalMassG
      ? `The neat product (${stock.neatMassG} g) must weigh less than the whole solution (${stock.totalMassG} g).`
      : null,
  series: (_state, series) =>
    series.stockAId !== null && series.stockAId === series.stockBId
      ? "Polymers A and B name the same stock solution: pick another for one of them."
      : null,
  jar: (state, jar) => {
    const series = state.series[jar.seriesId];
    if (jar.role === "no-polymer" && ((jar.syringeAMl ?? 0) > 0 || (jar.syringeBMl ?? 0) > 0))
      return `Jar ${jar.label} is a no-polymer jar, so its syringe volumes must be 0 or empty.`;
    const capacity = series?.syringeCapacityMl ?? null;
    for (const [letter, volume] of [
      ["A", jar.syringeAMl],
      ["B", jar.syringeBMl],
    ] as const) {
      if (volume !== null && capacity !== null && volume > capacity * 4)
        return `${volume} mL of solution ${letter} is more than four fills of the ${capacity} mL syringe: check the volume, or make a stronger stock.`;
    }
    return null;
  },
  reading: (_state, reading) => {
    const { result } = reading;
    if (result.kind === "cake-dish")
      return massOrder([
        { name: "empty dish", massG: result.tareG },
        { name: "dish with dry cake", massG: result.dryG },
        { name: "dish with wet cake", massG: result.wetG },
      ]);
    if (result.kind === "filtrate-tss-dish")
      return massOrder([
        { name: "empty filter", massG: result.tareG },
        { name: "dried filter", massG: result.dryG },
      ]);
    return null;
  },
  targets: (state, targets) => {
    const twin = Object.values(state.targets).find(
      (other) => other.seriesId === targets.seriesId && other.id !== targets.id,
    );
    return twin ? "This series already has its targets." : null;
  },
  makeDown: (state, makeDown) => {
    const twin = Object.values(state.makeDown).find(
      (other) => other.benchProductId === makeDown.benchProductId && other.id !== makeDown.id,
    );
    if (twin) return "This product already has its plant make-down.";
    if (
      makeDown.carrierActivePct !== null &&
      makeDown.solutionActivePct !== null &&
      makeDown.carrierActivePct > makeDown.solutionActivePct
    )
      return "The strength after carrier water must not be above the solution's own strength.";
    return null;
  },
  pump: (_state, pump) =>
    pump.settingLow !== null && pump.settingHigh !== null && pump.settingLow >= pump.settingHigh
      ? "The pump's lowest setting must be below its highest."
      : null,
  machine: (_state, machine) =>
    machine.feedLowPct !== null && machine.feedHighPct !== null && machine.feedLowPct >= machine.feedHighPct
      ? "The lowest feed solids must be below the highest."
      : machine.inorganicLowPct !== null &&
          machine.inorganicHighPct !== null &&
          machine.inorganicLowPct >= machine.inorganicHighPct
        ? "The lower threshold of the inorganic share must be below the upper one."
        : null,
  feedCase: (_state, feed) =>
    feed.supplyM3PerH !== null && feed.returnM3PerH !== null && feed.returnM3PerH >= feed.supplyM3PerH
      ? "The flow that returns must be less than the supply: check both."
      : null,
  plantRun: (_state, run) =>
    run.cakePct !== null && run.totalSolidsPct !== null && run.cakePct <= run.totalSolidsPct
      ? `The cake (${run.cakePct} %) must be drier than the feed (${run.totalSolidsPct} %): check both for swapped digits.`
      : null,
  runDose: (state, dose) =>
    Object.values(state.runDose).some(
      (other) => other.runId === dose.runId && other.makeDownId === dose.makeDownId && other.id !== dose.id,
    )
      ? "This run already has its entry for that polymer."
      : null,
};

/** The sentence for the first rule between fields (or records) that this record breaks, or null. */
export function brokenInvariant<K extends Kind>(state: StudyState, kind: K, id: string): string | null {
  const check = checks[kind] as Check<K> | undefined;
  const record = state[kind][id];
  return check && record ? check(state, record as StudyState[K][string]) : null;
}
