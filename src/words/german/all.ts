import type { LanguageTable } from "../language.ts";
import { benchFormulas } from "./bench-formulas.ts";
import { jarPlan } from "./jar-plan.ts";
import { numberEntry } from "./number-entry.ts";
import { warnings } from "./warnings.ts";

/** German: every area of texts. A missing area or text fails the types or the test of the words. */
export const german: LanguageTable = { benchFormulas, jarPlan, numberEntry, warnings };
