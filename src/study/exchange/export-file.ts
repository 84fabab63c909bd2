import { writeSeparated } from "../../exchange/csv-out.ts";
import { writeWorkbook } from "../../exchange/workbook-out.ts";
import type { StudyState } from "../schema/records.ts";
import { flatTable } from "./flat-table.ts";
import { wholeStudy } from "./whole-study.ts";
import { studySheets } from "./study-workbook.ts";

export const exportFormats = ["csv", "xlsx", "json"] as const;
export type ExportFormat = (typeof exportFormats)[number];

/** A study as the bytes of a file, in the study's own decimal mark. JSON holds everything; CSV the jars and readings. */
export async function exportFile(state: StudyState, format: ExportFormat): Promise<Uint8Array<ArrayBuffer>> {
  const mark = state.study["study"]?.decimalMark ?? ".";
  if (format === "xlsx") return writeWorkbook(studySheets(state, mark));
  const text =
    format === "json"
      ? `${JSON.stringify(wholeStudy(state), null, 2)}\n`
      : (({ heads, rows }) => writeSeparated(heads, rows, mark))(flatTable(state, null));
  return new TextEncoder().encode(text);
}
