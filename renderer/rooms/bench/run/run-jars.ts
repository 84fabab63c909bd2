import { kindsAsTaken } from "../../../../src/responses/registry.ts";
import { openStep, runSteps, type RunStep } from "../../../../src/bench/run-steps.ts";
import { fieldValue } from "../../../../src/study/bench-table/reading-columns.ts";
import type { JarChain, SeriesChain } from "../../../../src/study/derive/jars.ts";

/** Whether a jar has a number in this field of a reading that counts. */
export function hasReading(jar: JarChain, reading: string, field: string): boolean {
  return jar.readings.some(
    ({ result, leftOut }) =>
      result.kind === reading && leftOut === null && fieldValue(result, field) !== null,
  );
}

/** The steps of one jar as this series runs its jars. */
function stepsOf(chain: SeriesChain, jar: JarChain): RunStep[] {
  const { series } = chain;
  const dosed = (letter: "A" | "B") => {
    const syringe = letter === "A" ? jar.jar.syringeAMl : jar.jar.syringeBMl;
    const planned = letter === "A" ? jar.jar.plannedDoseAKgPerT : jar.jar.plannedDoseBKgPerT;
    return jar.jar.role !== "no-polymer" && (syringe === null ? planned !== 0 : syringe > 0);
  };
  const letters = series.stockBId === null ? (["A"] as const) : (["A", "B"] as const);
  return runSteps({
    sampleMl: jar.jar.sampleVolumeMl ?? series.sampleVolumeMl,
    blankWaterMl: jar.jar.blankWaterMl,
    polymers: letters.filter(dosed),
    protocol: series.protocol,
    readings: kindsAsTaken.flatMap(({ kind, spec }) =>
      spec.run && series.readings.includes(kind) ? [{ reading: kind, fields: spec.run.fields }] : [],
    ),
  });
}

/** The dry masses a jar waits for: its dishes and filters are in the oven. */
export function drySteps(jar: JarChain): RunStep[] {
  return kindsAsTaken.flatMap(({ kind, spec }): RunStep[] => {
    const later = spec.run?.later;
    const dish = jar.readings.some(({ result, leftOut }) => result.kind === kind && leftOut === null);
    return later && dish ? [{ kind: "read", reading: kind, field: later }] : [];
  });
}

export type Pass = "jars" | "dry";

export const passSteps = (chain: SeriesChain, jar: JarChain, pass: Pass): RunStep[] =>
  pass === "dry" ? drySteps(jar) : stepsOf(chain, jar);

/** The jars of a series in the order they are run. */
export function runOrder(chain: SeriesChain): JarChain[] {
  return [...chain.jars].sort((a, b) => a.jar.order - b.jar.order || (a.jar.id < b.jar.id ? -1 : 1));
}

/** Whether a step of a jar is done, as far as its record tells. */
export function stepDone(jar: JarChain, step: RunStep): boolean {
  const { mixedAt, asMixed } = jar.jar;
  switch (step.kind) {
    case "measure":
      return mixedAt !== null;
    case "inject":
      return mixedAt !== null && (step.letter === "A" || (asMixed?.betweenS ?? null) !== null);
    case "mix":
      return (asMixed?.[`${step.pace}S`] ?? null) !== null;
    case "pour":
      return (asMixed?.pours ?? null) !== null;
    case "drain":
      return hasReading(jar, "drained", "ml");
    case "read":
      return hasReading(jar, step.reading, step.field);
  }
}

/** Where a jar goes on in this pass, or null where it has all it needs or is left out. */
export function openStepOf(chain: SeriesChain, jar: JarChain, pass: Pass): number | null {
  if (jar.jar.leftOut !== null) return null;
  return openStep(passSteps(chain, jar, pass), (step) => stepDone(jar, step));
}

/** The next jar with something to do, from one jar on and round to the start. */
export function nextOpen(
  chain: SeriesChain,
  pass: Pass,
  after: string | null,
): { jarId: string; step: number } | null {
  const order = runOrder(chain);
  const from = after === null ? 0 : order.findIndex(({ jar }) => jar.id === after) + 1;
  for (let i = 0; i < order.length; i++) {
    const jar = order[(from + i) % order.length]!;
    if (jar.jar.id === after) continue;
    const step = openStepOf(chain, jar, pass);
    if (step !== null) return { jarId: jar.jar.id, step };
  }
  return null;
}
