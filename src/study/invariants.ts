import type { Kind, StudyState } from "./schema/records.ts";
import { invariantWords as words } from "../words/invariants.ts";

type MassName = keyof typeof words.masses;

type Check<K extends Kind> = (state: StudyState, record: StudyState[K][string]) => string | null;

/** Dish masses in their only possible order: tare < ash < dry < wet, as far as they are entered. */
function massOrder(masses: { name: MassName; massG: number | null }[]): string | null {
  const known = masses.filter((mass): mass is { name: MassName; massG: number } => mass.massG !== null);
  for (let index = 1; index < known.length; index++) {
    const lighter = known[index - 1];
    const heavier = known[index];
    if (lighter && heavier && lighter.massG >= heavier.massG)
      return words.massOrder(
        words.masses[heavier.name],
        heavier.massG,
        words.masses[lighter.name],
        lighter.massG,
      );
  }
  return null;
}

const checks: { [K in Kind]?: Check<K> } = {
  dish: (_state, dish) =>
    massOrder([
      { name: "emptyDish", massG: dish.tareG },
      { name: "ash", massG: dish.ashG },
      { name: "drySolids", massG: dish.dryG },
      { name: "wetSludge", massG: dish.wetG },
    ]),
  stock: (_state, stock) =>
    stock.neatMassG !== null && stock.totalMassG !== null && stock.neatMassG >= stock.totalMassG
      ? words.neatMass(stock.neatMassG, stock.totalMassG)
      : null,
  series: (_state, series) =>
    series.stockAId !== null && series.stockAId === series.stockBId ? words.sameStock : null,
  jar: (state, jar) => {
    const series = state.series[jar.seriesId];
    if (jar.role === "no-polymer" && ((jar.syringeAMl ?? 0) > 0 || (jar.syringeBMl ?? 0) > 0))
      return words.noPolymerJar(jar.label);
    const capacity = series?.syringeCapacityMl ?? null;
    for (const [letter, volume] of [
      ["A", jar.syringeAMl],
      ["B", jar.syringeBMl],
    ] as const) {
      if (volume !== null && capacity !== null && volume > capacity * 4)
        return words.manyFills(volume, letter, capacity);
    }
    return null;
  },
  reading: (_state, reading) => {
    const { result } = reading;
    if (result.kind === "cake-dish")
      return massOrder([
        { name: "emptyDish", massG: result.tareG },
        { name: "dryCake", massG: result.dryG },
        { name: "wetCake", massG: result.wetG },
      ]);
    if (result.kind === "filtrate-tss-dish")
      return massOrder([
        { name: "emptyFilter", massG: result.tareG },
        { name: "driedFilter", massG: result.dryG },
      ]);
    return null;
  },
  targets: (state, targets) => {
    const twin = Object.values(state.targets).find(
      (other) => other.seriesId === targets.seriesId && other.id !== targets.id,
    );
    return twin ? words.secondTargets : null;
  },
  makeDown: (state, makeDown) => {
    const twin = Object.values(state.makeDown).find(
      (other) => other.benchProductId === makeDown.benchProductId && other.id !== makeDown.id,
    );
    if (twin) return words.secondMakeDown;
    if (
      makeDown.carrierActivePct !== null &&
      makeDown.solutionActivePct !== null &&
      makeDown.carrierActivePct > makeDown.solutionActivePct
    )
      return words.carrierStrength;
    return null;
  },
  pump: (_state, pump) =>
    pump.settingLow !== null && pump.settingHigh !== null && pump.settingLow >= pump.settingHigh
      ? words.pumpRange
      : null,
  machine: (_state, machine) =>
    machine.feedLowPct !== null && machine.feedHighPct !== null && machine.feedLowPct >= machine.feedHighPct
      ? words.feedRange
      : machine.inorganicLowPct !== null &&
          machine.inorganicHighPct !== null &&
          machine.inorganicLowPct >= machine.inorganicHighPct
        ? words.inorganicRange
        : null,
  feedCase: (_state, feed) =>
    feed.supplyM3PerH !== null && feed.returnM3PerH !== null && feed.returnM3PerH >= feed.supplyM3PerH
      ? words.returnFlow
      : null,
  plantRun: (_state, run) =>
    run.cakePct !== null && run.totalSolidsPct !== null && run.cakePct <= run.totalSolidsPct
      ? words.wetterCake(run.cakePct, run.totalSolidsPct)
      : null,
  runDose: (state, dose) =>
    Object.values(state.runDose).some(
      (other) => other.runId === dose.runId && other.makeDownId === dose.makeDownId && other.id !== dose.id,
    )
      ? words.secondRunDose
      : null,
};

/** The sentence for the first rule between fields (or records) that this record breaks, or null. */
export function brokenInvariant<K extends Kind>(state: StudyState, kind: K, id: string): string | null {
  const check = checks[kind] as Check<K> | undefined;
  const record = state[kind][id];
  return check && record ? check(state, record as StudyState[K][string]) : null;
}
