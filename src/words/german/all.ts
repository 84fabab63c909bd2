import type { LanguageTable } from "../language.ts";
import { hosts } from "./hosts.ts";
import { service } from "./service.ts";
import { storage } from "./storage.ts";
import { warnings } from "./warnings.ts";

/** German: every area of texts. A missing area or text fails the types or the test of the words. */
export const german: LanguageTable = { hosts, service, storage, warnings };
