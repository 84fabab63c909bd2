import { markup, styleMarkup, type Markup } from "./markup.ts";
import { onPaperWords } from "../words/on-paper.ts";

const pageStyle = `
@page { margin: 10mm; }
body { margin: 4mm; background: #fff; }
@media print { body { margin: 0; } }
`;

/** A paper in its two parts: the style and the article, as the screens take them up and as a file holds them. */
export interface Paper {
  title: string;
  style: string;
  article: Markup;
}

/**
 * A paper as a file of its own: no script, nothing from elsewhere, and a policy in it that tells whatever opens it so.
 */
export function paperDocument({ title, style, article }: Paper): string {
  const policy = "default-src 'none'; style-src 'unsafe-inline'; img-src data:";
  return markup`<!doctype html>
<html lang="${onPaperWords.languageTag}">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="${policy}">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>${title}</title>
${styleMarkup(pageStyle + style)}
</head>
<body>
<main>${article}</main>
</body>
</html>
`.html;
}
