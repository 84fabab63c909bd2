import type { LanguageTable } from "../language.ts";
import { doseReport } from "./dose-report.ts";
import { hosts } from "./hosts.ts";
import { onPaper } from "./on-paper.ts";
import { pumpReport } from "./pump-report.ts";
import { report } from "./report.ts";
import { service } from "./service.ts";
import { sheet } from "./sheet.ts";
import { storage } from "./storage.ts";
import { warnings } from "./warnings.ts";

/** German: every area of texts. A missing area or text fails the types or the test of the words. */
export const german: LanguageTable = {
  doseReport,
  hosts,
  onPaper,
  pumpReport,
  report,
  service,
  sheet,
  storage,
  warnings,
};
