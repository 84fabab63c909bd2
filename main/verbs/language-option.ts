import { bad, good, type Outcome } from "../../src/outcome.ts";
import { languages, type Language } from "../../src/words/language.ts";
import { speakLanguage } from "../../src/words/speak-language.ts";

/** The value of --language: what a paper is written in, English where nothing is said. */
export function languageOption(value: unknown): Outcome<Language> {
  if (value === undefined) return good("english");
  const found = languages.find((language) => language === value);
  return found === undefined
    ? bad(`--language takes ${languages.join(" or ")}, not "${String(value)}".`)
    : good(found);
}

/** Makes something in a language. The terminal itself speaks English, before and after. */
export async function inLanguage<T>(language: Language, make: () => T): Promise<T> {
  await speakLanguage(language);
  try {
    return make();
  } finally {
    await speakLanguage("english");
  }
}
