import type { LanguageTable } from "../language.ts";
import { shell } from "./shell.ts";
import { studies } from "./studies.ts";
import { warnings } from "./warnings.ts";

/** German: every area of texts. A missing area or text fails the types or the test of the words. */
export const german: LanguageTable = { shell, studies, warnings };
