import type { DoseMark } from "../../charts/dose-chart-data.ts";
import { chartWords } from "../../../src/words/charts.ts";
import type { useChain } from "../../stores/chain.ts";
import type { useFormat } from "../../stores/format.ts";

/** The doses that matter on every dose axis: the plant's present one and the approved one, each with its number. */
export function doseMarks(
  chain: ReturnType<typeof useChain>,
  format: ReturnType<typeof useFormat>,
): DoseMark[] {
  const present = chain.targets?.presentDoseKgPerT ?? null;
  const decision = chain.decision?.decision;
  const picked = (chain.analysis?.axis === "b" ? decision?.doseBKgPerT : decision?.doseAKgPerT) ?? null;
  const mark = (doseKgPerT: number, name: (dose: string) => string, tone: DoseMark["tone"]): DoseMark => ({
    dose: format.toShown(doseKgPerT, "doseKgPerT"),
    label: name(format.given(doseKgPerT, "doseKgPerT")),
    tone,
  });
  return [
    ...(present === null ? [] : [mark(present, chartWords.plantToday, "warn")]),
    ...(picked === null ? [] : [mark(picked, chartWords.approved, "soft")]),
  ];
}
