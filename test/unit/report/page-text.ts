/** A page as a browser parses it. Needs the jsdom environment. */
export function parsed(page: string): Document {
  return new DOMParser().parseFromString(page, "text/html");
}

/** A page's text as somebody reads it: blocks and gaps as single spaces. */
export function textOf(page: string): string {
  const spaced = page.replace(/<\/(?:p|td|th|li|dt|dd|h\d|caption|text)>/g, " $&");
  return (parsed(spaced).body.textContent ?? "").replace(/\s+/g, " ").replace(/ ([.,;:])/g, "$1");
}
