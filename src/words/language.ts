/** The languages the program speaks. The texts are written in English; every other language is a table beside them. */
export const languages = ["english", "german"] as const;
export type Language = (typeof languages)[number];

/** Texts of one area: plain strings, functions of what is put into them, and groups of both. */
export type Texts = { [name: string]: Text | Texts };
/** A sentence, or the making of one from parts that its area types. */
export type Text = string | ((...parts: never[]) => string);
/** A language: the texts of each area by the area's name. */
export type LanguageTable = Record<string, Texts>;

const areas = new Map<string, { shown: Texts; english: Texts }>();
let current: { language: Language; table: LanguageTable | null } = { language: "english", table: null };

/**
 * Registers one area of texts and gives it back. The object stays the same for good and its texts change with the language, so
 * it is read where a text is needed and never copied at load.
 */
export function area<T extends Texts>(name: string, english: T): T {
  if (areas.has(name)) throw new Error(`two areas of texts are called ${name}`);
  const shown = { ...english, ...current.table?.[name] };
  areas.set(name, { shown, english });
  return shown;
}

/** Has every area speak a language from now on; English needs no table. */
export function speak(language: Language, table: LanguageTable | null): void {
  current = { language, table };
  for (const [name, { shown, english }] of areas) Object.assign(shown, english, table?.[name]);
}

/** The language spoken now. */
export function spokenLanguage(): Language {
  return current.language;
}

/** The areas that are loaded, by name, in English: what a language table has to cover. */
export function registeredAreas(): LanguageTable {
  return Object.fromEntries([...areas].map(([name, { english }]) => [name, english]));
}

/** The language a window or a host begins with: what a person chose, else the system's where it is one of ours. */
export function firstLanguage(chosen: Language | null, systemTag: string): Language {
  return chosen ?? (/^de\b/i.test(systemTag) ? "german" : "english");
}

/** "1 jar", "3 jars": a count with the noun's form for it, in languages that know one and many. */
export function counted(count: number, one: string, many: string): string {
  return `${count} ${count === 1 ? one : many}`;
}
