export interface Ink {
  ink: string;
  soft: string;
  rule: string;
  accent: string;
  tint: string;
  sheet: string;
  bad: string;
  warn: string;
  a: string;
  b: string;
  font: string;
}

/** The colours of the current theme, read from the tokens so that charts and page never disagree. */
export function readInk(): Ink {
  const style = getComputedStyle(document.documentElement);
  const token = (name: string) => style.getPropertyValue(name).trim();
  return {
    ink: token("--ink"),
    soft: token("--ink-soft"),
    rule: token("--rule"),
    accent: token("--accent"),
    tint: token("--accent-tint"),
    sheet: token("--sheet"),
    bad: token("--bad"),
    warn: token("--warn"),
    a: token("--polymer-a"),
    b: token("--polymer-b"),
    font: token("--font"),
  };
}
