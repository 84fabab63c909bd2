import { references } from "../../src/study/references.ts";
import type { AnyRecord, Kind } from "../../src/study/schema/records.ts";
import { kindWords } from "../../src/words/records.ts";
import { storageWords } from "../../src/words/storage.ts";

/** The sentence for the first record that names one which is not in the study, or null. */
export function lostReference(tables: Record<Kind, Record<string, AnyRecord>>): string | null {
  for (const link of references)
    for (const record of Object.values(tables[link.from])) {
      const aim = (record as Record<string, unknown>)[link.field];
      if (typeof aim === "string" && !Object.hasOwn(tables[link.to], aim))
        return storageWords.content.lostReference(kindWords[link.from].one, kindWords[link.to].one);
    }
  return null;
}
