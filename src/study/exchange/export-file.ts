import { writeSeparated } from "../../exchange/csv-out.ts";
import { writeWorkbook } from "../../exchange/workbook-out.ts";
import type { StudyState } from "../schema/records.ts";
import { flatTable } from "./flat-table.ts";
import { wholeStudy } from "./whole-study.ts";
import { studySheets } from "./study-workbook.ts";

export const exportFormats = ["csv", "xlsx", "json"] as const;
export type ExportFormat = (typeof exportFormats)[number];

/**
 * A study as the bytes of a file, in the study's own decimal mark. JSON holds everything; CSV the jars and readings,
 * of one series where it is named.
 */
export async function exportFile(
  state: StudyState,
  format: ExportFormat,
  seriesId: string | null = null,
): Promise<Uint8Array<ArrayBuffer>> {
  const mark = state.study["study"]?.decimalMark ?? ".";
  if (format === "xlsx") return writeWorkbook(studySheets(state, mark));
  const text =
    format === "json"
      ? `${JSON.stringify(wholeStudy(state), null, 2)}\n`
      : (({ heads, rows }) => writeSeparated(heads, rows, mark))(flatTable(state, seriesId));
  return new TextEncoder().encode(text);
}
