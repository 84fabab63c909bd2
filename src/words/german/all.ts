import type { LanguageTable } from "../language.ts";
import { benchFormulas } from "./bench-formulas.ts";
import { benchTable } from "./bench-table.ts";
import { cautions } from "./cautions.ts";
import { choice } from "./choice.ts";
import { columns } from "./columns.ts";
import { jarTable, models, surfaceVerdicts, verdicts } from "./curve.ts";
import { history } from "./history.ts";
import { imports } from "./imports.ts";
import { invariants } from "./invariants.ts";
import { jarPlan } from "./jar-plan.ts";
import { numberEntry } from "./number-entry.ts";
import { plantFormulas } from "./plant-formulas.ts";
import { kinds, records } from "./records.ts";
import { issues, schema } from "./schema.ts";
import { sheets } from "./sheets.ts";
import { summaries } from "./summaries.ts";
import { warnings } from "./warnings.ts";

/** German: every area of texts. A missing area or text fails the types or the test of the words. */
export const german: LanguageTable = {
  benchFormulas,
  benchTable,
  cautions,
  choice,
  columns,
  history,
  imports,
  invariants,
  issues,
  jarPlan,
  jarTable,
  kinds,
  models,
  numberEntry,
  plantFormulas,
  records,
  schema,
  sheets,
  summaries,
  surfaceVerdicts,
  verdicts,
  warnings,
};
