// What a spreadsheet program would take for a formula, behind any apostrophes that already stand before it.
const formulaLike = /^'*[=+\-@\t\r]/;

/**
 * A text cell as it is written to a file: text that a spreadsheet program would run as a formula gets an apostrophe
 * before it. Numbers are never passed through here, so that a negative number stays a number.
 */
export function escapeText(text: string): string {
  return formulaLike.test(text) ? `'${text}` : text;
}

/** The text that was meant: one apostrophe before what looks like a formula is taken away again. */
export function unescapeText(text: string): string {
  return text.startsWith("'") && formulaLike.test(text) ? text.slice(1) : text;
}
