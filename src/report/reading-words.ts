import { responseOf, type Reading } from "../study/derive/jars.ts";
import { leftOutWords } from "./sample-section.ts";
import type { PaperWords } from "./words.ts";
import { reportWords } from "../words/report.ts";

export type ReadingKind = Reading["result"]["kind"];

/** The kinds of reading in the order a jar is read: a column each, its head in the report's words. */
export const readingKinds = [
  "turbidity",
  "filtrate-tss",
  "filtrate-tss-dish",
  "drained",
  "cst",
  "filter-time",
  "srf",
  "cake-dish",
  "cake-ts",
  "capture",
  "floc-grade",
  "re-shear",
  "zeta",
] as const satisfies readonly ReadingKind[];

/** One reading as it was taken, with what it gives where that is derived, and why it is left out where it is. */
export function readingWords(reading: Reading, words: PaperWords): string {
  const text = resultWords(reading, words);
  return reading.leftOut === null ? text : reportWords.readings.leftOut(text, leftOutWords(reading.leftOut));
}

function resultWords(reading: Reading, words: PaperWords): string {
  const { result } = reading;
  const sign = "censored" in result && result.censored ? (result.censored === "above" ? "> " : "< ") : "";
  const weighed = (value: number | null) =>
    value === null ? reportWords.readings.notWeighed : words.entered(value);
  const given = () => {
    const derived = responseOf(reading);
    return derived ? ` = ${words.number(derived.value)}` : "";
  };
  switch (result.kind) {
    case "turbidity":
      return `${sign}${words.entered(result.value)}${result.dilution === 1 ? "" : ` × ${words.entered(result.dilution)}`}`;
    case "filtrate-tss":
      return `${sign}${words.entered(result.mgPerL)}`;
    case "filtrate-tss-dish":
      return `${words.entered(result.tareG)}, ${weighed(result.dryG)}; ${words.entered(result.volumeMl)}${given()}`;
    case "drained":
      return reportWords.readings.drainedAt(words.entered(result.ml), words.entered(result.atS));
    case "cst":
    case "filter-time":
      return words.entered(result.seconds);
    case "srf": {
      const volumes = reportWords.readings.volumes(result.points.length, result.firstUsed, result.lastUsed);
      const from = `${volumes}, ${words.entered(result.pressureKPa)} kPa, ${words.entered(result.temperatureC)} °C`;
      return `${from}${given() || reportWords.readings.noStraightPart}`;
    }
    case "cake-dish":
      return `${words.entered(result.tareG)}, ${weighed(result.wetG)}, ${weighed(result.dryG)}${given()}`;
    case "cake-ts":
    case "capture":
      return words.entered(result.pct);
    case "floc-grade":
      return words.entered(result.grade);
    case "re-shear":
      return `${words.entered(result.firstMm)}, ${words.entered(result.brokenMm)}, ${words.entered(result.regrownMm)}`;
    case "zeta":
      return words.entered(result.mV);
  }
}
