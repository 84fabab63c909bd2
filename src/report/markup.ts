/** Text that is known to be markup. Only `markup` makes it, so nothing a person typed can become markup by mistake. */
export interface Markup {
  readonly html: string;
}

/** What may stand in a template: text (escaped), markup, a list of both, or nothing. Numbers are put in words first. */
export type Part = string | Markup | readonly Part[] | null | undefined | false;

const signs: Record<string, string> = {
  "&": "&amp;",
  "<": "&lt;",
  ">": "&gt;",
  '"': "&quot;",
  "'": "&#39;",
  "\r": "&#13;",
};

/** Text as it may stand in an element or a quoted attribute. */
export function escapeText(text: string): string {
  return text.replace(/[&<>"'\r]/g, (sign) => signs[sign]!);
}

function htmlOf(part: Part): string {
  if (part === null || part === undefined || part === false) return "";
  if (typeof part === "string") return escapeText(part);
  if ("html" in part) return part.html;
  return part.map(htmlOf).join("");
}

/** Markup from a template: everything that is put in is escaped unless it is markup already. Attributes are quoted. */
export function markup(strings: TemplateStringsArray, ...parts: Part[]): Markup {
  return { html: strings.reduce((text, string, i) => text + htmlOf(parts[i - 1]) + string) };
}

/** A style sheet of our own, which is never escaped and never holds anything typed. */
export function styleMarkup(css: string): Markup {
  return { html: `<style>${css}</style>` };
}
