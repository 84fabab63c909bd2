import { speak, spokenLanguage, type Language } from "./language.ts";

/** Has every area speak a language from now on; its table is loaded when it is first spoken, and English needs none. */
export async function speakLanguage(language: Language): Promise<void> {
  if (spokenLanguage() === language) return;
  speak(language, language === "german" ? (await import("./german/all.ts")).german : null);
}
