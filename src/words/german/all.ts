import type { LanguageTable } from "../language.ts";
import { benchFormulas } from "./bench-formulas.ts";
import { cautions } from "./cautions.ts";
import { history } from "./history.ts";
import { invariants } from "./invariants.ts";
import { jarPlan } from "./jar-plan.ts";
import { numberEntry } from "./number-entry.ts";
import { kinds, records } from "./records.ts";
import { issues, schema } from "./schema.ts";
import { warnings } from "./warnings.ts";

/** German: every area of texts. A missing area or text fails the types or the test of the words. */
export const german: LanguageTable = {
  benchFormulas,
  cautions,
  history,
  invariants,
  issues,
  jarPlan,
  kinds,
  numberEntry,
  records,
  schema,
  warnings,
};
