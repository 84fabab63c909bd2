import { lineUp } from "../units/line-up.ts";
import { markup, type Markup, type Part } from "./markup.ts";

/** A column: its head, and whether it holds numbers (set to the right, lined up at the mark), ranges (lined up) or words never broken. */
export interface Column {
  head: Part;
  number?: boolean;
  ranges?: boolean;
  whole?: boolean;
}

/** The cells of a column with their numbers under each other; what is markup already stays as it is. */
function linedUp(cells: Part[]): Part[] {
  const apart = lineUp(cells.filter((cell) => typeof cell === "string"));
  return cells.map((cell) =>
    typeof cell !== "string"
      ? cell
      : apart(cell).map(({ text, lead, tail }) =>
          lead || tail
            ? markup`<span class="lined" data-lead="${lead}" data-tail="${tail}">${text}</span>`
            : text,
        ),
  );
}

/** A table with its caption; the first column names its row. No rows: the sentence that says so. */
export function table(caption: string, columns: Column[], rows: Part[][], none: string): Markup {
  if (rows.length === 0) return markup`<p class="gap">${caption}: ${none}.</p>`;
  const cells = columns.map(({ number, ranges }, i) => {
    const column = rows.map((row) => row[i]);
    return number || ranges ? linedUp(column) : column;
  });
  const side = (column: Column | undefined) => (column?.number ? "num" : column?.whole ? "unbroken" : "");
  return markup`<table><caption>${caption}</caption>
<thead><tr>${columns.map((column) => markup`<th scope="col" class="${side(column)}">${column.head}</th>`)}</tr></thead>
<tbody>${rows.map(
    (row, line) => markup`<tr>${row.map((_, i) =>
      i === 0
        ? markup`<th scope="row" class="${side(columns[i])}">${cells[i]?.[line]}</th>`
        : markup`<td class="${side(columns[i])}">${cells[i]?.[line]}</td>`,
    )}</tr>
`,
  )}</tbody></table>`;
}

/** Named facts, one a line. */
export function facts(rows: [name: string, text: Part][]): Markup {
  return markup`<dl>${rows.map(([name, text]) => markup`<dt>${name}</dt><dd>${text}</dd>`)}</dl>`;
}
