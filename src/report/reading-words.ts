import { type Reading } from "../study/derive/jars.ts";
import { kindOf, valueOf } from "../responses/registry.ts";
import { leftOutWords } from "./sample-section.ts";
import type { PaperWords } from "./words.ts";
import { reportWords } from "../words/report.ts";

/** One reading as it was taken, with what it gives where that is derived, and why it is left out where it is. */
export function readingWords(reading: Reading, words: PaperWords): string {
  const text = resultWords(reading, words);
  return reading.leftOut === null ? text : reportWords.readings.leftOut(text, leftOutWords(reading.leftOut));
}

function resultWords({ result }: Reading, words: PaperWords): string {
  return kindOf(result).onPaper(result, words, valueOf(result));
}
