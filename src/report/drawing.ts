import { markup, type Markup } from "./markup.ts";
import { chartWords } from "../words/charts.ts";

/** A chart drawn in user units, without the element around it: for a page of the report or a file of its own. */
export interface Drawing {
  width: number;
  height: number;
  /** what the chart shows, for whoever cannot see it */
  label: string;
  body: Markup;
}

/**
 * Sizes of drawings as they are printed. Their units are points: as wide as the text of a page of A4, or as half of it,
 * so that the letters of a drawing are as large on paper as it says.
 */
export const paperSize = { width: 536, height: 206 };
export const halfSize = { width: 262, height: 156 };
/** letters on paper, in points */
const letters = "11";

/** A drawing within a page. */
export function inlineSvg({ width, height, label, body }: Drawing): Markup {
  return markup`<svg viewBox="0 0 ${String(width)} ${String(height)}" role="img" aria-label="${label}" font-size="${letters}" fill="#000">
${body}
</svg>`;
}

const foot = 34;
const lineLength = 96;

/** Long text on several lines, broken between words. */
function lines(text: string): string[] {
  const all: string[] = [""];
  for (const word of text.split(" ")) {
    const last = all.at(-1)!;
    if (last === "") all[all.length - 1] = word;
    else if (last.length + word.length < lineLength) all[all.length - 1] = `${last} ${word}`;
    else all.push(word);
  }
  return all;
}

/**
 * A drawing as a file of its own: black on white, with its title, its description and, in small letters under it, where
 * it comes from. It needs no script, style or font from elsewhere.
 */
export function svgFile(drawing: Drawing, title: string, source: string): string {
  const { width, height, label, body } = drawing;
  const head = 24;
  const said = lines(source);
  const whole = height + head + foot + (said.length - 1) * 12;
  return `<?xml version="1.0" encoding="UTF-8"?>
${
  markup`<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${String(width)} ${String(whole)}" width="${String(width)}" height="${String(whole)}" role="img" aria-labelledby="title desc" font-family="'Source Sans 3', 'Noto Sans', Arial, 'Liberation Sans', sans-serif" font-size="${letters}" fill="#000">
<title id="title">${title}</title>
<desc id="desc">${chartWords.file.described(label, source)}</desc>
<rect width="100%" height="100%" fill="#fff"/>
<text x="10" y="18" font-size="14" font-weight="600">${title}</text>
<g transform="translate(0 ${String(head)})">
${body}
</g>
${said.map((line, i) => markup`<text x="10" y="${String(height + head + 18 + i * 12)}" font-size="9">${line}</text>`)}
</svg>
`.html
}`;
}
