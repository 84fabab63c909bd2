import { responseOf, type Reading } from "../study/derive/jars.ts";
import { leftOutWords } from "./sample-section.ts";
import type { PaperWords } from "./words.ts";

export type ReadingKind = Reading["result"]["kind"];

/** The head of each kind's column, in the order a jar is read. */
export const readingHeads: Record<ReadingKind, string> = {
  turbidity: "turbidity",
  "filtrate-tss": "filtrate TSS, mg/L",
  "filtrate-tss-dish": "filter: empty, dry g; mL = mg/L",
  drained: "drained, mL at s",
  cst: "CST, s",
  "filter-time": "time to filter, s",
  srf: "filtration, SRF in Tm/kg",
  "cake-dish": "cake dish: empty, wet, dry g = %",
  "cake-ts": "cake TS, %",
  capture: "capture as read, %",
  "floc-grade": "floc, 1 to 5",
  "re-shear": "floc: first, broken, regrown mm",
  zeta: "zeta, mV",
};

/** One reading as it was taken, with what it gives where that is derived, and why it is left out where it is. */
export function readingWords(reading: Reading, words: PaperWords): string {
  const text = resultWords(reading, words);
  return reading.leftOut === null ? text : `${text} (left out: ${leftOutWords(reading.leftOut)})`;
}

function resultWords(reading: Reading, words: PaperWords): string {
  const { result } = reading;
  const sign = "censored" in result && result.censored ? (result.censored === "above" ? "> " : "< ") : "";
  const weighed = (value: number | null) => (value === null ? "not weighed" : words.entered(value));
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
      return `${words.entered(result.ml)} at ${words.entered(result.atS)}`;
    case "cst":
    case "filter-time":
      return words.entered(result.seconds);
    case "srf": {
      const from = `${result.points.length} volumes, ${result.firstUsed} to ${result.lastUsed} used, ${words.entered(result.pressureKPa)} kPa, ${words.entered(result.temperatureC)} °C`;
      return `${from}${given() || ": no straight part"}`;
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
