import type { Language, LanguageTable } from "./language.ts";

/** The table of a language, loaded when it is spoken; the texts are written in English, which needs none. */
export async function tableOf(language: Language): Promise<LanguageTable | null> {
  return language === "german" ? (await import("./german/all.ts")).german : null;
}
