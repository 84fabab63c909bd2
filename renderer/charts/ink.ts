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

/**
 * The colours of the current theme, read from the tokens so that charts and page never disagree. They are resolved to
 * plain red, green and blue: a canvas does not know the page's system colours, and a saved picture has no tokens.
 */
export function readInk(): Ink {
  const probe = document.createElement("span");
  probe.style.setProperty("forced-color-adjust", "none");
  document.body.append(probe);
  const color = (token: string) => {
    probe.style.color = `var(${token})`;
    return getComputedStyle(probe).color;
  };
  const ink = {
    ink: color("--ink"),
    soft: color("--ink-soft"),
    rule: color("--rule"),
    accent: color("--accent"),
    tint: color("--accent-tint"),
    sheet: color("--sheet"),
    bad: color("--bad"),
    warn: color("--warn"),
    a: color("--polymer-a"),
    b: color("--polymer-b"),
    font: getComputedStyle(document.documentElement).getPropertyValue("--font").trim(),
  };
  probe.remove();
  return ink;
}
