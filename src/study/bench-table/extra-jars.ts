import { syringeForDose } from "../../bench/dose.ts";
import { bad, good, type Outcome } from "../../outcome.ts";
import type { SimpleCommand } from "../commands.ts";
import type { SeriesChain } from "../derive/jars.ts";
import { nextJar } from "./next-jar.ts";
import { benchTableWords } from "../../words/bench-table.ts";

/**
 * The edits that add one jar for each wanted dose of polymer A (kg active per t) to a series of one polymer: planned
 * dose, syringe volume rounded to 0.1 mL, and blank water up to the largest volume added so far.
 */
export function jarsAtDoses(
  chain: SeriesChain,
  dosesKgPerT: number[],
  newId: () => string,
): Outcome<SimpleCommand[]> {
  const { series, sample, stockA } = chain;
  if (series.stockBId !== null) return bad(benchTableWords.pairsPlanned);
  if (!stockA || stockA.active.value === null || stockA.stock.solutionDensityKgPerL === null)
    return bad(benchTableWords.stockFirst);
  if (sample.totalSolids.value === null || sample.density.value === null)
    return bad(benchTableWords.solidsFirst);
  if (series.sampleVolumeMl === null) return bad(benchTableWords.volumeFirst);
  const basis = {
    sampleVolumeMl: series.sampleVolumeMl,
    sampleDensityKgPerL: sample.density.value,
    totalSolidsPct: sample.totalSolids.value,
    solutionActivePct: stockA.active.value,
    solutionDensityKgPerL: stockA.stock.solutionDensityKgPerL,
  };
  const largestMl = Math.max(0, ...chain.jars.map(({ addedMl }) => addedMl ?? 0));
  const next = nextJar(chain, 0);
  const round = (ml: number) => Math.round(ml * 10) / 10;
  const commands: SimpleCommand[] = [];
  for (const dose of dosesKgPerT) {
    const volume = syringeForDose(dose, basis);
    if (!volume.ok) return volume;
    const syringeAMl = round(volume.value);
    commands.push({
      do: "add",
      kind: "jar",
      record: {
        id: newId(),
        seriesId: series.id,
        ...next(),
        plannedDoseAKgPerT: Number(dose.toPrecision(3)),
        syringeAMl,
        blankWaterMl: Math.max(0, round(largestMl - syringeAMl)),
      },
    });
  }
  return good(commands);
}
