import type { LanguageTable } from "../language.ts";
import { benchFormulas } from "./bench-formulas.ts";
import { benchTable } from "./bench-table.ts";
import { cautions } from "./cautions.ts";
import { charts } from "./charts.ts";
import { checkChain } from "./check-chain.ts";
import { choiceChain } from "./choice-chain.ts";
import { choice } from "./choice.ts";
import { columns } from "./columns.ts";
import { models, verdicts, surfaceVerdicts, jarTable } from "./curve.ts";
import { curvesRoom } from "./curves-room.ts";
import { decisionChain } from "./decision-chain.ts";
import { doseReport } from "./dose-report.ts";
import { doseRoom } from "./dose-room.ts";
import { factorChain } from "./factor-chain.ts";
import { feedChain } from "./feed-chain.ts";
import { history } from "./history.ts";
import { hosts } from "./hosts.ts";
import { imports } from "./imports.ts";
import { invariants } from "./invariants.ts";
import { jarChain } from "./jar-chain.ts";
import { jarPlan } from "./jar-plan.ts";
import { machineChain } from "./machine-chain.ts";
import { madeChoice } from "./made-choice.ts";
import { numberEntry } from "./number-entry.ts";
import { onPaper } from "./on-paper.ts";
import { plantChain } from "./plant-chain.ts";
import { plantDose } from "./plant-dose.ts";
import { plantFormulas } from "./plant-formulas.ts";
import { plantInputs } from "./plant-inputs.ts";
import { pumpChain } from "./pump-chain.ts";
import { pumpReport } from "./pump-report.ts";
import { qualityFlags } from "./quality-flags.ts";
import { ratesReport } from "./rates-report.ts";
import { record } from "./record.ts";
import { kinds, records } from "./records.ts";
import { report } from "./report.ts";
import { runsReport } from "./runs-report.ts";
import { sampleChain } from "./sample-chain.ts";
import { sampleRoom } from "./sample-room.ts";
import { schema, issues } from "./schema.ts";
import { service } from "./service.ts";
import { sheet } from "./sheet.ts";
import { sheets } from "./sheets.ts";
import { shell } from "./shell.ts";
import { stockChain } from "./stock-chain.ts";
import { storage } from "./storage.ts";
import { strip } from "./strip.ts";
import { studies } from "./studies.ts";
import { summaries } from "./summaries.ts";
import { supplyFigures } from "./supply-figures.ts";
import { unitChain } from "./unit-chain.ts";
import { warnings } from "./warnings.ts";

/** German: every area of texts. A missing area or text fails the types or the test of the words. */
export const german: LanguageTable = {
  benchFormulas,
  benchTable,
  cautions,
  charts,
  checkChain,
  choice,
  choiceChain,
  columns,
  curvesRoom,
  decisionChain,
  doseReport,
  doseRoom,
  factorChain,
  feedChain,
  history,
  hosts,
  imports,
  invariants,
  issues,
  jarChain,
  jarPlan,
  jarTable,
  kinds,
  machineChain,
  madeChoice,
  models,
  numberEntry,
  onPaper,
  plantChain,
  plantDose,
  plantFormulas,
  plantInputs,
  pumpChain,
  pumpReport,
  qualityFlags,
  ratesReport,
  record,
  records,
  report,
  runsReport,
  sampleChain,
  sampleRoom,
  schema,
  service,
  sheet,
  sheets,
  shell,
  stockChain,
  storage,
  strip,
  studies,
  summaries,
  supplyFigures,
  surfaceVerdicts,
  unitChain,
  verdicts,
  warnings,
};
