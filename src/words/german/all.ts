import type { LanguageTable } from "../language.ts";
import { record } from "./record.ts";
import { sampleRoom } from "./sample-room.ts";
import { shell } from "./shell.ts";
import { studies } from "./studies.ts";
import { warnings } from "./warnings.ts";

/** German: every area of texts. A missing area or text fails the types or the test of the words. */
export const german: LanguageTable = { record, sampleRoom, shell, studies, warnings };
