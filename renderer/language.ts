import type { Language } from "../src/words/language.ts";
import { firstLanguage } from "../src/words/language.ts";
import { speakLanguage } from "../src/words/speak-language.ts";
import { call } from "./client.ts";

const tags: Record<Language, string> = { english: "en", german: "de" };

/** Speaks the language of this window before anything is drawn, and has the host speak it too. */
export async function speakFirst(): Promise<void> {
  const about = await call("host.about", {});
  const language = firstLanguage(about.ok ? about.value.language : null, navigator.language);
  await speakLanguage(language);
  document.documentElement.lang = tags[language];
  if (about.ok) await call("host.speak", { language, chosen: false });
}

/** Changes the language for good. The window is loaded anew: drafts and the room come back as after any reload. */
export async function chooseLanguage(language: Language): Promise<string | null> {
  const answer = await call("host.speak", { language, chosen: true });
  if (!answer.ok) return answer.message;
  location.reload();
  return null;
}

/** A moment by this machine's clock, as sentences about somebody's work tell it. */
export const momentText = (at: string): string =>
  new Date(at).toLocaleString(dateTag(), { dateStyle: "medium", timeStyle: "short" });

/** The tag by which dates and times are written, undefined for the system's own way in English. */
export function dateTag(): string | undefined {
  return document.documentElement.lang === "de" ? "de-DE" : undefined;
}
