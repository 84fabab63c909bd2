import type { Method } from "./method.ts";
import { methods } from "./methods.ts";

const section = ({ what, formula, source, code, checks }: Method) => `## ${what}

${plain(formula)}

- Source: ${plain(source)}.
- Code: ${code.map((path) => `[${path}](../${path})`).join(", ")}
- Checked by:
${checks.map(({ file, asserts }) => `  - [${file}](../${file}): ${plain(asserts)}`).join("\n")}
`;

/** The methods page as it stands in docs/methods.md. */
export function methodsPage(): string {
  return `# Methods

Every formula the product uses, where it comes from, where it is worked out, and which test checks it. Written by \`npm run docs:methods\` from \`src/methods\`, the same list that the trial report prints and that "How was this made" takes its sources from; a test fails when this page is out of date or names a file that is not there.

"From memory" means that nobody looked it up again for this page; "common practice, no source" is a rule of thumb; "recomputed independently" means worked out a second time by other code.

${methods.map(section).join("\n")}`;
}

// What Markdown would take for emphasis stands as it is typed.
const plain = (text: string) => text.replace(/[*_]/g, "\\$&");
