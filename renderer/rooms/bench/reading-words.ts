import { kindOf, valueOf } from "../../../src/responses/registry.ts";
import type { RecordOf } from "../../../src/study/schema/records.ts";
import type { useFormat } from "../../stores/format.ts";

/** A reading in words: what was read, and what it gives. */
export function readingWords(
  { result }: RecordOf<"reading">,
  series: RecordOf<"series">,
  format: ReturnType<typeof useFormat>,
): string {
  return kindOf(result).onScreen(result, format, valueOf(result), series);
}
