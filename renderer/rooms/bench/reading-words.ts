import { responseOf } from "../../../src/study/derive/jars.ts";
import { responseWords } from "../../../src/study/derive/choice.ts";
import type { RecordOf } from "../../../src/study/schema/records.ts";
import type { useFormat } from "../../stores/format.ts";
import { flocWords } from "./floc-words.ts";

type Reading = RecordOf<"reading">;

/** A reading in words: what was read, and what it gives. */
export function readingWords(
  reading: Reading,
  series: RecordOf<"series">,
  format: ReturnType<typeof useFormat>,
): string {
  const { result } = reading;
  const given = responseOf(reading);
  const sign = given?.censored === "above" ? ">" : given?.censored === "below" ? "<" : "";
  const mass = (value: number | null, waiting: string) => (value === null ? waiting : format.entry(value));
  switch (result.kind) {
    case "turbidity":
      return `turbidity ${sign}${format.plain(result.value)} ${series.turbidityUnit}${result.dilution === 1 ? "" : `, diluted ${format.plain(result.dilution)} times: ${format.plain(given!.value)}`}`;
    case "drained":
      return `drained ${format.plain(result.ml)} mL at ${format.plain(result.atS)} s`;
    case "cake-dish":
      return `cake dish ${format.entry(result.tareG)}, ${mass(result.wetG, "wet not weighed")}, ${mass(result.dryG, "in the oven")}${given ? ` g: ${format.plain(given.value)} %` : ""}`;
    case "filtrate-tss-dish":
      return `filter ${format.entry(result.tareG)} g, ${mass(result.volumeMl, "not filtered")} mL, ${mass(result.dryG, "in the oven")}${given ? ` g: ${format.plain(given.value)} mg/L` : ""}`;
    case "floc-grade":
      return `floc ${result.grade}: ${flocWords[result.grade] ?? ""}`;
    case "capture":
      return `capture ${format.plain(result.pct)} %`;
    case "filter-time":
      return `time to filter ${format.plain(result.seconds)} s`;
    case "re-shear":
      return `floc ${format.plain(result.firstMm)} mm, broken ${format.plain(result.brokenMm)} mm${result.regrownMm === null ? "" : `, regrown ${format.plain(result.regrownMm)} mm`}`;
    case "zeta":
      return `zeta potential ${format.plain(result.mV)} mV`;
    case "srf":
      return `filtration, ${result.points.length} volumes${given ? `: ${format.plain(given.value)} Tm/kg` : ""}`;
    default:
      return given
        ? `${responseWords[given.name]?.label} ${sign}${format.plain(given.value)} ${responseWords[given.name]?.unit}`
        : result.kind;
  }
}
