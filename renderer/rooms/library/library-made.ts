import { sourceOf } from "../../../src/methods/methods.ts";
import type { Made } from "../../../src/study/derive/figure.ts";
import { madeLibraryWords } from "../../../src/words/made-library.ts";
import type { useFormat } from "../../stores/format.ts";
import { doseWords } from "./library-words.ts";
import type { FoundRow } from "./use-library.ts";

type Format = ReturnType<typeof useFormat>;

/** What is told of a column; more rows than a popover can show are left to the table. */
const mostRows = 20;

const nameOf = (row: FoundRow) => `${row.studyName || row.fileName}, ${row.seriesLabel}`;

const approved = (rows: readonly FoundRow[]) =>
  rows.filter((row) => row.doseAKgPerT !== null).slice(0, mostRows);

/** How the fitted values of a column were made: each series at its own approved dose. */
export function fittedColumnMade(
  rows: readonly FoundRow[],
  valueOf: (row: FoundRow) => string,
  unit: string,
  format: Format,
): Made {
  return {
    formula: madeLibraryWords.fitted,
    inputs: approved(rows).map((row) => ({
      name: `${nameOf(row)}, ${madeLibraryWords.at(doseWords(row, format), format.unit("doseKgPerT"))}`,
      value: valueOf(row) || null,
      unit,
    })),
    source: sourceOf("band"),
  };
}

/** How the costs were made: each series' parts. */
export function costColumnMade(rows: readonly FoundRow[], format: Format): Made {
  const part = (value: number | null) => (value === null ? "–" : format.plain(value));
  return {
    formula: madeLibraryWords.cost,
    inputs: approved(rows).map((row) => ({
      name: `${nameOf(row)}, ${madeLibraryWords.at(doseWords(row, format), format.unit("doseKgPerT"))}`,
      value:
        row.totalCost === null
          ? null
          : madeLibraryWords.parts(part(row.polymerCost), part(row.disposalCost), part(row.returnCost)),
      unit: row.currency,
    })),
    source: sourceOf("cost"),
  };
}
