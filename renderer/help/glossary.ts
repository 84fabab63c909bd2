import { glossaryWords } from "../../src/words/glossary.ts";

/** A word of the glossary by its English term. */
export type TermName = keyof typeof glossaryWords;

/** The trade's words as they are used here, each in a sentence, by their shown terms: the panel lists all, `Term` shows one. */
export const glossary = Object.values(glossaryWords).sort((a, b) => a.term.localeCompare(b.term));

/** How a word of the glossary is shown. */
export function termOf(name: TermName): string {
  return glossaryWords[name].term;
}

/** What a word of the glossary means. */
export function meaningOf(name: TermName): string {
  return glossaryWords[name].means;
}
