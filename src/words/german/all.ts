import type { LanguageTable } from "../language.ts";
import { benchFormulas } from "./bench-formulas.ts";
import { benchGrid } from "./bench-grid.ts";
import { benchMethods } from "./bench-methods.ts";
import { benchPlan } from "./bench-plan.ts";
import { benchRoom } from "./bench-room.ts";
import { benchRun } from "./bench-run.ts";
import { benchTable } from "./bench-table.ts";
import { cautions } from "./cautions.ts";
import { charts } from "./charts.ts";
import { checkChain } from "./check-chain.ts";
import { choiceChain } from "./choice-chain.ts";
import { choiceMethods } from "./choice-methods.ts";
import { choice } from "./choice.ts";
import { columns } from "./columns.ts";
import { curveMethods } from "./curve-methods.ts";
import { models, verdicts, surfaceVerdicts, jarTable } from "./curve.ts";
import { curvesRoom } from "./curves-room.ts";
import { decisionChain } from "./decision-chain.ts";
import { demo } from "./demo.ts";
import { doseReport } from "./dose-report.ts";
import { doseRoom } from "./dose-room.ts";
import { exchangeRoom } from "./exchange-room.ts";
import { factorChain } from "./factor-chain.ts";
import { feedChain } from "./feed-chain.ts";
import { glance } from "./glance.ts";
import { glossary } from "./glossary.ts";
import { guide } from "./guide.ts";
import { help } from "./help.ts";
import { history } from "./history.ts";
import { hosts } from "./hosts.ts";
import { imports } from "./imports.ts";
import { invariants } from "./invariants.ts";
import { jarChain } from "./jar-chain.ts";
import { jarDetails } from "./jar-details.ts";
import { jarPlan } from "./jar-plan.ts";
import { looks } from "./looks.ts";
import { machineChain } from "./machine-chain.ts";
import { madeBench } from "./made-bench.ts";
import { madeChoice } from "./made-choice.ts";
import { madeFit } from "./made-fit.ts";
import { madeLibrary } from "./made-library.ts";
import { measurements } from "./measurements.ts";
import { mixingChain } from "./mixing-chain.ts";
import { mixingPlaces } from "./mixing-places.ts";
import { numberEntry } from "./number-entry.ts";
import { onPaper } from "./on-paper.ts";
import { paperRoom } from "./paper-room.ts";
import { plantChain } from "./plant-chain.ts";
import { plotReport } from "./plot-report.ts";
import { plantDose } from "./plant-dose.ts";
import { plantForms } from "./plant-forms.ts";
import { plantFormulas } from "./plant-formulas.ts";
import { plantInputs } from "./plant-inputs.ts";
import { plantMade } from "./plant-made.ts";
import { plantMethods } from "./plant-methods.ts";
import { plantPumps } from "./plant-pumps.ts";
import { plantRoom } from "./plant-room.ts";
import { plantRuns } from "./plant-runs.ts";
import { plantTrials } from "./plant-trials.ts";
import { plantWatch } from "./plant-watch.ts";
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
import { settingTable } from "./setting-table.ts";
import { sheet } from "./sheet.ts";
import { sheets } from "./sheets.ts";
import { shell } from "./shell.ts";
import { startRoom } from "./start-room.ts";
import { stockChain } from "./stock-chain.ts";
import { storage } from "./storage.ts";
import { strip } from "./strip.ts";
import { studies } from "./studies.ts";
import { summaries } from "./summaries.ts";
import { supplyFigures } from "./supply-figures.ts";
import { unitChain } from "./unit-chain.ts";
import { warnings } from "./warnings.ts";
import { watchReport } from "./watch-report.ts";
import { responsesInGerman } from "../../responses/german/all.ts";

/** German: every area of texts. A missing area or text fails the types or the test of the words. */
export const german: LanguageTable = {
  ...responsesInGerman,
  benchFormulas,
  benchGrid,
  benchMethods,
  benchPlan,
  benchRoom,
  benchRun,
  benchTable,
  cautions,
  charts,
  checkChain,
  choice,
  choiceChain,
  choiceMethods,
  columns,
  curveMethods,
  curvesRoom,
  decisionChain,
  demo,
  doseReport,
  doseRoom,
  exchangeRoom,
  factorChain,
  feedChain,
  glance,
  glossary,
  guide,
  help,
  history,
  hosts,
  imports,
  invariants,
  issues,
  jarChain,
  jarDetails,
  jarPlan,
  jarTable,
  kinds,
  looks,
  machineChain,
  madeBench,
  madeChoice,
  madeFit,
  madeLibrary,
  measurements,
  mixingChain,
  mixingPlaces,
  models,
  numberEntry,
  onPaper,
  paperRoom,
  plantChain,
  plantDose,
  plantForms,
  plantFormulas,
  plantInputs,
  plantMade,
  plantMethods,
  plantPumps,
  plantRoom,
  plantRuns,
  plantTrials,
  plantWatch,
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
  settingTable,
  sheet,
  sheets,
  shell,
  startRoom,
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
  plotReport,
  watchReport,
};
