import { readFileSync, renameSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { z } from "zod";
import { languages } from "../../src/words/language.ts";

const preferencesSchema = z.object({ language: z.enum(languages).nullable().catch(null) });
/** What a person chose for the program itself and not for one study. */
export type Preferences = z.output<typeof preferencesSchema>;

const pathIn = (folder: string) => join(folder, "flocwright-preferences.json");

/** The choices kept in the folder of studies; none where the file is missing or is not what it should be. */
export function readPreferences(folder: string): Preferences {
  try {
    return preferencesSchema.parse(JSON.parse(readFileSync(pathIn(folder), "utf8")));
  } catch {
    return { language: null };
  }
}

/** Keeps the choices, whole or not at all; false where the folder takes no file: the choice then lasts for this run. */
export function writePreferences(folder: string, preferences: Preferences): boolean {
  const path = pathIn(folder);
  const beside = `${path}.${process.pid}.part`;
  try {
    writeFileSync(beside, `${JSON.stringify(preferences, null, 2)}\n`);
    renameSync(beside, path);
    return true;
  } catch {
    rmSync(beside, { force: true });
    return false;
  }
}
