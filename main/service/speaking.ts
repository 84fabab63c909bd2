import { firstLanguage, spokenLanguage, type Language } from "../../src/words/language.ts";
import { speakLanguage } from "../../src/words/speak-language.ts";
import { readPreferences, writePreferences } from "../storage/preferences-file.ts";
import type { Context } from "./context.ts";

/** The language a person chose for the program, null until somebody does: the window then follows its system. */
export function chosenLanguage(context: Context): Language | null {
  return readPreferences(context.support.folder).language;
}

/** Answers in this language from now on, and remembers it where a person chose it. */
export async function speakIn(context: Context, language: Language, chosen: boolean): Promise<void> {
  if (chosen) writePreferences(context.support.folder, { language });
  if (language === spokenLanguage()) return;
  await speakLanguage(language);
  // Rows of the folder's index hold sentences: they are put together again in the new language.
  context.library = null;
}

/** Speaks before there is a window to say how: what a person chose, else the system's language. */
export function speakFirst(context: Context, systemTag: string): Promise<void> {
  return speakIn(context, firstLanguage(chosenLanguage(context), systemTag), false);
}

/** The decimal mark a new study begins with: the language's own; each study may choose another. */
export function usualMark(): "." | "," {
  return spokenLanguage() === "german" ? "," : ".";
}
