import type { StateTone } from "../../../src/study/derive/tone.ts";
import type { SludgeClass } from "../../../src/study/library/row.ts";
import { studiesWords as words } from "../../../src/words/studies.ts";
import { dateTag } from "../../language.ts";
import { sludgeClasses } from "../sample/sludge-classes.ts";
import type { useFormat } from "../../stores/format.ts";
import type { FoundRow } from "./use-library.ts";

type Format = ReturnType<typeof useFormat>;

/** A row's own key: a study may hold several series. */
export const keyOf = (row: FoundRow): string => `${row.ref} ${row.seriesId ?? ""}`;

export const sludgeWords = (name: SludgeClass | null): string =>
  name === null ? "" : (sludgeClasses.find(({ value }) => value === name)?.label ?? name);

export const productWords = ({ productA, productB }: FoundRow): string =>
  productA !== null && productB !== null ? words.firstThen(productA, productB) : (productA ?? productB ?? "");

export const standingTone: Record<FoundRow["standing"], StateTone> = {
  approved: "good",
  "out of date": "warn",
  "no dose approved": "missing",
};

/** the dose and the ends of its range, to one place */
const doseWriter = (row: FoundRow, format: Format) =>
  format.interval(row.doseAKgPerT ?? 0, row.lowKgPerT, row.highKgPerT, "doseKgPerT");

export function doseWords(row: FoundRow, format: Format): string {
  if (row.doseAKgPerT === null) return "";
  const a = format.given(row.doseAKgPerT, "doseKgPerT", doseWriter(row, format));
  return row.doseBKgPerT === null ? a : `${a} + ${format.given(row.doseBKgPerT, "doseKgPerT")}`;
}

export function rangeWords(row: FoundRow, format: Format): string {
  if (row.lowKgPerT === null && row.highKgPerT === null) return "";
  const write = doseWriter(row, format);
  const end = (value: number | null) => (value === null ? words.openEnd : write(value));
  return words.fromTo(end(row.lowKgPerT), end(row.highKgPerT));
}

export const numberWords = (value: number | null, format: Format, digits = 3): string =>
  value === null ? "" : format.plain(value, digits);

/** A cost with its currency; one that does not hold disposal says so, for it does not compare with the others. */
export function costWords(row: FoundRow, format: Format): string {
  return row.totalCost === null ? "" : `${format.money(row.totalCost)} ${row.currency}`;
}

/** What stands under a cost: that disposal is not in it, or why a result is missing. */
export const costNote = (row: FoundRow): string =>
  row.totalCost !== null && row.disposalCost === null ? words.withoutDisposal : row.why;

/** The rows that bear the same study's and series' name as a row of another file: only the file tells them apart. */
export function twinsOf(rows: readonly FoundRow[]): ReadonlySet<FoundRow> {
  const nameOf = (row: FoundRow) => JSON.stringify([row.studyName, row.seriesLabel]);
  const named = Map.groupBy(rows, nameOf);
  return new Set(rows.filter((row) => named.get(nameOf(row))!.some(({ ref }) => ref !== row.ref)));
}

/** The series, with its file where that is what tells it from another. */
export const seriesWords = (row: FoundRow, twins: ReadonlySet<FoundRow>): string =>
  [
    row.seriesLabel || words.noSeries,
    ...(row.invented ? [words.invented] : []),
    ...(twins.has(row) ? [row.fileName] : []),
  ].join(" · ");

export const dateWords = (at: string | null): string =>
  at === null ? "" : new Date(at).toLocaleDateString(dateTag(), { dateStyle: "medium" });

export interface Ranged {
  value: number | null;
  low: number | null;
  high: number | null;
}

export function rangedWords({ value, low, high }: Ranged, format: Format): string {
  if (value === null) return "";
  const write = format.interval(value, low, high);
  const bounds = low === null || high === null ? "" : ` (${words.fromTo(write(low), write(high))})`;
  return `${write(value)}${bounds}`;
}

/** The row that is better than every other one beyond the bounds of both fits; null where none is. */
export function surelyBest(
  rows: readonly FoundRow[],
  of: (row: FoundRow) => Ranged,
  better: "low" | "high",
): string | null {
  const known = rows.filter((row) => of(row).value !== null);
  const best = known.find((row) =>
    known.every((other) => {
      if (other === row) return true;
      const [mine, its] = [of(row), of(other)];
      if (mine.low === null || mine.high === null || its.low === null || its.high === null) return false;
      return better === "low" ? mine.high < its.low : mine.low > its.high;
    }),
  );
  return best && known.length > 1 ? keyOf(best) : null;
}
