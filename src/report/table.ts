import { markup, type Markup, type Part } from "./markup.ts";

/** A column: its head, and whether it holds numbers (set to the right). */
export interface Column {
  head: Part;
  number?: boolean;
}

/** A table with its caption; the first column names its row. No rows: the sentence that says so. */
export function table(caption: string, columns: Column[], rows: Part[][], none: string): Markup {
  if (rows.length === 0) return markup`<p class="gap">${caption}: ${none}.</p>`;
  const side = (column: Column | undefined) => (column?.number ? "num" : "");
  return markup`<table><caption>${caption}</caption>
<thead><tr>${columns.map((column) => markup`<th scope="col" class="${side(column)}">${column.head}</th>`)}</tr></thead>
<tbody>${rows.map(
    (row) => markup`<tr>${row.map((cell, i) =>
      i === 0
        ? markup`<th scope="row" class="${side(columns[i])}">${cell}</th>`
        : markup`<td class="${side(columns[i])}">${cell}</td>`,
    )}</tr>
`,
  )}</tbody></table>`;
}

/** Named facts, one a line. */
export function facts(rows: [name: string, text: Part][]): Markup {
  return markup`<dl>${rows.map(([name, text]) => markup`<dt>${name}</dt><dd>${text}</dd>`)}</dl>`;
}
