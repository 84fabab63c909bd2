import { fieldUnit, fieldWords } from "../study/issue-words.ts";
import type { StudyState } from "../study/schema/records.ts";
import { markup, type Markup } from "./markup.ts";
import { table, type Column } from "./table.ts";
import type { PaperWords } from "./words.ts";

/** One table of what the plant did: its caption, its heads and its rows in words. */
export interface RunTable {
  caption: string;
  heads: string[];
  rows: string[][];
}

/** Plant runs as given; without any, that none was logged. */
export function runsSection(tables: RunTable[]): Markup {
  const filled = tables.filter(({ rows }) => rows.length > 0);
  if (filled.length === 0)
    return markup`<section><h2>Plant runs</h2><p class="gap">No plant runs logged.</p></section>`;
  return markup`<section><h2>Plant runs</h2>${filled.map(({ caption, heads, rows }) =>
    table(
      caption,
      heads.map((head): Column => ({ head })),
      rows,
      "none",
    ),
  )}</section>`;
}

/** Every record of a run that the study holds, field by field as it was entered. */
export function loggedRuns(state: StudyState, words: PaperWords): RunTable[] {
  return Object.entries(state as Record<string, Readonly<Record<string, object>>>)
    .filter(([kind, records]) => /run/i.test(kind) && Object.keys(records).length > 0)
    .map(([kind, records]) => {
      const rows = Object.values(records).map((record) => Object.entries(record));
      const fields = [...new Set(rows.flat().map(([field]) => field))].filter(
        (field) =>
          field !== "id" &&
          rows.some((row) => row.some(([name, value]) => name === field && isFilled(value))),
      );
      return {
        caption: `${fieldWords(kind)}s, as entered`,
        heads: fields.map((field) =>
          [fieldWords(field), fieldUnit(field)].filter((text) => text !== "").join(", "),
        ),
        rows: rows.map((row) =>
          fields.map((field) => valueWords(state, field, new Map(row).get(field), words)),
        ),
      };
    });
}

const isFilled = (value: unknown) => value !== null && value !== undefined && value !== "" && value !== false;

function valueWords(state: StudyState, field: string, value: unknown, words: PaperWords): string {
  if (!isFilled(value)) return "–";
  if (typeof value === "number") return words.entered(value);
  if (value === true) return "yes";
  if (typeof value !== "string") return JSON.stringify(value);
  if (/Id$/.test(field)) return nameOf(state, value);
  return /^\d{4}-\d\d-\d\dT/.test(value) ? words.moment(value) : value;
}

/** What the record with this id is called, whatever its kind. */
function nameOf(state: StudyState, id: string): string {
  for (const records of Object.values(state as Record<string, Readonly<Record<string, object>>>)) {
    const record = Object.hasOwn(records, id) ? (records[id] as Record<string, unknown>) : null;
    if (record) return String(record["label"] ?? record["name"] ?? id);
  }
  return id;
}
