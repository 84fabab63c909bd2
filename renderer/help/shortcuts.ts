import { helpWords } from "../../src/words/help.ts";

/** Every key that does something, by where it does it: one list, shown on one key. */
export const shortcuts = Object.values(helpWords.shortcuts).map(({ where, keys }) => ({
  where,
  keys: Object.values(keys),
}));
