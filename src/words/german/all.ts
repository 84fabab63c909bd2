import type { LanguageTable } from "../language.ts";
import { benchFormulas } from "./bench-formulas.ts";
import { benchTable } from "./bench-table.ts";
import { cautions } from "./cautions.ts";
import { checkChain } from "./check-chain.ts";
import { choiceChain } from "./choice-chain.ts";
import { choice } from "./choice.ts";
import { columns } from "./columns.ts";
import { models, verdicts, surfaceVerdicts, jarTable } from "./curve.ts";
import { decisionChain } from "./decision-chain.ts";
import { doseReport } from "./dose-report.ts";
import { factorChain } from "./factor-chain.ts";
import { feedChain } from "./feed-chain.ts";
import { history } from "./history.ts";
import { hosts } from "./hosts.ts";
import { imports } from "./imports.ts";
import { invariants } from "./invariants.ts";
import { jarChain } from "./jar-chain.ts";
import { jarPlan } from "./jar-plan.ts";
import { machineChain } from "./machine-chain.ts";
import { mixingPlaces } from "./mixing-places.ts";
import { numberEntry } from "./number-entry.ts";
import { onPaper } from "./on-paper.ts";
import { plantChain } from "./plant-chain.ts";
import { plantDose } from "./plant-dose.ts";
import { plantForms } from "./plant-forms.ts";
import { plantFormulas } from "./plant-formulas.ts";
import { plantInputs } from "./plant-inputs.ts";
import { plantMade } from "./plant-made.ts";
import { plantPumps } from "./plant-pumps.ts";
import { plantRoom } from "./plant-room.ts";
import { plantRuns } from "./plant-runs.ts";
import { plantTrials } from "./plant-trials.ts";
import { plantWatch } from "./plant-watch.ts";
import { pumpChain } from "./pump-chain.ts";
import { pumpReport } from "./pump-report.ts";
import { qualityFlags } from "./quality-flags.ts";
import { record } from "./record.ts";
import { kinds, records } from "./records.ts";
import { report } from "./report.ts";
import { sampleChain } from "./sample-chain.ts";
import { sampleRoom } from "./sample-room.ts";
import { schema, issues } from "./schema.ts";
import { service } from "./service.ts";
import { settingTable } from "./setting-table.ts";
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
import { watchReport } from "./watch-report.ts";

/** German: every area of texts. A missing area or text fails the types or the test of the words. */
export const german: LanguageTable = {
  benchFormulas,
  benchTable,
  cautions,
  checkChain,
  choice,
  choiceChain,
  columns,
  decisionChain,
  doseReport,
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
  mixingPlaces,
  models,
  numberEntry,
  onPaper,
  plantChain,
  plantDose,
  plantForms,
  plantFormulas,
  plantInputs,
  plantMade,
  plantPumps,
  plantRoom,
  plantRuns,
  plantTrials,
  plantWatch,
  pumpChain,
  pumpReport,
  qualityFlags,
  record,
  records,
  report,
  sampleChain,
  sampleRoom,
  schema,
  service,
  settingTable,
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
  watchReport,
};
