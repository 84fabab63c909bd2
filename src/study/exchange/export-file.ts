import { writeSeparated } from "../../exchange/csv-out.ts";
import { writeWorkbook } from "../../exchange/workbook-out.ts";
import { kinds, type Kind, type StudyState } from "../schema/records.ts";
import { flatTable } from "./flat-table.ts";
import type { ExportTold } from "../../exchange/told.ts";
import { wholeStudy } from "./whole-study.ts";
import { studySheets } from "./study-workbook.ts";

export const exportFormats = ["csv", "xlsx", "json"] as const;
export type ExportFormat = (typeof exportFormats)[number];

/** What a file of this format is made from: photos fit into JSON alone. */
export function kindsToExport(format: ExportFormat): Kind[] {
  return kinds.filter((kind) => format === "json" || kind !== "photo");
}

/**
 * A study as the bytes of a file, in the study's own decimal mark. JSON holds everything; CSV the jars and readings,
 * of one series where it is named. `told` hears how many jars are worked out, then how many lines are written.
 */
export async function exportFile(
  state: StudyState,
  format: ExportFormat,
  seriesId: string | null = null,
  told: ExportTold = () => undefined,
): Promise<Uint8Array<ArrayBuffer>> {
  const mark = state.study["study"]?.decimalMark ?? ".";
  if (format === "xlsx") return writeWorkbook(studySheets(state, mark, told), told);
  const text =
    format === "json"
      ? `${JSON.stringify(wholeStudy(state), null, 2)}\n`
      : (({ heads, rows }) => writeSeparated(heads, rows, mark, told))(flatTable(state, seriesId, told));
  return new TextEncoder().encode(text);
}
