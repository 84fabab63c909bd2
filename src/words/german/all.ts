import type { LanguageTable } from "../language.ts";
import { qualityFlags } from "./quality-flags.ts";
import { warnings } from "./warnings.ts";

/** German: every area of texts. A missing area or text fails the types or the test of the words. */
export const german: LanguageTable = { qualityFlags, warnings };
